"""Numbers and quantities as readers see them."""

from fractions import Fraction

from generator.quantities.rounding import round_to_step
from generator.quantities.units import Unit

NO_BREAK_SPACE = "\u00a0"


def number_text(value: Fraction, step: Fraction | None = None) -> str:
    """Write a number with a decimal point and no exponent.

    step  round to it, ties away from zero, and show its decimal places; without it the number
          is written exactly, as decimals where they end and as 385/3 where they do not
    Raises ValueError when the step is not above zero or has endless decimals.
    """
    if step is None:
        places = _decimal_places(value)
        return str(value) if places is None else _decimal_text(value, places)
    places = _decimal_places(step)
    if places is None:
        raise ValueError("a rounding step must be a number whose decimals end")
    return _decimal_text(round_to_step(value, step, "half"), places)


def quantity_text(number: Fraction, unit: Unit, step: Fraction | None = None) -> str:
    """Write a number with its unit's symbol after a no-break space."""
    shown = number_text(number, step)
    symbol = unit.singular if unit.singular and shown == "1" else unit.symbol
    return f"{shown}{NO_BREAK_SPACE}{symbol}" if symbol else shown


def _decimal_places(value: Fraction) -> int | None:
    rest = value.denominator
    twos = fives = 0
    while rest % 2 == 0:
        rest //= 2
        twos += 1
    while rest % 5 == 0:
        rest //= 5
        fives += 1
    return max(twos, fives) if rest == 1 else None


def _decimal_text(value: Fraction, places: int) -> str:
    digits = str(abs(value.numerator) * 10**places // value.denominator).rjust(places + 1, "0")
    sign = "-" if value < 0 else ""
    if places == 0:
        return sign + digits
    return f"{sign}{digits[:-places]}.{digits[-places:]}"
