"""The filter gauge; the rule wants a gauge, the rest is arithmetic."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, round_to_step, unit_named
from generator.refinishing import CATALOGUE
from generator.refinishing.air_filter import filter_by_reading, filter_by_rise

READINGS = st.integers(0, 100).map(lambda hundredths: Fraction(hundredths, 100))
RISES = st.integers(0, 100).map(lambda hundredths: Fraction(hundredths, 100))


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


def test_a_filter_below_its_limit_stays():
    # arithmetic: 0.15 clean, 0.40 now, change at a reading of 0.50
    found = filter_by_reading(*exact("0.15", "0.40", "0.50"))
    assert found.rise == Fraction("0.25")
    assert found.left == Fraction("0.10") and found.left > 0


def test_the_reading_in_pascals():
    # NIST SP 811: conventional inch of water 249.0889 Pa
    pascals = Quantity(Fraction("0.40"), unit_named("in_wg")).to(unit_named("Pa")).number
    assert abs(pascals - Fraction("99.63556")) < Fraction("0.00005")
    assert round_to_step(pascals, Fraction(1), "half") == 100


def test_a_limit_that_is_a_rise_is_not_a_limit_that_is_a_reading():
    # the same figure of 0.50, read two ways, decides differently at 0.55
    readings = exact("0.15", "0.55", "0.50")
    assert filter_by_reading(*readings).left < 0
    assert filter_by_rise(*readings).left > 0


@given(READINGS, RISES, RISES)
def test_a_rise_and_a_reading_agree_when_the_clean_reading_is_added(clean, rise, limit):
    now = clean + rise
    allowed = limit + Fraction(1, 100)
    assert filter_by_rise(clean, now, allowed) == filter_by_reading(clean, now, clean + allowed)


@given(READINGS, RISES)
def test_a_filter_exactly_at_its_limit_has_nothing_left(clean, rise):
    limit = clean + rise + Fraction(1, 100)
    assert filter_by_reading(clean, limit, limit).left == 0


@pytest.mark.parametrize("relation", [filter_by_reading, filter_by_rise])
def test_a_reading_below_clean_points_to_a_torn_filter(relation):
    with pytest.raises(OutsideValidity, match="torn or missing filter"):
        relation(*exact("0.15", "0.10", "0.50"))


def test_limits_that_leave_no_room_are_refused():
    with pytest.raises(OutsideValidity, match="above the clean reading"):
        filter_by_reading(*exact("0.15", "0.20", "0.15"))
    with pytest.raises(OutsideValidity, match="allowed rise"):
        filter_by_rise(*exact("0.15", "0.20", 0))


@pytest.mark.parametrize("name", ["filter_by_reading", "filter_by_rise"])
def test_loaded_filters_carry_the_fire_caution(name):
    caution = CATALOGUE[name].facts.caution
    assert "water-filled metal can" in caution and "a reading or a rise" in caution
