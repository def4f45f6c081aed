"""Dew point and humidity against charts, a laboratory sheet and a psychrometric library."""

from fractions import Fraction

import psychrolib
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, unit_named
from generator.refinishing.climate import dew_point, humidity_from_wet_bulb

psychrolib.SetUnitSystem(psychrolib.SI)
SHOP_AIR = st.integers(20, 400).map(lambda tenths: Fraction(tenths, 10))
HUMIDITY = st.integers(10, 100).map(Fraction)


@pytest.mark.parametrize(
    ("air", "humidity", "expected"),
    [
        (20, 50, "9.3"),  # psychrometric library 9.27
        (20, 70, "14.4"),  # psychrometric library 14.37
        (25, 60, "16.7"),  # psychrometric library 16.70
        (16, 71, "10.7"),  # coatings application note, chart prints 11
        (10, 85, "7.6"),  # psychrometric library 7.60
    ],
)
def test_dew_point_of_shop_air(air, humidity, expected):
    assert abs(dew_point(Fraction(air), Fraction(humidity)) - Fraction(expected)) <= Fraction("0.2")


def test_a_printed_fahrenheit_chart_cuts_off_below_the_formula():
    # dew-point chart for coatings: 70 °F and 65 %, printed 57
    celsius, fahrenheit = unit_named("degC"), unit_named("degF")
    air = Quantity(Fraction(70), fahrenheit).to(celsius).number
    found = Quantity(dew_point(air, Fraction(65)), celsius).to(fahrenheit).number
    assert abs(found - Fraction("57.7")) <= Fraction("0.4")
    assert 57 <= found < 58


@pytest.mark.parametrize(
    ("dry", "wet", "humidity", "dew"),
    [
        (20, 15, "58.6", "11.6"),  # psychrometric library 58.92
        (21, 17, "67.1", "14.7"),  # coatings application note: dew point 15 by chart
        (20, 12, "37.1", "4.9"),  # university laboratory sheet: 37.5 %, dew point 5
    ],
)
def test_humidity_from_two_thermometers(dry, wet, humidity, dew):
    found = humidity_from_wet_bulb(Fraction(dry), Fraction(wet))
    assert abs(found - Fraction(humidity)) <= 1
    assert abs(dew_point(Fraction(dry), found) - Fraction(dew)) <= Fraction("0.4")


def test_the_laboratory_sheets_printed_humidity_lies_within_one_percent():
    # university laboratory sheet ATSC 110L: 8.7 over 23.2 is 37.5 %
    assert abs(humidity_from_wet_bulb(Fraction(20), Fraction(12)) - Fraction("37.5")) <= 1


@given(SHOP_AIR, HUMIDITY)
def test_dew_point_agrees_with_a_psychrometric_library(air, humidity):
    # psychrolib as oracle
    oracle = psychrolib.GetTDewPointFromRelHum(float(air), float(humidity) / 100)
    # below freezing the library reckons over ice, our formula over water
    allowed = 0.1 if oracle > 0.5 else 4.0
    assert abs(float(dew_point(air, humidity)) - oracle) <= allowed


@given(SHOP_AIR, st.integers(0, 8))
def test_wet_bulb_humidity_agrees_with_a_psychrometric_library(dry, depression):
    # psychrolib as oracle, thermodynamic wet bulb
    wet = dry - depression
    assume(wet >= 1)
    oracle = psychrolib.GetRelHumFromTWetBulb(float(dry), float(wet), 101_325)
    assume(oracle > 0.05)
    assert abs(float(humidity_from_wet_bulb(dry, wet)) - 100 * oracle) <= 1


@given(SHOP_AIR)
def test_saturated_air_is_at_its_dew_point_and_its_wet_bulb(air):
    assert abs(dew_point(air, Fraction(100)) - air) < Fraction(1, 10**6)
    assert humidity_from_wet_bulb(air, air) == 100


@given(SHOP_AIR, st.integers(10, 99))
def test_drier_air_has_a_lower_dew_point(air, humidity):
    assert dew_point(air, Fraction(humidity)) < dew_point(air, Fraction(humidity + 1))


@pytest.mark.parametrize(("air", "humidity"), [(20, 0), (20, 101), (61, 50), (-46, 50)])
def test_air_outside_the_formula_is_refused(air, humidity):
    with pytest.raises(OutsideValidity):
        dew_point(Fraction(air), Fraction(humidity))


@pytest.mark.parametrize(
    ("dry", "wet", "pressure", "words"),
    [
        (20, 21, 1013, "wet bulb"),
        (20, -1, 1013, "wet bulb"),
        (40, 10, 1013, "too far below"),
        (20, 15, 100, "pressure"),
    ],
)
def test_impossible_thermometer_readings_are_refused(dry, wet, pressure, words):
    with pytest.raises(OutsideValidity, match=words):
        humidity_from_wet_bulb(Fraction(dry), Fraction(wet), Fraction(pressure))
