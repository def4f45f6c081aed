"""Fahrenheit and Celsius against the definition and a general units library."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, unit_named
from generator.refinishing.climate_margin import difference_to_kelvin
from generator.refinishing.temperature_scales import (
    celsius_to_fahrenheit,
    fahrenheit_to_celsius,
)

REGISTRY = pint.UnitRegistry(autoconvert_offset_to_baseunit=True)
TEMPERATURES = st.integers(-500, 3000).map(lambda tenths: Fraction(tenths, 10))


# definition of the scales
@pytest.mark.parametrize(
    ("fahrenheit", "celsius"), [(140, 60), (77, 25), (176, 80), (50, 10), ("73.4", 23), (95, 35)]
)
def test_pairs_of_shop_temperatures(fahrenheit, celsius):
    assert fahrenheit_to_celsius(Fraction(str(fahrenheit))) == celsius
    assert celsius_to_fahrenheit(Fraction(celsius)) == Fraction(str(fahrenheit))


@given(TEMPERATURES)
def test_there_and_back_changes_nothing(temperature):
    assert fahrenheit_to_celsius(celsius_to_fahrenheit(temperature)) == temperature


@given(TEMPERATURES)
def test_it_agrees_with_a_general_units_library_and_with_our_units(temperature):
    # pint as oracle
    oracle = REGISTRY.Quantity(float(temperature), "degC").to("degF").magnitude
    ours = celsius_to_fahrenheit(temperature)
    assert float(ours) == pytest.approx(oracle)
    assert Quantity(temperature, unit_named("degC")).to(unit_named("degF")).number == ours


@given(TEMPERATURES, st.integers(0, 50).map(Fraction))
def test_a_step_is_only_scaled_and_not_moved(temperature, step):
    before = celsius_to_fahrenheit(temperature)
    after = celsius_to_fahrenheit(temperature + step)
    assert difference_to_kelvin(after - before) == step


def test_nothing_is_colder_than_absolute_zero():
    with pytest.raises(OutsideValidity, match="absolute zero"):
        fahrenheit_to_celsius(Fraction(-460))
    with pytest.raises(OutsideValidity, match="absolute zero"):
        celsius_to_fahrenheit(Fraction(-274))
    assert fahrenheit_to_celsius(Fraction("-459.67")) == Fraction("-273.15")
