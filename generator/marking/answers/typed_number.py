"""A written number parted from the unit behind it."""

import re
from dataclasses import dataclass
from fractions import Fraction

from generator.quantities import LONGEST_NUMBER, read_number

_PARTS = re.compile(r"([-\u2212+]?\s*[0-9.,/\u2044 ½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]+)(.*)", flags=re.DOTALL)
# a byte order mark that came along with pasted text is no more than a space
_SPACES = re.compile(r"[\s\ufeff]+")


@dataclass(frozen=True, slots=True)
class TypedNumber:
    """A number as written.

    value   exact
    number  its text, for counting figures
    unit    the text behind it; empty when there is none
    """

    value: Fraction
    number: str
    unit: str


def read_typed(text: str) -> TypedNumber | str:
    """Read a number with or without a unit, or say in a sentence why it cannot be read."""
    plain = _SPACES.sub(" ", text).strip()
    parts = _PARTS.fullmatch(plain)
    if len(plain) > LONGEST_NUMBER or parts is None:
        return "This cannot be read as one number."
    number, unit = parts[1].strip(), parts[2].strip()
    value = read_number(number)
    if value is None:
        return _why_not(number)
    return TypedNumber(value, number, unit)


def _why_not(number: str) -> str:
    if re.search(r"[.,].*[.,]|^[1-9][0-9]{0,2},[0-9]{3}$", number):
        return "Comma and point can be read in two ways here."
    if re.search(r"/ ?0+$", number):
        return "This divides by zero."
    return "This cannot be read as one number."
