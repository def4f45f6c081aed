"""What a reader sees of a text: signs that nobody sees, and texts that read alike."""

import re
from collections.abc import Iterator
from functools import lru_cache
from unicodedata import category, name, normalize

from generator.diagnostics.place import Place
from generator.diagnostics.problem import Problem

# control signs, soft hyphens, marks without width or direction, line ends of other kinds, what is
# no character; a tab has a rule of its own in records and does no harm in a lesson
_ODD = re.compile(
    "[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u00ad\u0600-\u0605\u061c\u070f\u180e\u200b-\u200f"
    "\u2028-\u202e\u2060-\u206f\ud800-\uf8ff\ufff9-\uffff\U000e0000-\U0010ffff]|(?!\\A)\ufeff"
)
_NAMES = {"\0": "NUL", "\v": "vertical tab", "\f": "form feed", "\u0085": "next line"}


def odd_signs(text: str, path: str) -> Iterator[Problem]:
    """Yield an error for each sign of a file that nobody sees.

    text  the file's text
    path  how the file is named in messages
    """
    for match in _ODD.finditer(text):
        start = match.start()
        line = text.count("\n", 0, start) + 1
        place = Place(path, line, start - text.rfind("\n", 0, start))
        yield Problem(place, "error", "odd-sign", _said(match[0]), "take it out")


def _said(sign: str) -> str:
    words = _NAMES.get(sign) or name(sign, "no character").lower()
    return f"there is a character here that nobody sees: U+{ord(sign):04X}, {words}"


@lru_cache(maxsize=8192)
def normal(text: str) -> str:
    """Return a text without the differences that do not matter to a reader."""
    seen = normalize("NFKC", text)
    if not seen.isascii():
        seen = "".join(letter for letter in seen if category(letter) != "Cf")
    return " ".join(seen.casefold().split()).rstrip(".,;:!? ")
