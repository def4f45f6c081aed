"""The accepted band round an answer."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.quantities import (
    Band,
    Direction,
    Limit,
    acceptance_band,
    round_to_step,
)

VALUES = st.fractions(min_value=-(10**5), max_value=10**5, max_denominator=10**4)
STEPS = st.sampled_from([Fraction(s) for s in ("0.01", "0.05", "0.1", "1", "5", "10")])
TOLERANCES = st.fractions(min_value=0, max_value=50, max_denominator=1000)
# a maximum rounds down and a minimum up; without a limit any direction goes
WAYS = st.sampled_from(
    [("none", "half"), ("none", "up"), ("none", "down"), ("maximum", "down"), ("minimum", "up")]
)


# binary floats refuse all three: 0.8 - 0.7 is 0.10000000000000009 there
@pytest.mark.parametrize(("key", "answer"), [("0.7", "0.8"), ("1.0", "1.1"), ("10.2", "10.3")])
def test_the_edge_of_a_band_passes(key: str, answer: str) -> None:
    band = acceptance_band(Fraction(key), Fraction("0.1"), "half", Fraction("0.1"), "none")
    assert band.holds(Fraction(answer))
    assert not band.holds(Fraction(answer) + Fraction(1, 10**9))


@given(VALUES, STEPS, TOLERANCES, WAYS)
def test_a_band_holds_its_rounded_key(
    exact: Fraction, step: Fraction, tolerance: Fraction, way: tuple[Limit, Direction]
) -> None:
    limit, direction = way
    band = acceptance_band(exact, step, direction, tolerance, limit)
    assert band.holds(round_to_step(exact, step, direction))
    assert band.holds(exact)


@given(VALUES, STEPS, TOLERANCES, st.fractions(min_value=Fraction(1, 10**6), max_value=100))
def test_nothing_past_a_limit_passes(
    exact: Fraction, step: Fraction, tolerance: Fraction, past: Fraction
) -> None:
    assert not acceptance_band(exact, step, "down", tolerance, "maximum").holds(exact + past)
    assert not acceptance_band(exact, step, "up", tolerance, "minimum").holds(exact - past)


def test_a_maximum_refuses_the_number_rounded_over_it() -> None:
    # common practice: with at most 0.905 allowed, 0.91 breaks the limit and 0.90 keeps it
    band = acceptance_band(
        Fraction("0.905"), Fraction("0.01"), "down", Fraction("0.005"), "maximum"
    )
    assert band == Band(Fraction("0.895"), Fraction("0.905"))
    assert band.holds(Fraction("0.9"))
    assert not band.holds(Fraction("0.91"))


@given(st.integers(-1000, 1000), STEPS)
def test_both_sides_of_a_tie_pass(steps: int, step: Fraction) -> None:
    exact = (steps + Fraction(1, 2)) * step
    band = acceptance_band(exact, step, "half", Fraction(0), "none")
    assert band.holds(steps * step)
    assert band.holds((steps + 1) * step)


def test_off_a_tie_a_zero_tolerance_takes_the_key_and_the_exact_number_only() -> None:
    band = acceptance_band(Fraction("127.8"), Fraction(1), "half", Fraction(0), "none")
    assert band == Band(Fraction("127.8"), Fraction(128))


def test_two_coats_do_not_pass_where_two_and_a_third_are_needed() -> None:
    # common practice: coats are counted up
    band = acceptance_band(Fraction(7, 3), Fraction(1), "up", Fraction(1, 2), "none")
    assert not band.holds(Fraction(2))
    assert band.holds(Fraction(3))


def test_a_wide_tolerance_on_an_amount_rounded_up_reaches_both_ways() -> None:
    band = acceptance_band(Fraction("1604.3"), Fraction(1), "up", Fraction(8), "none")
    assert band == Band(Fraction("1596.3"), Fraction("1612.3"))


@pytest.mark.parametrize(
    ("direction", "limit"),
    [("half", "maximum"), ("up", "maximum"), ("half", "minimum"), ("down", "minimum")],
)
def test_a_limit_rounded_to_its_unsafe_side_is_refused(direction: Direction, limit: Limit) -> None:
    with pytest.raises(ValueError, match="must be rounded"):
        acceptance_band(Fraction(1), Fraction(1), direction, Fraction(0), limit)


def test_a_negative_tolerance_is_refused() -> None:
    with pytest.raises(ValueError, match="below zero"):
        acceptance_band(Fraction(1), Fraction(1), "half", Fraction(-1), "none")


def test_a_band_without_bounds_holds_everything() -> None:
    assert Band(None, None).holds(Fraction(-5))
    assert not Band(None, Fraction(1)).holds(Fraction(2))
