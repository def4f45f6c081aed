"""Gloss levels against the published bands at 60 and 85 degrees."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.gloss import gloss_level
from tests.refinishing.asked import exact

# Master Painters Institute bands; our readings
READINGS = [((60,), 5), ((78,), 6), ((90,), 7), ((45,), 5)]
LOW_READINGS = [((3, 6), 1), ((8, 20), 2), ((15, 25), 3), ((28, 50), 4), ((22, 30), 3)]


@pytest.mark.parametrize(("readings", "level"), READINGS + LOW_READINGS)
def test_levels_by_the_published_bands(readings, level):
    assert gloss_level(*exact(*readings)) == level


@pytest.mark.parametrize("reading", [5, 20, "34.9"])
def test_low_gloss_asks_for_the_shallow_angle(reading):
    with pytest.raises(OutsideValidity, match="85°"):
        gloss_level(*exact(reading))


@pytest.mark.parametrize("readings", [(35, 60), (70,), (85,), (10, 20), (3, 10), (22, 35)])
def test_a_reading_on_the_line_between_two_levels_is_refused(readings):
    with pytest.raises(OutsideValidity, match="line between two levels"):
        gloss_level(*exact(*readings))


def test_readings_that_do_not_go_together_are_refused():
    with pytest.raises(OutsideValidity, match="no level"):
        gloss_level(*exact(30, 20))


@given(st.integers(36, 98), st.integers(1, 20))
def test_a_higher_reading_never_has_a_lower_level(reading, more):
    pair = [Fraction(reading) + Fraction(1, 2), Fraction(reading + more) + Fraction(1, 2)]
    assert gloss_level(pair[0]) <= gloss_level(pair[1])


def test_a_reading_of_zero_is_refused():
    with pytest.raises(OutsideValidity, match="must be above zero"):
        gloss_level(Fraction(0))
