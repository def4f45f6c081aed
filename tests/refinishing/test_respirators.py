"""Filter masks and air-fed masks: what a sum may say, and the cases where it must be silent."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import acceptance_band, round_to_step
from generator.refinishing import CATALOGUE
from generator.refinishing.respirators import (
    maximum_use_concentration,
    maximum_use_in_dust,
    protection_needed,
)
from generator.refinishing.supplied_air import breathing_air_dew_point, supplied_air_flow
from tests.refinishing.asked import asked, exact

MASKS = ("protection_needed", "maximum_use_concentration", "maximum_use_in_dust")
LIMITS = st.integers(1, 200).map(Fraction)
CAPS = st.integers(1, 20_000).map(Fraction)


def test_eighteen_times_the_limit_needs_the_full_facepiece():
    # 29 CFR 1910.134 Table 1: half mask 10, full facepiece 50; our numbers
    found = protection_needed(*exact(900, 50, 5000, 0))
    assert found == (18, 50)


@pytest.mark.parametrize(("ratio", "factor"), [("0.5", 10), (10, 10), ("10.1", 50), (50, 50)])
def test_the_next_factor_up_is_taken_and_the_quarter_mask_is_left_out(ratio, factor):
    # 29 CFR 1910.134 Table 1, without the quarter mask's 5
    found = protection_needed(*exact(Fraction(str(ratio)) * 20, 20, 5000, 0))
    assert found.factor == factor


def test_factor_times_limit_as_printed():
    # summaries of 29 CFR 1910.134(b): 10 times 50 µg/m³ of lead is 500 µg/m³
    found = asked(
        "maximum_use_in_dust", "ug/m3", protection_factor="10",
        exposure_limit="50 ug/m3", immediate_danger="100 mg/m3",
    )  # fmt: skip
    assert found == 500


def test_the_least_of_three_caps_decides():
    # factor times limit, immediate danger, the cartridge's own limit
    assert maximum_use_concentration(*exact(10, 50, 1000, 300, 0)) == 300
    assert maximum_use_concentration(*exact(10, 50, 400, 800, 0)) == 400
    assert maximum_use_concentration(*exact(10, 50, 1000, 800, 0)) == 500


@given(st.sampled_from([10, 25, 50, 1000]), LIMITS, CAPS, CAPS)
def test_the_answer_is_never_above_any_of_the_three(factor, limit, danger, cartridge):
    found = maximum_use_concentration(Fraction(factor), limit, danger, cartridge, Fraction(0))
    assert found <= min(factor * limit, danger, cartridge)


@given(LIMITS, st.integers(1, 49))
def test_dirtier_air_never_needs_a_lower_factor(limit, times):
    danger = limit * 1000
    low = protection_needed(limit * times, limit, danger, Fraction(0))
    high = protection_needed(limit * (times + 1), limit, danger, Fraction(0))
    assert high.factor >= low.factor


@pytest.mark.parametrize(
    ("call", "numbers", "words"),
    [
        (protection_needed, (1, 1, 9, 1), "isocyanates"),
        (protection_needed, (1, 1, 9, 0, 1), "supplied air"),
        (protection_needed, (1, 1, 9, 0, 0, 19), "oxygen"),
        (protection_needed, (9, 1, 9, 0), "IDLH"),
        (protection_needed, (60, 1, 900, 0), "air must be cleaned"),
        (protection_needed, (60, 0, 900, 0), "limit must be above zero"),
        (maximum_use_concentration, (10, 1, 9, 9, 1), "isocyanates"),
        (maximum_use_concentration, (10, 1, 9, 9, 0, 1), "supplied air"),
        (maximum_use_concentration, (10, 1, 9, 9, 0, 0, "19.4"), "oxygen"),
        (maximum_use_concentration, (5, 1, 9, 9, 0), "must be 10, 25, 50 or 1000"),
        (maximum_use_concentration, (100, 1, 9, 9, 0), "must be 10, 25, 50 or 1000"),
        (maximum_use_in_dust, (10, 1, 9, 19), "oxygen"),
    ],
)
def test_where_arithmetic_must_not_choose_a_mask_it_is_refused(call, numbers, words):
    with pytest.raises(OutsideValidity, match=words):
        call(*exact(*numbers))


@pytest.mark.parametrize("name", MASKS)
def test_every_mask_relation_says_that_isocyanates_are_not_reckoned(name):
    assert "Isocyanate" in CATALOGUE[name].facts.caution.title()
    assert "safety data sheet" in CATALOGUE[name].facts.caution


def test_more_than_the_maximum_never_passes_however_near():
    exact_limit = maximum_use_concentration(*exact("25", "2.35", 1000, 1000, 0))
    key = round_to_step(exact_limit, Fraction(1), "down")
    band = acceptance_band(exact_limit, Fraction(1), "down", Fraction(1, 2), "maximum")
    assert (key, band.holds(Fraction(59))) == (58, False)


def test_air_for_one_facepiece_and_two_hoods():
    # 42 CFR 84 Table 8: 115 L/min or 4 cfm, 170 L/min or 6 cfm; our sum
    assert supplied_air_flow(*exact(1, 2)) == (455, 16)


@given(st.integers(0, 9), st.integers(1, 9))
def test_one_more_hood_needs_more_air(tight, loose):
    before = supplied_air_flow(*exact(tight, loose))
    after = supplied_air_flow(*exact(tight, loose + 1))
    assert (after.flow - before.flow, after.flow_us - before.flow_us) == (170, 6)


def test_breathing_air_is_ten_fahrenheit_degrees_drier():
    # Washington rule on breathing air; 68 °F allows 58 °F
    assert asked("breathing_air_dew_point", "degF", shop_temperature="68 degF") == 58
    assert abs(breathing_air_dew_point(Fraction(20)) - Fraction("14.44")) < Fraction("0.005")


@pytest.mark.parametrize("masks", [(0, 0), (-1, 2), ("0.5", 1)])
def test_a_part_of_a_mask_is_refused(masks):
    with pytest.raises(OutsideValidity, match="masks"):
        supplied_air_flow(*exact(*masks))
