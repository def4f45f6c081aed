"""Answers of a class from a table, one row a person and one column an item; and its key."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from generator.diagnostics import Place, Problem, did_you_mean
from generator.marking.analysis.scores import Scores, right_or_wrong_scores
from generator.marking.tables import error, key_problems, read_cells, table_problems


@dataclass(frozen=True, slots=True)
class ResponseTable:
    """What each person answered to each item; an empty text is no answer."""

    people: tuple[str, ...]
    items: tuple[str, ...]
    answers: tuple[tuple[str, ...], ...]

    def chosen(self) -> dict[str, tuple[str, ...]]:
        """Return the answers item by item."""
        return {
            item: tuple(row[place] for row in self.answers) for place, item in enumerate(self.items)
        }

    def scored(self, key: Mapping[str, str]) -> Scores:
        """Return one mark for each answer that is the key; raises KeyError for an unkeyed item."""
        rights = [key[item] for item in self.items]
        rows = ([a == right for a, right in zip(row, rights, strict=True)] for row in self.answers)
        return right_or_wrong_scores(self.items, rows)


@dataclass(frozen=True, slots=True)
class Key:
    """The right option of each item, with the place it was read from."""

    right: Mapping[str, str]
    places: Mapping[str, Place]


def read_responses(text: str, path: str) -> tuple[ResponseTable | None, tuple[Problem, ...]]:
    """Read the table; the first column names the person, the header names the items.

    Letters may be small or capital. Gives nothing when there is any error.
    """
    rows, problems = read_cells(text, path)
    found = [*problems, *table_problems(rows, path)]
    if any(problem.severity == "error" for problem in found):
        return None, tuple(found)
    header, *body = rows
    return ResponseTable(
        tuple(row[0].text for row in body),
        tuple(cell.text for cell in header[1:]),
        tuple(tuple(cell.text.upper() for cell in row[1:]) for row in body),
    ), tuple(found)


def read_key(text: str, path: str) -> tuple[Key | None, tuple[Problem, ...]]:
    """Read the key: a row for each item below the header item,key."""
    rows, problems = read_cells(text, path)
    found = [*problems, *key_problems(rows, path)]
    if any(problem.severity == "error" for problem in found):
        return None, tuple(found)
    body = rows[1:]
    return Key(
        {item.text: key.text.upper() for item, key in body},
        {item.text: item.place for item, _ in body},
    ), tuple(found)


def key_disagreements(table: ResponseTable, key: Key, responses_path: str) -> tuple[Problem, ...]:
    """Return the items that only the table or only the key has."""
    unknown = [
        error(
            key.places[item],
            "unknown-item",
            f"the answers have no item '{item}'",
            _nearest(item, table.items),
        )
        for item in key.right
        if item not in table.items
    ]
    without = [
        error(
            Place(responses_path, 1, 1),
            "item-without-key",
            f"the key has no item '{item}'",
            _nearest(item, key.right),
        )
        for item in table.items
        if item not in key.right
    ]
    return (*unknown, *without)


def _nearest(name: str, known: Iterable[str]) -> str:
    names = tuple(known)
    # the likeness of names counts capitals, and those differ most often
    same = [other for other in names if other.casefold() == name.casefold()]
    return did_you_mean(same[0] if same else name, names)
