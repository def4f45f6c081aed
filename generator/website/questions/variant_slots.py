"""The places of a question where its variants differ, so that its words stand on the page once.

A word that differs stands in an `x-v` element with the first variant's word in it; the words of
the others come as data, in the order of the elements.
"""

import re
from collections.abc import Callable, Sequence
from typing import Any

from markupsafe import Markup, escape

Write = Callable[[str], str]
Follow = Callable[[Sequence[str]], str]
_FIRST_MARK = 0xE000
_MARKS = re.compile("[\ue000-\uf8ff]")
_SPACE = re.compile(r"(\s+)")
# words that mean nothing to Markdown, wherever they stand
_BARE = re.compile(r"[^\s*_\[\]<>`&\\|#~!(){}\ue000-\uf8ff]+\Z")


class Slots:
    """Gathers what differs between the variants of one question while it is written."""

    def __init__(self) -> None:
        self._marks: dict[tuple[str, ...], str] = {}

    @property
    def are_used(self) -> bool:
        """Return whether anything differs."""
        return bool(self._marks)

    def text(self, texts: Sequence[str], write: Write) -> Markup:
        """Write one text of all variants, with a mark for each word that differs.

        texts  one for each variant
        write  turns a text into HTML
        Where the variants do not agree word for word, the whole text is one place.
        """
        if len(set(texts)) == 1:
            return Markup(write(texts[0]))
        pieces = [_SPACE.split(text) for text in texts]
        columns = tuple(zip(*pieces, strict=False))
        alike = len({len(piece) for piece in pieces}) == 1
        if not alike or not all(_fits(column) for column in columns):
            return Markup(self._mark(tuple(str(write(text)) for text in texts)))
        return Markup(write("".join(self._word(column) for column in columns)))

    def filled(self, html: str) -> str:
        """Put the first variant's words where the marks stand."""
        words = {mark: values[0] for values, mark in self._marks.items()}
        return _MARKS.sub(lambda found: f"<x-v>{words[found[0]]}</x-v>", html)

    def data(self, html: str, follow: Follow = lambda words: "") -> dict[str, Any]:
        """Return what the other variants have in the places of a text that is still marked.

        follow  returns the rule that all words of a place follow, or ""
        else    for each place the rule, or the words of the other variants
        at      for each place its column, where that does not show: columns come in the order of
                their first places, and places with one word share a column
        """
        found = list(dict.fromkeys(_MARKS.findall(html)))
        values_of = {mark: values for values, mark in self._marks.items()}
        columns = [values_of[mark] for mark in found]
        data: dict[str, Any] = {"else": [follow(words) or list(words[1:]) for words in columns]}
        if len({values_of[mark][0] for mark in found}) < len(found):
            data["at"] = [found.index(mark) for mark in _MARKS.findall(html)]
        return data

    def _word(self, column: tuple[str, ...]) -> str:
        if len(set(column)) == 1:
            return column[0]
        return self._mark(tuple(str(escape(word)) for word in column))

    def _mark(self, values: tuple[str, ...]) -> str:
        return self._marks.setdefault(values, chr(_FIRST_MARK + len(self._marks)))


def _fits(column: tuple[str, ...]) -> bool:
    return len(set(column)) == 1 or all(_BARE.match(word) for word in column)
