"""JSON text as values that know their place, for files that come from outside (RFC 8259)."""

import re
from bisect import bisect_right
from collections.abc import Callable
from dataclasses import dataclass
from json import JSONDecodeError, JSONDecoder
from typing import Any, NoReturn

from generator.diagnostics import Place

DEEPEST = 8
LONGEST_NUMBER = 40
_SPACE = re.compile(r"[ \t\r\n]*")
_NUMBER = re.compile(r"-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?")
_WORDS = {"true": True, "false": False, "null": None}
_ODD = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\ud800-\udfff]")
_SHOWN = 40


@dataclass(frozen=True, slots=True)
class Located:
    """A value and where it begins.

    value  a text, number, truth value or None; a tuple of Located; or a dict of names to Located
    """

    value: Any
    place: Place


class BrokenJson(ValueError):
    """A text that is not read; says why, and `place` says where."""

    def __init__(self, place: Place, message: str) -> None:
        super().__init__(message)
        self.place = place


def read_located(text: str, path: str) -> Located:
    """Read a JSON text of at most a few levels; raises BrokenJson.

    Refuses what JSON does not have or what hides something: NaN, a name twice in one object,
    control characters other than tab and line ends, halves of characters.
    """
    return _Reader(text.removeprefix("\ufeff"), path).whole()


class _Reader:
    """Walks through the text once."""

    def __init__(self, text: str, path: str) -> None:
        self.text, self.path, self.spot = text, path, 0
        self._decoder = JSONDecoder()
        self._lines = [0, *(found.end() for found in re.finditer("\n", text))]

    def whole(self) -> Located:
        found = self._value(1)
        self._pass_space()
        if self.spot < len(self.text):
            self._refuse("something stands behind the end")
        return found

    def _value(self, depth: int) -> Located:
        self._pass_space()
        place, sign = self._place(), self.text[self.spot : self.spot + 1]
        if sign and sign in "[{" and depth > DEEPEST:
            self._refuse("this is nested too deeply")
        if sign == "{":
            return Located(self._object(depth), place)
        if sign == "[":
            return Located(self._array(depth), place)
        return Located(self._text() if sign == '"' else self._plain(), place)

    def _object(self, depth: int) -> dict[str, Located]:
        found: dict[str, Located] = {}

        def entry() -> None:
            self._pass_space()
            start = self.spot
            if self.text[start : start + 1] != '"':
                self._refuse("a name in quotes is expected here")
            name = self._text()
            if name in found:
                self.spot = start
                self._refuse(f"{name[:_SHOWN]!r} is there already")
            self._pass_space()
            self._take(":", "a colon is expected here")
            found[name] = self._value(depth + 1)

        self._entries("}", entry)
        return found

    def _array(self, depth: int) -> tuple[Located, ...]:
        found: list[Located] = []
        self._entries("]", lambda: found.append(self._value(depth + 1)))
        return tuple(found)

    def _entries(self, end: str, entry: Callable[[], None]) -> None:
        self.spot += 1
        self._pass_space()
        if self.text[self.spot : self.spot + 1] == end:
            self.spot += 1
            return
        while True:
            entry()
            self._pass_space()
            if self.text[self.spot : self.spot + 1] == end:
                self.spot += 1
                return
            self._take(",", f"a comma or {end} is expected here")

    def _text(self) -> str:
        try:
            text, end = self._decoder.raw_decode(self.text, self.spot)
        except JSONDecodeError as error:
            self.spot = error.pos
            self._refuse("this text in quotes is broken")
        if _ODD.search(text):
            self._refuse("a text holds a character that nobody can type")
        self.spot = end
        return str(text)

    def _plain(self) -> Any:
        for word, value in _WORDS.items():
            if self.text.startswith(word, self.spot):
                self.spot += len(word)
                return value
        found = _NUMBER.match(self.text, self.spot)
        if found is None:
            self._refuse("a value is expected here")
        if len(found[0]) > LONGEST_NUMBER:
            self._refuse("this number is too long")
        self.spot = found.end()
        return int(found[0]) if found[0].lstrip("-").isdigit() else float(found[0])

    def _pass_space(self) -> None:
        found = _SPACE.match(self.text, self.spot)
        self.spot = found.end() if found else self.spot

    def _take(self, sign: str, message: str) -> None:
        if self.text[self.spot : self.spot + 1] != sign:
            self._refuse(message)
        self.spot += 1

    def _place(self) -> Place:
        line = bisect_right(self._lines, self.spot)
        return Place(self.path, line, self.spot - self._lines[line - 1] + 1)

    def _refuse(self, message: str) -> NoReturn:
        raise BrokenJson(self._place(), message)
