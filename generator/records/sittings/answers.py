"""Answers counted over all issues, by item for everybody."""

import sqlite3
from collections import Counter
from collections.abc import Iterable, Mapping
from fractions import Fraction

from generator.records.issues import items_and_versions, numbers_of
from generator.records.sittings.stored_marks import read_mark


def shares_of_items(
    connection: sqlite3.Connection,
) -> Mapping[tuple[str, str], tuple[int, Fraction]]:
    """Return for each item and version how many people answered it and their mean share.

    What nobody could read is left out; what was left blank counts as answered with nothing.
    """
    known = items_and_versions(connection)
    sums: dict[tuple[str, str], tuple[int, Fraction]] = {}
    for (number, written), times in _counted(connection.execute(_ANSWERS)).items():
        status, share = read_mark(written)
        if status != "illegible":
            people, total = sums.get(known[number], (0, Fraction(0)))
            sums[known[number]] = (people + times, total + times * share)
    return {name: (people, total / people) for name, (people, total) in sums.items()}


_ANSWERS = (
    "SELECT f.questions, m.marks FROM sittings s JOIN forms f ON f.id = s.form"
    " JOIN issues i ON i.id = f.issue JOIN markings m ON m.sitting = s.id AND m.replaced = 0"
    " WHERE s.replaced = 0 AND i.state <> 'voided'"
)


def _counted(rows: Iterable[sqlite3.Row]) -> Mapping[tuple[int, str], int]:
    """Count how often each question got each mark, as the mark is kept."""
    counts = Counter[tuple[int, str]]()
    for row in rows:
        counts.update(zip(numbers_of(row["questions"]), row["marks"].split(), strict=True))
    return counts
