"""Markings: the marks of one sitting; a later marking replaces an earlier one and keeps it."""

import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import Any, Literal

from generator.records.store import RecordsRefused, packed, unpacked

Verdict = Literal["passed", "must_pass_missed", "not_passed", "unfinished"]
VERDICT_WORDS: dict[str, str] = {
    "passed": "passed",
    "must_pass_missed": "not passed: a must-pass question was missed",
    "not_passed": "not passed yet",
    "unfinished": "not finished: a person must still look at an answer",
}
STATUSES = ("right", "part", "wrong", "blank", "illegible")
_BY_LETTER = {status[0]: status for status in STATUSES}


@dataclass(frozen=True, slots=True)
class KeptMark:
    """The mark of one question.

    share     exact share of the question's marks
    status    one of STATUSES
    findings  plain JSON of what to say about the answer; may be empty
    """

    number: int
    share: Fraction
    status: str
    findings: dict[str, Any]


@dataclass(frozen=True, slots=True)
class Marked:
    """One marking of a sitting: every question of the form with its mark, in order.

    points  marks gained, exact
    most    marks of the whole form
    """

    verdict: Verdict
    points: Fraction
    most: int
    marks: tuple[KeptMark, ...]


def keep_marking(
    connection: sqlite3.Connection,
    sitting: int,
    marked: Marked,
    at: str,
    correction: int | None = None,
) -> None:
    """Put a marking in the place of the one that stands, inside the writing that is under way.

    Raises RecordsRefused when it does not mark every question of the form.
    """
    form = connection.execute(
        "SELECT f.label, length(f.questions) / 4 AS asked FROM sittings s"
        " JOIN forms f ON f.id = s.form WHERE s.id = ?",
        (sitting,),
    ).fetchone()
    if [mark.number for mark in marked.marks] != list(range(1, form["asked"] + 1)):
        raise RecordsRefused(
            f"form '{form['label']}' has {form['asked']} questions, and each needs its mark"
        )
    connection.execute(
        "UPDATE markings SET replaced = 1 WHERE sitting = ? AND replaced = 0", (sitting,)
    )
    findings = {str(mark.number): mark.findings for mark in marked.marks if mark.findings}
    connection.execute(
        "INSERT INTO markings (sitting, correction, marked, points, most, verdict, marks, findings)"
        " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        (sitting, correction, at, str(marked.points), marked.most, marked.verdict)
        + (" ".join(map(_written, marked.marks)), packed(findings)),
    )


def _written(mark: KeptMark) -> str:
    return f"{mark.status[0]}{mark.share}"


@cache
def read_mark(written: str) -> tuple[str, Fraction]:
    """Read status and share of a mark as it is kept, such as 'p1/2'."""
    return _BY_LETTER[written[0]], Fraction(written[1:])


def standing_marking(connection: sqlite3.Connection, sitting: int) -> Marked:
    """Return the marking of a sitting that stands; every sitting has one."""
    row = connection.execute(
        "SELECT * FROM markings WHERE sitting = ? AND replaced = 0", (sitting,)
    ).fetchone()
    return _marked(row)


def all_markings(
    connection: sqlite3.Connection, sitting: int
) -> tuple[tuple[str, int | None, Marked], ...]:
    """Return every marking of a sitting, oldest first, with its time and its correction."""
    rows = connection.execute("SELECT * FROM markings WHERE sitting = ? ORDER BY id", (sitting,))
    return tuple((row["marked"], row["correction"], _marked(row)) for row in rows)


def _marked(row: sqlite3.Row) -> Marked:
    return Marked(
        verdict=row["verdict"],
        points=Fraction(row["points"]),
        most=int(row["most"]),
        marks=tuple(_marks(row["marks"], unpacked(row["findings"]))),
    )


def _marks(written: str, findings: dict[str, Any]) -> Iterator[KeptMark]:
    for number, mark in enumerate(written.split(), start=1):
        status, share = read_mark(mark)
        yield KeptMark(number, share, status, findings.get(str(number), {}))
