"""Read lettered lists off a paper: options, steps, the two sides of a match."""

from collections.abc import Collection, Iterator, Mapping

LETTERS = "ABCDEFGHIJ"
NUMBERS = "123456789"
FEWEST = 2

Marked = Mapping[str, str]


def read_list(tight: str, texts: Collection[str], marks: str = LETTERS) -> Marked:
    """Read the list that ends a question: each mark with one of the texts, none twice.

    tight, texts  both without spaces
    Gives nothing where no such list stands at the end.
    """
    near = [text for text in texts if text in tight]
    for start in range(len(tight)):
        for end, found in _runs(tight, start, marks, near):
            if end == len(tight) and len(found) >= FEWEST:
                return found
    return {}


def read_sides(tight: str, left: Collection[str], right: Collection[str]) -> tuple[Marked, Marked]:
    """Read the two lists of a match: numbers on the left, then letters on the right."""
    for start in range(len(tight)):
        for end, lefts in _runs(tight, start, NUMBERS, left):
            for last, rights in _runs(tight, end, LETTERS, right):
                if last == len(tight) and len(lefts) >= FEWEST <= len(rights):
                    return lefts, rights
    return {}, {}


def read_order(tight: str, shown: Marked) -> str:
    """Read the letters of some steps as far as letters with their own texts follow each other."""
    order, place = "", 0
    while True:
        following = [
            (letter, len(letter + text))
            for letter, text in shown.items()
            if tight.startswith(letter + text, place)
        ]
        if not following:
            return order
        letter, length = max(following, key=lambda one: one[1])
        order += letter
        place += length


def _runs(
    tight: str, start: int, marks: str, texts: Collection[str]
) -> Iterator[tuple[int, dict[str, str]]]:
    """Return every list that starts at a place, with the place where it ends."""
    waiting: list[tuple[int, dict[str, str]]] = [(start, {})]
    while waiting:
        place, found = waiting.pop()
        if found:
            yield place, found
        if len(found) == len(marks):
            continue
        mark = marks[len(found)]
        waiting += [
            (place + len(mark + text), {**found, mark: text})
            for text in texts
            if text not in found.values() and tight.startswith(mark + text, place)
        ]
