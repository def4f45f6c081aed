"""Which answers pass: the accepted band round an unrounded answer."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from generator.quantities.rounding import Direction, is_tie, round_to_step

Limit = Literal["none", "maximum", "minimum"]


@dataclass(frozen=True, slots=True)
class Band:
    """The accepted numbers; both ends pass.

    low, high  exact, in the answer's unit; None means no bound on that side
    """

    low: Fraction | None
    high: Fraction | None

    def holds(self, value: Fraction) -> bool:
        """Return whether a value passes."""
        above = self.low is None or value >= self.low
        below = self.high is None or value <= self.high
        return above and below


def acceptance_band(
    exact: Fraction,
    step: Fraction,
    direction: Direction,
    tolerance: Fraction,
    limit: Limit,
) -> Band:
    """Build the band that accepts an answer; it always holds the rounded key.

    exact      the unrounded answer
    step       what the answer is rounded to
    tolerance  how far from right still passes, in the answer's unit
    limit      maximum: nothing above the exact answer passes; minimum: nothing below
    Raises ValueError for a negative tolerance, a maximum not rounded down, a minimum not
    rounded up.
    """
    if tolerance < 0:
        raise ValueError("a tolerance cannot be below zero")
    key = round_to_step(exact, step, direction)
    if limit == "maximum":
        _require(direction, "down", "a maximum must be rounded down")
        return Band(key - tolerance, exact)
    if limit == "minimum":
        _require(direction, "up", "a minimum must be rounded up")
        return Band(exact, key + tolerance)
    return _open_band(exact, step, direction, tolerance, key)


def _open_band(
    exact: Fraction, step: Fraction, direction: Direction, tolerance: Fraction, key: Fraction
) -> Band:
    reach = tolerance
    if direction == "half" and is_tie(exact, step):
        reach = max(reach, step / 2)
    low = min(exact - reach, key)
    high = max(exact + reach, key)
    # a count such as coats: half a step of slack must not let the next whole number through
    if direction == "up" and tolerance < step:
        low = exact
    if direction == "down" and tolerance < step:
        high = exact
    return Band(low, high)


def _require(direction: Direction, wanted: Direction, message: str) -> None:
    if direction != wanted:
        raise ValueError(message)
