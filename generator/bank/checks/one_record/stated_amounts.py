"""The amount or range that a short text states, in base units, so that two texts compare."""

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from math import gcd

from generator.diagnostics import normal
from generator.quantities import BARE, UNITS, Unit, read_number

_SYMBOLS = sorted({unit.symbol for unit in UNITS.values() if unit.symbol}, key=len, reverse=True)
_UNIT = "|".join(map(re.escape, _SYMBOLS))
_NUMBER = r"[-\u2212]?\d[\d,]*(?:\.\d+)?(?:[ ]\d/\d)?"
_AMOUNT = re.compile(
    rf"(?<![\w.])(?:(?P<clock>\d{{1,2}}:[0-5]\d)(?!:)|(?P<ratio>\d+(?::\d+)+)|(?P<first>{_NUMBER})"
    rf"(?:[ \u00a0]?(?P<first_unit>{_UNIT})\b)?"
    rf"(?: (?:to|and) (?P<last>{_NUMBER}))?(?:[ \u00a0]?(?P<unit>{_UNIT})(?![\w²³/]))?)(?![\w:])"
)
_BELOW = re.compile(r"\b(?:less than|under|below|up to|at most|no more than|not more than)\b")
_ABOVE = re.compile(r"\b(?:more than|over|above|at least|no less than|not less than)\b")
_LINKS = re.compile(r"\b(?:about|around|between|from|only|exactly|roughly)\b")
_WORDS = {"percent": "%", "inch": "in", "inches": "in", "minutes": "min", "hours": "h"}
_SPELT = re.compile(rf"(?<=\d )(?:{'|'.join(_WORDS)})\b")
_MOST_CHARACTERS = 120


@dataclass(frozen=True, slots=True)
class Stated:
    """One amount or range of a text.

    kind  what it measures: a ratio, a time of the day, or a dimension
    low   its start in base units, None where it has none; high its end in the same way
    rest  the text without the amount and the words of its direction
    """

    kind: str
    low: Fraction | None
    high: Fraction | None
    rest: str

    def same_as(self, other: "Stated") -> bool:
        """Say whether two texts state the same amount and nothing else besides."""
        return (self.kind, self.low, self.high, self.rest) == (
            other.kind, other.low, other.high, other.rest,
        )  # fmt: skip

    def overlaps(self, other: "Stated") -> bool:
        """Say whether a value can lie inside both; ends that touch do not count."""
        if self.kind != other.kind or self.kind == "ratio":
            return False
        return _starts_before_end(self, other) and _starts_before_end(other, self)

    @property
    def start(self) -> Fraction:
        """Return what the text is sorted by; without a start it is sorted by its end."""
        ends = [end for end in (self.low, self.high) if end is not None]
        return ends[0]


def _starts_before_end(one: Stated, other: Stated) -> bool:
    return one.low is None or other.high is None or one.low < other.high


@cache
def stated_amount(text: str) -> Stated | None:
    """Return the one amount or range in a text, or None where it holds none or several."""
    if len(text) > _MOST_CHARACTERS or not re.search(r"\d", text):
        return None
    plain = _SPELT.sub(lambda match: _WORDS[match[0]], text.replace("\u00a0", " "))
    found = list(_AMOUNT.finditer(plain))
    if len(found) != 1:
        return None
    match = found[0]
    rest = plain[: match.start()] + "#" + plain[match.end() :]
    if re.search(r"\d", rest):
        return None
    if match["clock"]:
        hours, minutes = match["clock"].split(":")
        time = Fraction(60 * int(hours) + int(minutes))
        return Stated("clock", time, time, normal(rest))
    return _ratio(match["ratio"], rest) if match["ratio"] else _quantity(match, rest)


def _ratio(text: str, rest: str) -> Stated:
    parts = [int(part) for part in text.split(":")]
    size = gcd(*parts) or 1
    shown = ":".join(str(part // size) for part in parts)
    first = Fraction(parts[0], parts[1]) if parts[1] else Fraction(0)
    return Stated("ratio", first, first, f"{normal(rest)} {shown}")


def _quantity(match: re.Match[str], rest: str) -> Stated | None:
    unit = _unit(match["unit"] or match["first_unit"])
    first, last = _size(match["first"], unit), _size(match["last"] or match["first"], unit)
    if first is None or last is None:
        return None
    kind = f"{unit.dimension} {unit.point}" if unit else f"{BARE} {False}"
    low: Fraction | None = min(first, last)
    high: Fraction | None = max(first, last)
    words = normal(rest)
    if _BELOW.search(words):
        low, words = None, _BELOW.sub("", words)
    elif _ABOVE.search(words):
        high, words = None, _ABOVE.sub("", words)
    return Stated(kind, low, high, " ".join(_LINKS.sub("", words).split()))


def _unit(symbol: str | None) -> Unit | None:
    # a temperature is read on its scale, and not as a difference
    named = sorted(
        (u for u in UNITS.values() if u.symbol == symbol), key=lambda unit: not unit.point
    )
    return named[0] if symbol and named else None


def _size(text: str, unit: Unit | None) -> Fraction | None:
    number = read_number(text if text.count(",") == 0 else text.replace(",", ""))
    if number is None or unit is None:
        return number
    return number * unit.factor + unit.offset
