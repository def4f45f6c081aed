"""Sums that several topics share, in plain fractions; percents are numbers out of 100.

Metric and US sizes: 1 in = 25.4 mm, 1 US gallon = 231 cubic inches (NIST SP 811, B.8).
"""

from collections.abc import Callable, Iterable, Mapping
from fractions import Fraction
from typing import Any

Numbers = Mapping[str, Any]
Working = Callable[[Numbers], Any]

MICROMETRES_IN_A_MIL = Fraction(254, 10)
LITRES_IN_A_GALLON = 231 * Fraction(254, 100) ** 3 / 1000
# one gallon in a layer of one thousandth of an inch, in square feet of 144 square inches
SQUARE_FEET_AT_A_MIL = Fraction(231 * 1000, 144)
OUNCES_IN_A_GALLON = 128
QUARTS_IN_A_GALLON = 4


def percent(number: Fraction) -> Fraction:
    return number / 100


def celsius(fahrenheit: Fraction) -> Fraction:
    return (fahrenheit - 32) * 5 / 9


def fahrenheit(celsius: Fraction) -> Fraction:
    return celsius * 9 / 5 + 32


def kelvins(fahrenheit_step: Fraction) -> Fraction:
    return fahrenheit_step * 5 / 9


def doubled(times: Fraction) -> Any:
    """Return 2 to a power; a whole power stays exact, so that rounding up adds nothing to it."""
    return Fraction(2) ** int(times) if times.denominator == 1 else 2 ** float(times)


def whole_up(number: Fraction) -> Fraction:
    return Fraction(-(-number // 1))


def mean_by(parts: Iterable[Fraction], values: Iterable[Fraction]) -> Fraction:
    """Average values, each counted by its parts."""
    pairs = list(zip(parts, values, strict=True))
    return sum((part * value for part, value in pairs), Fraction(0)) / sum(p for p, _ in pairs)


def wet(dry: Fraction, solids: Fraction, thinner: Fraction = Fraction(0)) -> Fraction:
    """Wet film that leaves a dry film: thinner swells the volume and brings no solids."""
    return dry * (100 + thinner) / solids


def dry(wet_film: Fraction, solids: Fraction, thinner: Fraction = Fraction(0)) -> Fraction:
    return wet_film * solids / (100 + thinner)


def coats(target: Fraction, wet_film: Fraction, solids: Fraction) -> Fraction:
    """Fewest whole coats: the quotient when it is whole, else the next whole number."""
    return whole_up(target * 100 / (wet_film * solids))


def millilitres_on(
    area: Fraction, dry_film: Fraction, solids: Fraction, efficiency: Fraction
) -> Fraction:
    """Square metres times micrometres make millilitres; losses and solids divide."""
    return area * dry_film / percent(solids) / percent(efficiency)
