"""Conversions of a paint shop against a general units library and our own units."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, unit_named
from generator.refinishing import CATALOGUE
from tests.refinishing.asked import exact
from tests.some import some

REGISTRY = pint.UnitRegistry()
# relation, value, printed, tolerance, and the two units as pint spells them
CASES = [
    ("psi_to_kpa", 29, "199.9", "0.05", "psi", "kPa"),
    ("bar_to_psi", 2, "29.0", "0.05", "bar", "psi"),
    ("psi_to_bar", 10, "0.689", "0.0005", "psi", "bar"),
    ("us_fluid_ounce_to_millilitre", 1, "29.57", "0.005", "US_fluid_ounce", "mL"),
    ("mil_to_um", "2.5", "63.5", "0.05", "thou", "micrometer"),
    ("um_to_mil", 120, "4.72", "0.005", "micrometer", "thou"),
    ("us_gallon_to_litre", 1, "3.785", "0.0005", "US_liquid_gallon", "liter"),
    ("cfm_to_litre_per_minute", 12, "340", "0.5", "foot**3/minute", "liter/minute"),
    ("foot_per_minute_to_metre_per_second", 100, "0.508", "0.0005", "foot/minute", "m/s"),
    ("foot_pound_to_newton_metre", 20, "27.1", "0.05", "foot*force_pound", "newton*meter"),
    ("imperial_gallon_to_litre", 1, "4.546", "0.0005", "imperial_gallon", "liter"),
    ("square_foot_to_square_metre", 400, "37.16", "0.005", "foot**2", "m**2"),
    ("mil_to_um", "1.8", "45.7", "0.05", "thou", "micrometer"),
    ("pound_per_gallon_to_gram_per_litre", 1, "119.8", "0.05", "lb/US_liquid_gallon", "g/L"),
    ("pound_per_gallon_to_gram_per_litre", "3.5", "419", "0.5", "lb/US_liquid_gallon", "g/L"),
    ("gram_per_litre_to_pound_per_gallon", 250, "2.09", "0.005", "g/L", "lb/US_liquid_gallon"),
]
NAMES = sorted({case[0] for case in CASES} | {"inch_of_water_to_pascal"})


def converted(name, value):
    (parameter,) = CATALOGUE[name].parameters
    return CATALOGUE[name].call({parameter.name: Fraction(str(value))})[name]


@pytest.mark.parametrize(("name", "value", "wanted", "tolerance", "given_unit", "unit"), CASES)
def test_conversions_agree_with_a_general_units_library(
    name, value, wanted, tolerance, given_unit, unit
):
    # pint as oracle, NIST SP 811 factors
    found = converted(name, value)
    assert abs(found - Fraction(wanted)) <= Fraction(tolerance)
    oracle = REGISTRY.Quantity(float(Fraction(str(value))), given_unit).to(unit).magnitude
    assert float(found) == pytest.approx(oracle, rel=1e-12)


def test_a_quarter_of_a_us_gallon_in_millilitres():
    # pint: 946
    assert abs(converted("us_gallon_to_litre", "0.25") * 1000 - 946) <= Fraction("0.5")


def test_air_speed_back_in_feet_a_minute():
    # pint: 0.4 m/s is 78.7 ft/min
    speed = Quantity(Fraction("0.4"), unit_named("m/s")).to(unit_named("ft/min")).number
    assert abs(speed - Fraction("78.7")) <= Fraction("0.05")
    assert converted("foot_per_minute_to_metre_per_second", speed) == Fraction("0.4")


def test_the_conventional_inch_of_water_is_not_the_one_of_a_units_library():
    # NIST SP 811 from memory, 124.5 Pa; pint's inch of water at 60 °F gives 124.4
    found = converted("inch_of_water_to_pascal", "0.5")
    assert abs(found - Fraction("124.5")) <= Fraction("0.05")
    other = REGISTRY.Quantity(0.5, "inch_H2O_60F").to("pascal").magnitude
    assert round(other, 1) == 124.4


def test_a_printed_pair_of_a_rule_is_rounded():
    # rules print 3.5 lb/gal as 420 g/L; exactly it is 419.4
    found = converted("pound_per_gallon_to_gram_per_litre", "3.5")
    assert found < 420
    assert abs(found - Fraction("419.4")) <= Fraction("0.05")


@pytest.mark.parametrize("name", NAMES)
def test_conversions_agree_with_our_own_units(name):
    (parameter,) = CATALOGUE[name].parameters
    for value in some(exact(1, "2.5", 40)):
        theirs = Quantity(value, parameter.unit).to(CATALOGUE[name].results[name]).number
        assert converted(name, value) == theirs


@given(st.fractions(0, 500, max_denominator=40))
def test_there_and_back_again_is_exact(value):
    for there, back in [
        ("psi_to_bar", "bar_to_psi"),
        ("mil_to_um", "um_to_mil"),
        ("pound_per_gallon_to_gram_per_litre", "gram_per_litre_to_pound_per_gallon"),
    ]:
        assert converted(back, converted(there, value)) == value


@pytest.mark.parametrize("name", NAMES)
def test_amounts_below_zero_are_refused(name):
    with pytest.raises(OutsideValidity, match="must not be below zero"):
        converted(name, -1)
