"""Words of a variant that follow from its marking data, so that they need not be sent twice.

A rule such as "1m2" says: band 1, its middle, rounded half up to two decimals. Band 0 is that of
the answer, and the next ones are those of the known wrong ways. "l" is the low end rounded up, and
"h" the high end rounded down.
"""

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from fractions import Fraction
from math import ceil, floor
from typing import Any

_NUMBER = re.compile(r"[0-9]+(\.[0-9]{1,9})?\Z")
Bands = tuple[tuple[Fraction | None, Fraction | None], ...]


def followed(words: Sequence[str], bands: Sequence[Bands]) -> str:
    """Return the rule that gives the word of every variant from its bands, or "" if none does.

    words  the words of one place, in the order of the variants; bands in the same order
    """
    if not all(map(_NUMBER.match, words)):
        return ""
    places = len(words[0].partition(".")[2])
    for rule in _rules(len(bands[0]), places):
        if all(_word(rule, found) == word for word, found in zip(words, bands, strict=True)):
            return rule
    return ""


def bands_of(key: Mapping[str, Any]) -> Bands:
    """Return the exact bands of a numeric key: the answer's, then those of the wrong ways."""
    return tuple((_exact(one["low"]), _exact(one["high"])) for one in (key, *key["slips"]))


def _exact(text: str | None) -> Fraction | None:
    return None if text is None else Fraction(text)


def _rules(count: int, places: int) -> Iterator[str]:
    for band in range(count):
        yield from (f"{band}{end}{places}" for end in "mlh")


def _word(rule: str, bands: Bands) -> str | None:
    band, end, places = int(rule[:-2]), rule[-2], int(rule[-1])
    low, high = bands[band] if band < len(bands) else (None, None)
    if low is None or high is None:
        return None
    value = {"m": (low + high) / 2, "l": low, "h": high}[end]
    scaled = _ROUND[end](value * 10**places)
    if scaled < 0:
        return None
    text = str(scaled).rjust(places + 1, "0")
    return f"{text[:-places]}.{text[-places:]}" if places else text


_ROUND: dict[str, Callable[[Fraction], int]] = {
    "m": lambda value: floor(value + Fraction(1, 2)),
    "l": ceil,
    "h": floor,
}
