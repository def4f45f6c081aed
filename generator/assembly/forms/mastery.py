"""What a score shows: Wilson's interval, and the marks at which mastery is shown."""

from collections.abc import Sequence
from fractions import Fraction
from math import sqrt

# standard normal quantiles: 95 % on one side, and 95 % between two sides
ONE_SIDED_95 = 1.6448536269514722
TWO_SIDED_95 = 1.959963984540054


def wilson_interval(share: float, number: float, z: float = TWO_SIDED_95) -> tuple[float, float]:
    """Return Wilson's score interval (1927) for a share of a number of questions, 0 to 1."""
    square = z * z / number
    centre = (share + square / 2) / (1 + square)
    half = z * sqrt(share * (1 - share) / number + square / (4 * number)) / (1 + square)
    return max(0.0, centre - half), min(1.0, centre + half)


def effective_number(marks: Sequence[int]) -> Fraction:
    """Return how many equally weighted questions tell as much: (sum of marks)² / sum of marks².

    A paper of equal marks gives its own length; a few heavy questions tell less.
    """
    return Fraction(sum(marks) ** 2, sum(mark * mark for mark in marks))


def mastery_marks(marks: Sequence[int], standard_percent: int) -> int | None:
    """Return the fewest marks that show a standard, or None where the paper is too short.

    marks             of each question
    standard_percent  the share of the domain that a master knows
    Shown means that the one-sided 95 % lower bound (Wilson) is at the standard or above it.
    """
    total, number = sum(marks), float(effective_number(marks))
    standard = standard_percent / 100
    for score in range(total + 1):
        low, _ = wilson_interval(score / total, number, ONE_SIDED_95)
        if low >= standard:
            return score
    return None
