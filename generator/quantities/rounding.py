"""Rounding to a step in exact arithmetic."""

from fractions import Fraction
from math import floor
from typing import Literal

Direction = Literal["half", "up", "down"]


def round_to_step(value: Fraction, step: Fraction, direction: Direction) -> Fraction:
    """Round a value to a whole number of steps.

    direction  half: to the nearest, a tie away from zero; up: never smaller; down: never larger
    Raises ValueError when the step is not above zero.
    """
    if step <= 0:
        raise ValueError("a rounding step must be above zero")
    steps = value / step
    if direction == "up":
        return -floor(-steps) * step
    if direction == "down":
        return floor(steps) * step
    nearest = floor(abs(steps) + Fraction(1, 2))
    return (nearest if steps >= 0 else -nearest) * step


def is_tie(value: Fraction, step: Fraction) -> bool:
    """Return whether a value lies exactly midway between two whole numbers of steps."""
    return (value / step) % 1 == Fraction(1, 2)
