"""Vapour against the lower explosive limit, and the dilution rule's arithmetic."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import round_to_step
from generator.refinishing import CATALOGUE
from generator.refinishing.dilution_air import dilution_air, dilution_air_flow
from generator.refinishing.explosive_limit import (
    ppm_at_share,
    share_of_lower_limit,
    spill_vapour,
)
from tests.refinishing.asked import asked, exact

LIMITS = st.fractions("1/2", 12, max_denominator=10)
VAPOURS = st.integers(10, 60).map(Fraction)


@pytest.mark.parametrize(
    ("ppm", "limit", "printed"),
    [
        (1700, "1.7", "10.0"),  # NIOSH file of May 1994: 10 % of the limit is 1700 ppm
        (2500, "1.1", "22.7"),  # rule of the file, our numbers
    ],
)
def test_share_of_the_lower_explosive_limit(ppm, limit, printed):
    found = share_of_lower_limit(*exact(ppm, limit))
    assert abs(found - Fraction(printed)) <= Fraction("0.05")


def test_a_quarter_of_the_limit_in_parts_per_million():
    # rule of the NIOSH file, our numbers
    assert ppm_at_share(*exact("1.5", 25)) == 3750


@given(LIMITS, st.integers(1, 100).map(Fraction))
def test_share_and_concentration_undo_one_another(limit, share):
    assert share_of_lower_limit(ppm_at_share(limit, share), limit) == share


def test_a_quarter_of_the_limit_is_far_above_a_health_limit():
    # NIOSH file: xylene limit 0.9 to 1.1 % by volume, OSHA health limit 100 ppm
    assert ppm_at_share(*exact("0.9", 25)) > 20 * 100


@pytest.mark.parametrize("printed", ["1.2", "1.27", "1.4"])
def test_other_printed_limits_of_one_solvent_give_other_answers(printed):
    # toluene is printed with 1.1, 1.2, 1.27 and 1.4 %
    assert share_of_lower_limit(*exact(2500, printed)) < share_of_lower_limit(*exact(2500, "1.1"))


@pytest.mark.parametrize(
    ("spill", "percent", "share"),
    [
        ((100, "0.867", "92.14", 60, "1.1"), "0.038", "3.4"),  # gas law, our numbers
        ((250, "0.791", "58.08", 20, "2.5"), "0.410", "16.4"),  # the same
    ],
)
def test_a_spill_that_has_dried_up(spill, percent, share):
    found = spill_vapour(*exact(*spill))
    assert abs(found.vapour_percent - Fraction(percent)) <= Fraction("0.0005")
    assert abs(found.share_of_limit - Fraction(share)) <= Fraction("0.05")


def test_a_mole_of_vapour_fills_the_known_molar_volume():
    # 24.45 L per mole at 25 °C and one atmosphere, as the vapour conversion uses
    found = spill_vapour(*exact(100, 1, 100, 60, "1.1", 25))
    assert abs(found.vapour * 1000 - Fraction("24.45")) <= Fraction("0.02")


@given(st.integers(1, 900), st.integers(50, 200))
def test_twice_the_spill_is_twice_the_share(volume, mass):
    one = spill_vapour(*exact(volume, "0.8", mass, 100, 1))
    two = spill_vapour(*exact(2 * volume, "0.8", mass, 100, 1))
    assert two.share_of_limit == 2 * one.share_of_limit


@pytest.mark.parametrize(
    ("vapour", "limit", "wanted"), [("30.4", "1.4", 8565), ("24.8", "1.7", 5737), (36, "1.8", 7856)]
)
def test_air_for_each_gallon_rounds_up(vapour, limit, wanted):
    # 29 CFR 1910.94(c)(6)(ii), rule and rows from memory
    found = dilution_air(*exact(vapour, limit))
    assert round_to_step(found, Fraction(1), "up") == wanted


@given(VAPOURS, LIMITS)
def test_the_rule_asks_for_slightly_less_air_than_an_exact_dilution(vapour, limit):
    # exact: a quarter of the limit in air and vapour together
    quarter = limit / 4 / 100
    needed = vapour * (1 - quarter) / quarter
    rule = dilution_air(vapour, limit)
    assert rule < needed
    assert rule / needed == (100 - limit) / (100 - limit / 4)


def test_the_rule_is_one_to_two_percent_short_for_a_common_thinner():
    # exact dilution of vapour with a limit of 1.4 % to a quarter of it, in air and vapour together
    quarter = Fraction("0.0035")
    needed = Fraction("30.4") * (1 - quarter) / quarter
    short = 1 - dilution_air(*exact("30.4", "1.4")) / needed
    assert Fraction("0.01") < short < Fraction("0.02")


def test_the_flow_divides_by_the_minutes():
    # 0.5 gal of 8564.1 ft³ each in an hour; arithmetic
    found = dilution_air_flow(*exact("30.4", "1.4", "0.5", 60))
    assert found == dilution_air(*exact("30.4", "1.4")) / 120
    assert round_to_step(found, Fraction(1), "up") == 72


def test_litres_and_hours_give_the_same_flow():
    vapour, limit = "30.4 ft3/us_gal", "1.4 percent"
    one = asked(
        "dilution_air_flow", "cfm", vapour_per_gallon=vapour, lower_limit=limit,
        evaporated="1 us_gal", time="60 min",
    )  # fmt: skip
    other = asked(
        "dilution_air_flow", "cfm", vapour_per_gallon=vapour, lower_limit=limit,
        evaporated="3.785411784 L", time="1 h",
    )  # fmt: skip
    assert one == other


@pytest.mark.parametrize(
    "name",
    ["share_of_lower_limit", "ppm_at_share", "spill_vapour", "dilution_air", "dilution_air_flow"],
)
def test_every_explosive_limit_relation_says_it_is_a_fire_figure(name):
    caution = CATALOGUE[name].facts.caution
    assert "fire figure" in caution
    assert "health limit" in caution


@pytest.mark.parametrize(
    ("call", "numbers", "words"),
    [
        (share_of_lower_limit, (100, 0), "lower explosive limit"),
        (share_of_lower_limit, (100, 100), "lower explosive limit"),
        (ppm_at_share, ("1.4", 101), "share must be above 0 %"),
        (dilution_air, (0, "1.4"), "vapour of a gallon"),
        (dilution_air_flow, (30, "1.4", 1, 0), "time must be above zero"),
        (spill_vapour, (9000, "0.8", 90, 1, "1.4"), "does not fit the room"),
        (spill_vapour, (90, "0.8", 0, 1, "1.4"), "molecular mass"),
    ],
)
def test_impossible_vapours_are_refused(call, numbers, words):
    with pytest.raises(OutsideValidity, match=words):
        call(*exact(*numbers))
