"""The margin over the dew point against the worked decisions of a coatings application note."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, unit_named
from generator.refinishing import CATALOGUE
from generator.refinishing.climate_margin import (
    dew_margin,
    dew_margin_met,
    difference_to_kelvin,
)

THREE = Fraction(3)


@pytest.mark.parametrize(
    ("air", "humidity", "panel", "margin", "enough"),
    [
        ("20", "70", "19", "4.6", True),  # rule of the application note, our numbers
        ("16", "71", "13", "2.3", False),  # application note: margin 2 by chart, not suitable
        ("15", "85", "14", "1.5", False),  # rule of the application note, our numbers
        ("25", "60", "20.2", "3.5", True),  # rule of the application note, our numbers
    ],
)
def test_the_margin_and_whether_it_is_enough(air, humidity, panel, margin, enough):
    found = dew_margin_met(Fraction(air), Fraction(humidity), Fraction(panel), THREE)
    assert abs(found.margin - Fraction(margin)) <= Fraction("0.2")
    assert (found.short_by == 0) is enough


def test_five_fahrenheit_degrees_of_margin_are_not_a_temperature_on_the_scale():
    # arithmetic; converting as a point on the scale gives -15
    kelvin = difference_to_kelvin(Fraction(5))
    assert abs(kelvin - Fraction("2.78")) <= Fraction("0.005")
    point = Quantity(Fraction(5), unit_named("degF")).to(unit_named("degC")).number
    assert point == -15


def test_a_rounded_three_kelvins_is_more_than_five_fahrenheit_degrees():
    assert difference_to_kelvin(Fraction(5)) < THREE


@given(st.integers(5, 40), st.integers(20, 100), st.integers(0, 45), st.integers(0, 10))
def test_what_is_missing_and_what_is_there_make_up_the_required_margin(air, rh, panel, required):
    numbers = (Fraction(air), Fraction(rh), Fraction(panel))
    found = dew_margin_met(*numbers, Fraction(required))
    assert found.margin == dew_margin(*numbers)
    assert found.short_by == max(0, required - found.margin)


@given(st.integers(5, 40), st.integers(20, 100), st.integers(0, 45))
def test_a_margin_just_met_is_enough(air, humidity, panel):
    numbers = (Fraction(air), Fraction(humidity), Fraction(panel))
    margin = dew_margin(*numbers)
    if margin >= 0:
        assert dew_margin_met(*numbers, margin).short_by == 0
        assert dew_margin_met(*numbers, margin + Fraction(1, 100)).short_by == Fraction(1, 100)


@given(st.fractions(-100, 100, max_denominator=20))
def test_a_difference_converts_as_our_units_do(difference):
    fahrenheit, kelvin = unit_named("degF_diff"), unit_named("K")
    assert difference_to_kelvin(difference) == Quantity(difference, fahrenheit).to(kelvin).number


@pytest.mark.parametrize("name", ["dew_margin", "dew_margin_met"])
def test_a_margin_never_reads_as_leave_to_paint(name):
    assert "does not mean you can spray" in CATALOGUE[name].facts.caution


def test_a_required_margin_below_zero_is_refused():
    with pytest.raises(OutsideValidity, match="required margin"):
        dew_margin_met(Fraction(20), Fraction(50), Fraction(20), Fraction(-1))


def test_a_panel_outside_the_range_of_shop_air_is_refused():
    with pytest.raises(OutsideValidity):
        dew_margin(Fraction(20), Fraction(50), Fraction(200))
