"""Reading a number that a learner typed or wrote."""

import re
from fractions import Fraction

LONGEST_NUMBER = 60

_GLYPHS = {
    "½": "1/2",
    "⅓": "1/3",
    "⅔": "2/3",
    "¼": "1/4",
    "¾": "3/4",
    "⅕": "1/5",
    "⅖": "2/5",
    "⅗": "3/5",
    "⅘": "4/5",
    "⅙": "1/6",
    "⅚": "5/6",
    "⅛": "1/8",
    "⅜": "3/8",
    "⅝": "5/8",
    "⅞": "7/8",
}
_SPACES = re.compile("[ \u00a0\u2009\u202f]+")
_DECIMAL = re.compile(r"[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+")
_THOUSANDS = re.compile(r"[1-9][0-9]{0,2},[0-9]{3}")
_MIXED = re.compile(r"(?:([0-9]+) )?([0-9]+) ?/ ?([0-9]+)")


def read_number(text: str) -> Fraction | None:
    """Read 12.5, 12,5, 1 1/2, 3/4, ½ or 1½, with a sign in front or none.

    Returns None when the text is no number, is longer than 60 characters, divides by zero, has
    an exponent, or could be thousands: 1,234 and 1,234.5 and 1.234,5 (12,50 and 0,125 are read).
    """
    if len(text) > LONGEST_NUMBER:
        return None
    plain = _SPACES.sub(" ", text).strip(" ")
    negative = plain[:1] in ("-", "\u2212")
    if negative or plain[:1] == "+":
        plain = plain[1:].lstrip(" ")
    size = _unsigned(_spelt_out(plain))
    return -size if negative and size is not None else size


def _spelt_out(plain: str) -> str:
    fraction = _GLYPHS.get(plain[-1:])
    if fraction is None:
        return plain.replace("\u2044", "/")
    return f"{plain[:-1].rstrip(' ')} {fraction}".lstrip(" ")


def _unsigned(plain: str) -> Fraction | None:
    if _THOUSANDS.fullmatch(plain):
        return None
    if _DECIMAL.fullmatch(plain):
        return Fraction(plain.replace(",", ".").rstrip("."))
    mixed = _MIXED.fullmatch(plain)
    if mixed is None or int(mixed[3]) == 0:
        return None
    return int(mixed[1] or 0) + Fraction(int(mixed[2]), int(mixed[3]))
