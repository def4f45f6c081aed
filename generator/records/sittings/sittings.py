"""Sittings: what people answered, with its marks; kept together or not at all."""

import sqlite3
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from generator.records.people import row_or_nobody
from generator.records.sittings.stored_marks import Marked, keep_marking, standing_marking
from generator.records.store import (
    Amendment,
    RecordsRefused,
    keep_amendment,
    note,
    packed,
    read_date,
    unpacked,
    writing,
)

Plain = dict[str, Any]


@dataclass(frozen=True, slots=True)
class NewSitting:
    """Answers that were marked and are to be kept.

    label      of the form in its issue
    responses  plain JSON of each answer by the question's number as text
    person     code; empty for the person the form was made for, or for nobody known
    sat        day of the sitting; empty for the day on which the answers are entered
    """

    label: str
    responses: Mapping[str, Any]
    marked: Marked
    person: str = ""
    sat: str = ""


@dataclass(frozen=True, slots=True)
class Sitting:
    """Answers as they are kept, with the marking that stands.

    sat  day of the sitting where it was given, else the time at which the answers were entered
    """

    number: int
    label: str
    person: str
    responses: Plain
    entered: str
    sat: str
    marker: str
    marked: Marked


@dataclass(frozen=True, slots=True)
class Kept:
    """How many sittings were new, took the place of earlier answers, or were there already.

    dated  were there already and have another day now
    """

    new: int = 0
    replaced: int = 0
    known: int = 0
    dated: int = 0


def keep_sittings(
    connection: sqlite3.Connection,
    issue: int,
    sittings: Sequence[NewSitting],
    at: str,
    marker: str = "",
) -> Kept:
    """Keep the answers and marks of a class: all of them, or none when anything is refused.

    The same answers of the same person to the same form are kept once. Other answers take the
    place of the earlier ones, which stay in the file. Raises RecordsRefused for a form that was
    not issued or was voided, and for a person or marker who is not in the records.
    """
    counts = {"new": 0, "replaced": 0, "known": 0, "dated": 0}
    with writing(connection):
        issued = _refuse_voided(connection, issue)
        for day in {sitting.sat for sitting in sittings if sitting.sat}:
            _refuse_day(issue, day, issued, at)
        by = row_or_nobody(connection, marker)
        for sitting in sittings:
            counts[_keep(connection, issue, sitting, at, by)] += 1
        kept = Kept(**counts)
        if kept.new or kept.replaced:
            detail = f"issue {issue}: {kept.new} sittings, {kept.replaced} replaced"
            note(connection, at, "mark", detail)
    return kept


def _refuse_voided(connection: sqlite3.Connection, issue: int) -> str:
    row = connection.execute(
        "SELECT state, void_reason, issued FROM issues WHERE id = ?", (issue,)
    ).fetchone()
    if row is None:
        raise RecordsRefused(f"there is no issue {issue} in the records")
    if row["state"] == "voided":
        raise RecordsRefused(
            f"issue {issue} was voided ({row['void_reason']}) and takes no more answers; to use it "
            f"again: guidecoat records void {issue} --take-back --reason ..."
        )
    return str(row["issued"])


def _refuse_day(issue: int, day: str, issued: str, at: str) -> None:
    if read_date(day).isoformat() > at[:10]:
        raise RecordsRefused(f"{day} is still to come; give the day on which the paper was sat")
    if day < issued[:10]:
        raise RecordsRefused(
            f"issue {issue} was made on {issued[:10]}, so nobody sat it on {day}; give the day on "
            "which the paper was sat"
        )


def _keep(
    connection: sqlite3.Connection, issue: int, sitting: NewSitting, at: str, marker: int | None
) -> str:
    form = connection.execute(
        "SELECT id, person FROM forms WHERE issue = ? AND label = ?", (issue, sitting.label)
    ).fetchone()
    if form is None:
        raise RecordsRefused(f"issue {issue} has no form '{sitting.label}'")
    person = row_or_nobody(connection, sitting.person)
    if person is not None and form["person"] is not None and person != form["person"]:
        raise RecordsRefused(f"form '{sitting.label}' of issue {issue} is another person's")
    person = person if person is not None else form["person"]
    answers = dict(sitting.responses)
    earlier = connection.execute(
        "SELECT id, responses, sat FROM sittings WHERE form = ? AND person IS ? AND replaced = 0",
        (form["id"], person),
    ).fetchone()
    # a day that was given stays until another is given
    sat = sitting.sat or (earlier["sat"] if earlier is not None else "")
    if earlier is not None:
        if unpacked(earlier["responses"]) == answers:
            return _dated(connection, earlier, person, sat, at)
        connection.execute("UPDATE sittings SET replaced = 1 WHERE id = ?", (earlier["id"],))
    row = connection.execute(
        "INSERT INTO sittings (form, person, responses, entered, sat, marker)"
        " VALUES (?, ?, ?, ?, ?, ?)",
        (form["id"], person, packed(answers), at, sat, marker),
    ).lastrowid
    assert row is not None
    keep_marking(connection, row, sitting.marked, at)
    return "new" if earlier is None else "replaced"


def _dated(
    connection: sqlite3.Connection, earlier: sqlite3.Row, person: int | None, sat: str, at: str
) -> str:
    """Return answers that are there already their day, where it is another one."""
    if sat == earlier["sat"]:
        return "known"
    connection.execute("UPDATE sittings SET sat = ? WHERE id = ?", (sat, earlier["id"]))
    reason = "the day was given when the answers were marked again"
    change = Amendment("sitting", int(earlier["id"]), earlier["sat"], sat, reason, at)
    keep_amendment(connection, person, change)
    return "dated"


def sittings_of(connection: sqlite3.Connection, issue: int) -> tuple[Sitting, ...]:
    """Return the sittings of an issue that stand, each with the marking that stands."""
    rows = connection.execute(
        "SELECT s.id, f.label, coalesce(p.code, '') AS person, s.responses, s.entered,"
        " coalesce(nullif(s.sat, ''), s.entered) AS sat,"
        " coalesce(m.code, '') AS marker FROM forms f JOIN sittings s ON s.form = f.id"
        " LEFT JOIN people p ON p.id = s.person LEFT JOIN people m ON m.id = s.marker"
        " WHERE f.issue = ? AND s.replaced = 0 ORDER BY s.id",
        (issue,),
    ).fetchall()
    return tuple(
        Sitting(
            number=int(row["id"]),
            label=row["label"],
            person=row["person"],
            responses=unpacked(row["responses"]),
            entered=row["entered"],
            sat=row["sat"],
            marker=row["marker"],
            marked=standing_marking(connection, int(row["id"])),
        )
        for row in rows
    )
