"""Warmer paint by the published upper cases, and the two kinds of viscosity."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.viscosity import (
    dynamic_viscosity,
    viscosity_when_warmer,
    viscosity_when_warmer_us,
)

REGISTRY = pint.UnitRegistry()
VISCOSITIES = st.integers(1, 5000).map(lambda tenths: Fraction(tenths, 10))
FALLS = st.integers(1, 50).map(lambda tenths: Fraction(tenths, 10))
FINE = Fraction("0.05")


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


def test_five_kelvins_at_ten_percent_compound():
    # ASTM Standardization News 2011: up to 10 % for each °C; adding up would say 50
    found = viscosity_when_warmer(*exact(100, 10, 5))
    assert abs(found - Fraction("59.0")) <= FINE
    assert abs(found - 50) > 5


def test_nine_fahrenheit_degrees_at_five_percent():
    # ASTM D4212 section 8.1: up to 5 % for each °F, our numbers
    assert abs(viscosity_when_warmer_us(*exact(100, 5, 9)) - Fraction("63.0")) <= FINE


@pytest.mark.parametrize(
    ("viscosity", "density", "expected"), [(80, "1.25", "100.0"), ("64.5", "1.02", "65.79")]
)
def test_dynamic_viscosity(viscosity, density, expected):
    # definition
    assert dynamic_viscosity(*exact(viscosity, density)) == Fraction(expected)


@given(VISCOSITIES, st.integers(500, 2000).map(lambda milli: Fraction(milli, 1000)))
def test_dynamic_viscosity_agrees_with_a_general_units_library(viscosity, density):
    # pint as oracle
    kinematic = REGISTRY.Quantity(float(viscosity), "mm**2/s")
    oracle = (kinematic * REGISTRY.Quantity(float(density), "g/mL")).to("mPa*s").magnitude
    assert float(dynamic_viscosity(viscosity, density)) == pytest.approx(oracle)


@given(VISCOSITIES, FALLS, st.integers(-7, 7), st.integers(-7, 7))
def test_two_changes_in_turn_are_one_change(viscosity, fall, first, second):
    middle = viscosity_when_warmer(viscosity, fall, Fraction(first))
    end = viscosity_when_warmer(middle, fall, Fraction(second))
    assert end == viscosity_when_warmer(viscosity, fall, Fraction(first + second))


@given(VISCOSITIES, FALLS, st.integers(1, 149))
def test_warmer_paint_is_thinner_and_colder_paint_thicker(viscosity, fall, tenths):
    step = Fraction(tenths, 10)
    assert viscosity_when_warmer(viscosity, fall, step) < viscosity
    assert viscosity_when_warmer(viscosity, fall, -step) > viscosity


@given(VISCOSITIES, FALLS, st.integers(-14, 14))
def test_whole_steps_meet_the_ones_beside_them(viscosity, fall, step):
    # a whole step is worked out exactly, its neighbours by logarithms
    at = viscosity_when_warmer(viscosity, fall, Fraction(step))
    beside = viscosity_when_warmer(viscosity, fall, step + Fraction(1, 10**6))
    assert abs(at - beside) <= at * Fraction(1, 10**5)


@pytest.mark.parametrize(
    ("relation", "numbers", "words"),
    [
        (viscosity_when_warmer, (100, 11, 5), "10 %"),
        (viscosity_when_warmer, (100, 10, 16), "15 K"),
        (viscosity_when_warmer, (0, 10, 5), "viscosity"),
        (viscosity_when_warmer, (100, 0, 5), "fall"),
        (viscosity_when_warmer_us, (100, 6, 5), "5 %"),
        (viscosity_when_warmer_us, (100, 5, 28), "27 °F"),
        (dynamic_viscosity, (80, 0), "density"),
    ],
)
def test_changes_no_source_covers_are_refused(relation, numbers, words):
    with pytest.raises(OutsideValidity, match=words):
        relation(*exact(*numbers))
