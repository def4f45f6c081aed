"""The size that an option states, so that options which are all sizes stand in rising order."""

import re
from fractions import Fraction

_FEWEST_WORDS_OF_A_SENTENCE = 7
_BEFORE = frozenset(
    ["a", "about", "at", "around", "between", "from", "nearly", "only", "up", "to", "within"]
)
_BELOW, _ABOVE = frozenset(("less", "under", "below")), frozenset(("more", "over", "above"))
_WORDS = {
    word: Fraction(number)
    for number, word in enumerate(
        [
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
        ]
    )
}
_PARTS = {"half": 2, "third": 3, "quarter": 4, "fifth": 5, "tenth": 10}
# in seconds
_TIMES = {"s": 1, "second": 1, "min": 60, "minute": 60, "h": 3600, "hour": 3600, "day": 86400}
_TIMES |= {"week": 7 * 86400, "month": 30 * 86400, "year": 365 * 86400}
_NUMBER = re.compile(r"p?(-?\d+(?:\.\d+)?)\Z")
_CLOCK = re.compile(r"(\d{1,2}):(\d{2})\Z")
_TINY = Fraction(1, 10**6)


def stated_size(text: str) -> Fraction | None:
    """Return the number that an option begins with, times in seconds; None where it has none.

    'Less than 75' stands just below 75 and 'more than 125' just above 125. A number in words or
    behind other words counts only in a short option, since a sentence may begin with 'one' too.
    """
    words = text.lower().replace("\u00a0", " ").replace("\u2212", "-").split()
    words = [word.rstrip(".,;") for word in words]
    place = next((n for n, word in enumerate(words) if _number(word) is not None), None)
    if place is None or not all(_leads(word) for word in words[:place]):
        return None
    plain = place == 0 and words[0][-1].isdigit()
    if not plain and len(words) >= _FEWEST_WORDS_OF_A_SENTENCE:
        return None
    size = _size(words, place)
    before = set(words[:place])
    return size - _TINY * bool(before & _BELOW) + _TINY * bool(before & _ABOVE)


def _leads(word: str) -> bool:
    return word in _BEFORE or word in _BELOW or word in _ABOVE or word == "than"


def _size(words: list[str], place: int) -> Fraction:
    size, after = _number(words[place]) or Fraction(0), words[place + 1 :]
    if after and after[0].removesuffix("s") in _PARTS:
        return size / _PARTS[after[0].removesuffix("s")]
    if "next" in after and _CLOCK.match(words[place]):
        size += _TIMES["day"]
    unit = next((word for word in after if word not in ("to", "and") and not _number(word)), "")
    return size * _TIMES.get(unit, _TIMES.get(unit.removesuffix("s"), 1))


def _number(word: str) -> Fraction | None:
    if word in _WORDS:
        return _WORDS[word]
    if word.removesuffix("s") in _PARTS:
        return Fraction(1, _PARTS[word.removesuffix("s")])
    if clock := _CLOCK.match(word):
        return Fraction(3600 * int(clock[1]) + 60 * int(clock[2]))
    plain = _NUMBER.match(word)
    return Fraction(plain[1]) if plain else None
