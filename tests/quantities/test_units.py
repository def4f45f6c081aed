"""Unit sizes against NIST SP 811 and a general units library."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.quantities import UNITS, Quantity, UnitsDisagree, UnknownUnit, unit_named

# how the general library spells our units; `mil` is an angle there and `cfm` is not trusted
ORACLE = {
    "um": "micrometer",
    "mil": "thou",
    "cm2": "cm**2",
    "m2": "m**2",
    "in2": "inch**2",
    "ft2": "foot**2",
    "in": "inch",
    "ft": "foot",
    "cm3": "cm**3",
    "m3": "m**3",
    "in3": "inch**3",
    "ft3": "foot**3",
    "us_gal": "US_liquid_gallon",
    "us_qt": "US_liquid_quart",
    "us_pt": "US_pint",
    "us_fl_oz": "US_fluid_ounce",
    "imp_gal": "imperial_gallon",
    "imp_fl_oz": "imperial_fluid_ounce",
    "lb/us_gal": "lb/US_liquid_gallon",
    "m2/L": "m**2/L",
    "ft2/us_gal": "foot**2/US_liquid_gallon",
    "L/m2": "L/m**2",
    "g/m2": "g/m**2",
    "mm/s": "mm/s",
    "ft/min": "foot/minute",
    "in/s": "inch/second",
    "ach": "1/hour",
    "in_wg": "inH2O",
    "mm2/s": "mm**2/s",
    "mPa_s": "mPa*s",
    "mL/min": "mL/minute",
    "us_fl_oz/min": "US_fluid_ounce/minute",
    "min": "minute",
    "h": "hour",
    "d": "day",
    "degC": "degC",
    "degF": "degF",
    "K": "kelvin",
    "degF_diff": "delta_degF",
    "hPa": "hectopascal",
    "kPa": "kilopascal",
    "cfm": "foot**3/minute",
    "m3/h": "m**3/hour",
    "mg/m3": "mg/m**3",
    "ug/m3": "microgram/m**3",
    "us_ton": "short_ton",
    "ft3/us_gal": "foot**3/US_liquid_gallon",
    "N_m": "newton*meter",
    "ft_lbf": "foot*force_pound",
    "percent": "percent",
    "one": "dimensionless",
}
# bare counts and money have no oracle; turns per minute are radians there, checked on their own
WITHOUT_ORACLE = {
    "coats",
    "passes",
    "fills",
    "layers",
    "grades",
    "rpm",
    "opm",
    "money",
    "dBA",
    "GU",
    "money/L",
    "money/us_gal",
    "money/h",
    "money/m2",
}


@pytest.fixture(scope="module")
def registry() -> pint.UnitRegistry:
    """Return the oracle with exact numbers."""
    return pint.UnitRegistry(non_int_type=Fraction, autoconvert_offset_to_baseunit=True)


@pytest.mark.parametrize("name", sorted(set(UNITS) - WITHOUT_ORACLE))
def test_every_unit_size_agrees_with_the_general_library(
    name: str, registry: pint.UnitRegistry
) -> None:
    unit = UNITS[name]
    theirs = registry.Quantity(Fraction(7), ORACLE.get(name, name)).to_base_units()
    ours = Quantity(Fraction(7), unit).base
    # their gram-based units come out in kilograms too, so base numbers compare directly
    assert abs(Fraction(theirs.magnitude) - ours) <= abs(ours) * Fraction(1, 10**12)


@pytest.mark.parametrize("name", sorted(set(UNITS) - WITHOUT_ORACLE))
def test_every_dimension_agrees_with_the_general_library(
    name: str, registry: pint.UnitRegistry
) -> None:
    powers = registry.Quantity(1, ORACLE.get(name, name)).dimensionality
    theirs = tuple(
        int(powers.get(f"[{word}]", 0)) for word in ("length", "mass", "time", "temperature")
    )
    assert UNITS[name].dimension.powers[:4] == theirs


def test_the_library_takes_mil_for_an_angle(registry: pint.UnitRegistry) -> None:
    assert registry.Quantity(1, "mil").check("[length]") is False
    assert unit_named("mil").dimension.length == 1


def test_turns_per_minute_count_turns_and_not_radians(registry: pint.UnitRegistry) -> None:
    turns = registry.Quantity(Fraction(90), "turn/minute").to("turn/second").magnitude
    for name in ("rpm", "opm"):
        ours = Quantity(Fraction(90), unit_named(name)).base
        assert ours == Fraction(3, 2)
        assert abs(Fraction(turns) - ours) < Fraction(1, 10**12)


# NIST SP 811, Appendix B.8; each is exact
@pytest.mark.parametrize(
    ("unit", "exact", "wanted"),
    [
        ("in", "25.4", "mm"),
        ("mil", "25.4", "um"),
        ("ft", "0.3048", "m"),
        ("us_gal", "3.785411784", "L"),
        ("us_fl_oz", "29.5735295625", "mL"),
        ("us_qt", "0.946352946", "L"),
        ("us_pt", "0.473176473", "L"),
        ("imp_gal", "4.54609", "L"),
        ("imp_fl_oz", "28.4130625", "mL"),
        ("ft3", "28.316846592", "L"),
        ("in3", "16.387064", "cm3"),
        ("lb", "0.45359237", "kg"),
        ("oz", "28.349523125", "g"),
        ("bar", "1000", "hPa"),
        ("ft2", "0.09290304", "m2"),
        ("cfm", "28.316846592", "L/min"),
    ],
)
def test_exact_factors_of_nist_sp_811(unit: str, exact: str, wanted: str) -> None:
    assert Quantity(Fraction(1), unit_named(unit)).to(unit_named(wanted)).number == Fraction(exact)


def test_pound_per_square_inch_of_nist_sp_811() -> None:
    # NIST SP 811, Appendix B.8 prints 6.894757 E+03 pascals
    kilopascals = Quantity(Fraction(1), unit_named("psi")).to(unit_named("kPa")).number
    assert abs(kilopascals - Fraction("6.894757293168")) < Fraction(1, 10**12)


def test_pressures_convert_both_ways() -> None:
    # common practice: 2.5 bar is 36.26 psi, 30 psi is 2.068 bar
    psi = Quantity(Fraction("2.5"), unit_named("bar")).to(unit_named("psi")).number
    bar = Quantity(Fraction(30), unit_named("psi")).to(unit_named("bar")).number
    assert abs(psi - Fraction("36.25943443")) < Fraction(1, 10**8)
    assert abs(bar - Fraction("2.06842719")) < Fraction(1, 10**8)


def test_temperatures_on_a_scale_shift_and_differences_only_scale() -> None:
    # NIST SP 811, Appendix B.8: t/°C = (t/°F - 32)/1.8, and a step of 1 °F is 5/9 K
    assert Quantity(Fraction(68), unit_named("degF")).to(unit_named("degC")).number == 20
    assert Quantity(Fraction(-40), unit_named("degC")).to(unit_named("degF")).number == -40
    step = Quantity(Fraction(10), unit_named("degF_diff")).to(unit_named("K")).number
    assert step == Fraction(50, 9)


def test_a_temperature_on_a_scale_is_no_difference() -> None:
    with pytest.raises(UnitsDisagree, match="a temperature \\(degC\\)"):
        Quantity(Fraction(20), unit_named("degC")).to(unit_named("K"))


def test_units_of_different_kinds_do_not_convert() -> None:
    with pytest.raises(UnitsDisagree, match="cannot turn a length .* into a volume"):
        Quantity(Fraction(1), unit_named("mm")).to(unit_named("mL"))


def test_an_unknown_unit_comes_with_the_nearest_name() -> None:
    with pytest.raises(UnknownUnit) as caught:
        unit_named("us_gall")
    assert (caught.value.name, caught.value.suggestion) == ("us_gall", "us_gal")


def test_us_and_imperial_gallons_are_apart() -> None:
    ratio = UNITS["imp_gal"].factor / UNITS["us_gal"].factor
    assert Fraction("1.2009") < ratio < Fraction("1.2010")


@given(st.fractions(max_denominator=10**6), st.data())
def test_converting_there_and_back_changes_nothing(number: Fraction, data: st.DataObject) -> None:
    first = data.draw(st.sampled_from(sorted(UNITS)))
    alike = sorted(name for name, unit in UNITS.items() if unit.agrees_with(UNITS[first]))
    second = data.draw(st.sampled_from(alike))
    start = Quantity(number, UNITS[first])
    assert start.to(UNITS[second]).to(UNITS[first]) == start
