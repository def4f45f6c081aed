"""People whose codes and names the papers can print, asked before any of them is kept."""

from collections.abc import Iterator, Sequence
from pathlib import Path

from generator.diagnostics import Place, Problem
from generator.printing import WAY_OUT, unsettable
from generator.records import Person, read_roster


def read_printable(
    text: str, path: str, fonts: Path
) -> tuple[tuple[Person, ...], tuple[Problem, ...]]:
    """Read a roster as `read_roster` does; return nobody where a character has no font."""
    people, problems = read_roster(text, path)
    found = (*problems, *_unprintable(people, text, path, fonts))
    return (() if found else people), found


def _unprintable(people: Sequence[Person], text: str, path: str, fonts: Path) -> Iterator[Problem]:
    lines = text.splitlines()
    said: set[tuple[str, str]] = set()
    for character in unsettable((part for p in people for part in (p.code, p.name)), fonts):
        for person in people:
            word = next((part for part in (person.code, person.name) if character in part), "")
            if word and (person.code, word) not in said:
                said.add((person.code, word))
                message = f"'{word}' cannot be printed: no typeface of the papers has '{character}'"
                place = _place(lines, word, path)
                yield Problem(place, "error", "person-letters", message, WAY_OUT)


def _place(lines: Sequence[str], word: str, path: str) -> Place:
    for number, line in enumerate(lines, start=1):
        if word in line:
            return Place(path, number, line.index(word) + 1)
    return Place(path, 1, 1)
