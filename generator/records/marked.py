"""Markings: the marks of one sitting; a later marking replaces an earlier one and keeps it."""

import sqlite3
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Any, Literal

from generator.records.plain_text import packed, unpacked

Verdict = Literal["passed", "must_pass_missed", "not_passed", "unfinished"]
VERDICT_WORDS: dict[str, str] = {
    "passed": "passed",
    "must_pass_missed": "not passed: a must-pass question was missed",
    "not_passed": "not passed yet",
    "unfinished": "not finished: a person must still look at an answer",
}


@dataclass(frozen=True, slots=True)
class KeptMark:
    """The mark of one question.

    share     exact share of the question's marks
    findings  plain JSON of what to say about the answer; may be empty
    """

    number: int
    share: Fraction
    status: str
    findings: dict[str, Any]


@dataclass(frozen=True, slots=True)
class Marked:
    """One marking of a sitting: every question with its mark.

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
    """Put a marking in the place of the one that stands, inside the writing that is under way."""
    connection.execute(
        "UPDATE markings SET replaced = 1 WHERE sitting = ? AND replaced = 0", (sitting,)
    )
    findings = {str(mark.number): mark.findings for mark in marked.marks if mark.findings}
    number = connection.execute(
        "INSERT INTO markings (sitting, correction, marked, points, most, verdict, findings)"
        " VALUES (?, ?, ?, ?, ?, ?, ?)",
        (sitting, correction, at, str(marked.points), marked.most, marked.verdict)
        + (packed(findings),),
    ).lastrowid
    connection.executemany(
        "INSERT INTO marks (marking, number, share, status) VALUES (?, ?, ?, ?)",
        [(number, mark.number, str(mark.share), mark.status) for mark in marked.marks],
    )


def standing_marking(connection: sqlite3.Connection, sitting: int) -> Marked:
    """Give the marking of a sitting that stands; every sitting has one."""
    row = connection.execute(
        "SELECT * FROM markings WHERE sitting = ? AND replaced = 0", (sitting,)
    ).fetchone()
    return _marked(connection, row)


def all_markings(
    connection: sqlite3.Connection, sitting: int
) -> tuple[tuple[str, int | None, Marked], ...]:
    """Give every marking of a sitting, oldest first, with its time and its correction."""
    rows = connection.execute(
        "SELECT * FROM markings WHERE sitting = ? ORDER BY id", (sitting,)
    ).fetchall()
    return tuple((row["marked"], row["correction"], _marked(connection, row)) for row in rows)


def _marked(connection: sqlite3.Connection, row: sqlite3.Row) -> Marked:
    marks = connection.execute(
        "SELECT number, share, status FROM marks WHERE marking = ? ORDER BY number", (row["id"],)
    ).fetchall()
    findings = unpacked(row["findings"])
    return Marked(
        verdict=row["verdict"],
        points=Fraction(row["points"]),
        most=int(row["most"]),
        marks=tuple(_marks(marks, findings)),
    )


def _marks(rows: Sequence[sqlite3.Row], findings: dict[str, Any]) -> Iterator[KeptMark]:
    for row in rows:
        said = findings.get(str(row["number"]), {})
        yield KeptMark(int(row["number"]), Fraction(row["share"]), row["status"], said)
