"""Numbers cut to a few figures for reading; keys are never computed from these."""

from fractions import Fraction

from generator.quantities.units import Unit
from generator.quantities.wording import number_text, quantity_text

SHOWN_FIGURES = 5
MOST_PLACES = 12


def is_short(value: Fraction) -> bool:
    """Return whether a number ends within four decimals, so that it is shown exactly."""
    return (value * 10_000).denominator == 1


def short_number(value: Fraction) -> str:
    """Write a number exactly where that is short, else to about five figures."""
    return number_text(value, None if is_short(value) else _step(value))


def short_quantity(value: Fraction, unit: Unit) -> str:
    """Write a quantity exactly where that is short, else to about five figures."""
    return quantity_text(value, unit, None if is_short(value) else _step(value))


def _step(value: Fraction) -> Fraction:
    places, size = 0, abs(value)
    while places < MOST_PLACES and size * 10**places < 10 ** (SHOWN_FIGURES - 1):
        places += 1
    return Fraction(1, 10**places)
