"""The four-cup of GB/T 1723 and the place where its two lines overlap."""

from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing import CATALOGUE
from generator.refinishing.flow_cup_four import (
    QUICK_SLOPE,
    QUICK_START,
    SLOW_SLOPE,
    SLOW_START,
    four_cup_seconds,
    four_cup_viscosity,
)

QUICK_ENDS = (23 - QUICK_START) / QUICK_SLOPE
SLOW_BEGINS = (23 - SLOW_START) / SLOW_SLOPE


def test_seconds_on_the_slow_line():
    # GB/T 1723: t = 0.223 ν + 6.0, our number
    assert four_cup_seconds(Fraction(100)) == Fraction("28.3")
    assert four_cup_viscosity(Fraction("28.3")) == 100


def test_seconds_on_the_quick_line():
    # GB/T 1723: t = 0.154 ν + 11, our number
    assert four_cup_seconds(Fraction(50)) == Fraction("18.7")
    assert four_cup_viscosity(Fraction("18.7")) == 50


def test_in_the_overlap_the_quick_line_wins():
    # GB/T 1723 gives no word on it: both lines hold from 76.2 to 77.9 mm²/s
    assert SLOW_BEGINS < QUICK_ENDS
    both = (SLOW_BEGINS + QUICK_ENDS) / 2
    assert four_cup_seconds(both) == QUICK_SLOPE * both + QUICK_START < 23
    assert SLOW_SLOPE * both + SLOW_START > 23
    assert "quick line wins" in CATALOGUE["four_cup_seconds"].notes["Deviates"]


def test_the_step_at_the_meeting_place_is_as_small_as_stated():
    before = four_cup_seconds(QUICK_ENDS - Fraction(1, 10**6))
    after = four_cup_seconds(QUICK_ENDS)
    assert 0 < after - before < Fraction("0.4")
    assert after - before > Fraction("0.35")


@given(st.integers(1, 6400))
def test_thicker_paint_never_runs_shorter(tenths):
    first = four_cup_seconds(Fraction(tenths, 10))
    assert first < four_cup_seconds(Fraction(tenths + 1, 10))


@given(st.integers(1, 6400).map(lambda tenths: Fraction(tenths, 10)))
def test_viscosity_undoes_the_seconds(viscosity):
    assert four_cup_viscosity(four_cup_seconds(viscosity)) == viscosity


@given(st.integers(232, 1500).map(lambda tenths: Fraction(tenths, 10)))
def test_seconds_undo_the_viscosity_clear_of_the_overlap(seconds):
    viscosity = four_cup_viscosity(seconds)
    assume(viscosity >= QUICK_ENDS)
    assert four_cup_seconds(viscosity) == seconds


@pytest.mark.parametrize("seconds", ["11", "150.1", "5"])
def test_seconds_outside_the_cup_are_refused(seconds):
    with pytest.raises(OutsideValidity, match="150 s"):
        four_cup_viscosity(Fraction(seconds))


def test_paint_too_thick_for_the_cup_is_refused():
    assert four_cup_seconds(Fraction(144) / SLOW_SLOPE) == 150
    with pytest.raises(OutsideValidity, match="another cup"):
        four_cup_seconds(Fraction(646))
    with pytest.raises(OutsideValidity, match="viscosity"):
        four_cup_seconds(Fraction(0))
