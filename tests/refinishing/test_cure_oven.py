"""Oven time counted from the panel; the textbook equation is from memory."""

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import round_to_step
from generator.refinishing import CATALOGUE
from generator.refinishing.cure_oven import oven_time

FINE = Fraction("0.05")
STARTS = st.integers(5, 40).map(Fraction)
RISES = st.integers(1, 30).map(Fraction)
CONSTANTS = st.integers(1, 30).map(Fraction)


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


@pytest.mark.parametrize(("air", "heat_up", "total"), [(70, "12.9", "42.9"), (80, "8.8", "38.8")])
def test_heat_up_and_hold(air, heat_up, total):
    # first-order heating, from memory
    found = oven_time(*exact(air, 20, 60, 8, 30))
    assert abs(found.heat_up - Fraction(heat_up)) <= FINE
    assert abs(found.total - Fraction(total)) <= FINE
    assert CATALOGUE["oven_time"].facts.status == "from_memory"


def test_the_whole_time_is_rounded_up():
    facts = CATALOGUE["oven_time"].facts
    total = oven_time(*exact(70, 20, 60, 8, 30)).total
    assert round_to_step(total, Fraction(1), facts.rounding["total"]) == 43
    assert facts.limit == {"total": "minimum"}


@given(STARTS, RISES, RISES, CONSTANTS)
def test_the_panel_reaches_the_wanted_temperature_when_the_heat_up_is_over(start, rise, more, tau):
    # small steps of Newton's law of heating as oracle
    wanted, air = start + rise, start + rise + more
    heat_up = float(oven_time(air, start, wanted, tau, Fraction(1)).heat_up)
    steps = 2000
    step = heat_up / steps / float(tau)
    metal = float(start)
    for _ in range(steps):
        metal += step / (1 + step / 2) * (float(air) - metal)
    assert metal == pytest.approx(float(wanted), abs=0.1)


@given(STARTS, RISES, RISES, CONSTANTS)
def test_hotter_air_and_a_warmer_start_save_time(start, rise, more, tau):
    wanted, air = start + rise, start + rise + more
    hold = Fraction(30)
    base = oven_time(air, start, wanted, tau, hold)
    assert oven_time(air + 1, start, wanted, tau, hold).heat_up < base.heat_up
    assert oven_time(air, start - 1, wanted, tau, hold).heat_up > base.heat_up
    assert base.total == base.heat_up + hold


def test_one_time_constant_takes_the_gap_down_to_a_third():
    # definition of a time constant
    air, gap = Fraction(70), Fraction(50)
    wanted = air - Fraction(f"{float(gap) / math.e:.9f}")
    assert abs(oven_time(air, air - gap, wanted, Fraction(8), Fraction(1)).heat_up - 8) < FINE


@pytest.mark.parametrize(
    ("numbers", "words"),
    [
        ((60, 20, 60, 8, 30), "below the oven air"),
        ((55, 20, 60, 8, 30), "below the oven air"),
        ((70, 60, 60, 8, 30), "start below"),
        ((70, 20, 60, 0, 30), "time constant"),
        ((70, 20, 60, 8, 0), "hold"),
    ],
)
def test_bakes_that_cannot_be_are_refused(numbers, words):
    with pytest.raises(OutsideValidity, match=words):
        oven_time(*exact(*numbers))


@pytest.mark.parametrize("word", ["traction battery", "airbags", "plastics", "gas tanks", "panel"])
def test_an_oven_row_never_stands_bare(word):
    assert word in CATALOGUE["oven_time"].facts.caution
