"""Mean, variance and correlation of whole numbers, exact up to the last square root."""

from collections.abc import Sequence
from fractions import Fraction
from math import atanh, copysign, sqrt, tanh
from statistics import NormalDist

from generator.marking.analysis.scores import Figure

# a correlation nearer to zero than this is called zero
NEAR_ZERO = 1e-9
NOBODY = "nobody took the test"
ONE_PERSON = "one person has no spread"


def mean(values: Sequence[int]) -> Fraction:
    """Return the mean; raises ZeroDivisionError for no values."""
    return Fraction(sum(values), len(values))


def variance(values: Sequence[int]) -> Fraction:
    """Return the mean squared distance from the mean (divisor n), exact."""
    count = len(values)
    return Fraction(count * sum(v * v for v in values) - sum(values) ** 2, count * count)


def sample_variance(values: Sequence[int]) -> Fraction:
    """Return the variance with the divisor n - 1; raises ZeroDivisionError for one value."""
    return variance(values) * Fraction(len(values), len(values) - 1)


def correlation(first: Sequence[int], second: Sequence[int]) -> Figure:
    """Return Pearson's r; between a 0/1 item and a score it is the point-biserial.

    Nothing where one of the two does not vary.
    """
    count = len(first)
    if count < 2:
        return Figure(None, ONE_PERSON if count else NOBODY)
    spread = variance(first) * variance(second)
    if spread == 0:
        which = (
            "everyone has the same score here"
            if variance(first) == 0
            else ("everyone has the same score on the rest")
        )
        return Figure(None, which)
    products = sum(a * b for a, b in zip(first, second, strict=True))
    together = Fraction(count * products - sum(first) * sum(second), count * count)
    return Figure(copysign(sqrt(together**2 / spread), together))


def correlation_interval(r: Figure, people: int, trust: float = 0.95) -> tuple[float, float] | None:
    """Return the interval of a correlation by Fisher's transformation.

    Nothing for fewer than four people, an undefined r, or an r of exactly 1 or -1.
    """
    if r.value is None or people < 4 or abs(r.value) >= 1:
        return None
    reach = two_sided(trust) / sqrt(people - 3)
    return tanh(atanh(r.value) - reach), tanh(atanh(r.value) + reach)


def share_interval(right: int, people: int, trust: float = 0.95) -> tuple[float, float] | None:
    """Return the interval of a share by Wilson's score method; None for nobody."""
    if people == 0:
        return None
    z, share = two_sided(trust), right / people
    below = 1 + z * z / people
    centre = (share + z * z / (2 * people)) / below
    reach = z * sqrt(share * (1 - share) / people + z * z / (4 * people * people)) / below
    return max(0.0, centre - reach), min(1.0, centre + reach)


def two_sided(trust: float) -> float:
    """Return how many standard errors on either side hold a share of a normal distribution."""
    return NormalDist().inv_cdf((1 + trust) / 2)
