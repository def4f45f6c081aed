"""Results: what the papers of people came to, and which are to be sat again."""

import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from generator.records.people import person_id
from generator.wording import VERDICT_WORDS, points_of_marks


@dataclass(frozen=True, slots=True)
class Result:
    """One paper of one person, with the marking that counts.

    sat      the day of the sitting, or when the answers were entered where no day was given
    verdict  a key of `wording.VERDICT_WORDS`
    """

    person: str
    issue: int
    blueprint: str
    title: str
    edition: str
    label: str
    sat: str
    points: Fraction
    most: int
    verdict: str
    marker: str

    @property
    def in_words(self) -> str:
        """Say what the paper came to."""
        return f"{VERDICT_WORDS[self.verdict]}, {points_of_marks(self.points, self.most)}"


_RESULTS = (
    "SELECT p.code AS person, i.id AS issue, i.blueprint, i.title, i.edition, f.label,"
    " coalesce(nullif(s.sat, ''), s.entered) AS sat, m.points, m.most, m.verdict,"
    " coalesce(w.code, '') AS marker"
    " FROM sittings s JOIN people p ON p.id = s.person JOIN forms f ON f.id = s.form"
    " JOIN issues i ON i.id = f.issue"
    " JOIN markings m ON m.sitting = s.id AND m.replaced = 0"
    " LEFT JOIN people w ON w.id = s.marker"
    " WHERE s.replaced = 0 AND i.state <> 'voided'"
)


def results_of(connection: sqlite3.Connection, code: str) -> tuple[Result, ...]:
    """Return every result of a person, oldest first; raises RecordsRefused for nobody."""
    rows = connection.execute(
        f"{_RESULTS} AND s.person = ? ORDER BY sat, s.id", (person_id(connection, code),)
    )
    return tuple(map(_result, rows))


def all_results(connection: sqlite3.Connection) -> Iterator[Result]:
    """Return every result of everybody, by person and time."""
    return map(_result, connection.execute(f"{_RESULTS} ORDER BY p.code, sat, s.id"))


def open_retests(connection: sqlite3.Connection) -> Iterator[Result]:
    """Return each person's last result of a paper where it was not passed."""
    # with max() SQLite gives the other columns of the row that holds the maximum
    rows = connection.execute(
        f"SELECT *, max(sat) FROM ({_RESULTS} ORDER BY s.id)"
        " GROUP BY person, blueprint HAVING verdict NOT IN ('passed', 'unfinished')"
        " ORDER BY person, blueprint"
    )
    return map(_result, rows)


def passed_since(connection: sqlite3.Connection, code: str, blueprint: str, day: str) -> bool:
    """Return whether a person has passed a paper on a day or after it."""
    row = connection.execute(
        f"SELECT 1 FROM ({_RESULTS} AND s.person = ?)"
        " WHERE blueprint = ? AND verdict = 'passed' AND substr(sat, 1, 10) >= ? LIMIT 1",
        (person_id(connection, code), blueprint, day),
    ).fetchone()
    return row is not None


@cache
def _points(written: str) -> Fraction:
    # a hundred thousand results have a few dozen different marks
    return Fraction(written)


def _result(row: sqlite3.Row) -> Result:
    return Result(
        person=row["person"],
        issue=int(row["issue"]),
        blueprint=row["blueprint"],
        title=row["title"],
        edition=row["edition"],
        label=row["label"],
        sat=row["sat"],
        points=_points(row["points"]),
        most=int(row["most"]),
        verdict=row["verdict"],
        marker=row["marker"],
    )
