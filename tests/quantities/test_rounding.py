"""Rounding in exact arithmetic."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.quantities import Direction, is_tie, round_to_step

VALUES = st.fractions(min_value=-(10**6), max_value=10**6, max_denominator=10**4)
STEPS = st.sampled_from([Fraction(s) for s in ("0.01", "0.05", "0.1", "0.25", "1", "5", "10")])
DIRECTIONS = st.sampled_from(["half", "up", "down"])


# binary floats give 2.67 and 1.0 for the first two; decimal arithmetic gives these.
# 45.75, 45.45 and 45.45001 are the examples of ASTM E29, with its even tie told apart below
@pytest.mark.parametrize(
    ("value", "step", "rounded"),
    [
        ("2.675", "0.01", "2.68"),
        ("1.005", "0.01", "1.01"),
        ("45.75", "0.1", "45.8"),
        ("45.45001", "0.1", "45.5"),
        ("45.45", "0.1", "45.5"),
        ("-2.5", "1", "-3"),
        ("2.5", "1", "3"),
        ("-2.4", "1", "-2"),
        ("127.5", "5", "130"),
        ("0", "0.1", "0"),
    ],
)
def test_half_goes_away_from_zero(value: str, step: str, rounded: str) -> None:
    assert round_to_step(Fraction(value), Fraction(step), "half") == Fraction(rounded)


@pytest.mark.parametrize(
    ("value", "direction", "rounded"),
    [
        ("2.01", "up", 3),
        ("2", "up", 2),
        ("-2.5", "up", -2),
        ("2.99", "down", 2),
        ("-2.1", "down", -3),
    ],
)
def test_up_and_down_keep_to_their_side(value: str, direction: Direction, rounded: int) -> None:
    assert round_to_step(Fraction(value), Fraction(1), direction) == rounded


@given(VALUES, VALUES, STEPS, DIRECTIONS)
def test_rounding_never_swaps_two_numbers(
    a: Fraction, b: Fraction, step: Fraction, direction: Direction
) -> None:
    low, high = sorted((a, b))
    assert round_to_step(low, step, direction) <= round_to_step(high, step, direction)


@given(VALUES, STEPS, DIRECTIONS)
def test_a_rounded_number_is_whole_steps_close_by_and_stays(
    value: Fraction, step: Fraction, direction: Direction
) -> None:
    rounded = round_to_step(value, step, direction)
    assert (rounded / step).denominator == 1
    assert abs(rounded - value) <= (step / 2 if direction == "half" else step)
    assert round_to_step(rounded, step, direction) == rounded


@given(VALUES, STEPS)
def test_rounding_mirrors_round_zero(value: Fraction, step: Fraction) -> None:
    assert round_to_step(-value, step, "half") == -round_to_step(value, step, "half")
    assert round_to_step(-value, step, "up") == -round_to_step(value, step, "down")


def test_a_tie_is_told_exactly() -> None:
    assert is_tie(Fraction("2.675"), Fraction("0.01"))
    assert not is_tie(Fraction("2.6750001"), Fraction("0.01"))


@pytest.mark.parametrize("step", [0, -1])
def test_a_step_must_be_above_zero(step: int) -> None:
    with pytest.raises(ValueError, match="above zero"):
        round_to_step(Fraction(1), Fraction(step), "half")
