"""Corrections: a key of an issue changed for a stated reason, and everything marked again."""

import json
import sqlite3
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from generator.records.issues import numbers_of
from generator.records.people import row_or_nobody
from generator.records.sittings.stored_marks import Marked, keep_marking
from generator.records.store import RecordsRefused, note, plain_text, writing


@dataclass(frozen=True, slots=True)
class Correction:
    """What was changed about the key of one question of an issue.

    change      plain JSON of the change, as marking reads it
    decided_by  code of the person who decided, or empty
    """

    item: str
    change: Mapping[str, Any]
    reason: str
    decided_by: str = ""
    decided: str = ""


def correct(
    connection: sqlite3.Connection,
    issue: int,
    correction: Correction,
    marked: Mapping[int, Marked],
    at: str,
) -> int:
    """Keep a correction with the new marks of every sitting it touches, and give its number.

    marked  the new marking of each sitting by the sitting's number; the old ones are kept
    Raises RecordsRefused without a reason, for an item that the issue does not have, for a sitting
    of another issue, or when a sitting was marked in between.
    """
    if not correction.reason.strip():
        raise RecordsRefused("say why the key is corrected")
    with writing(connection):
        _refuse_strangers(connection, issue, correction.item, marked)
        number = connection.execute(
            "INSERT INTO corrections (issue, item, change, reason, decided_by, decided)"
            " VALUES (?, ?, ?, ?, ?, ?)",
            (issue, correction.item, plain_text(dict(correction.change)))
            + (correction.reason.strip(), row_or_nobody(connection, correction.decided_by), at),
        ).lastrowid
        assert number is not None
        for sitting, new in marked.items():
            keep_marking(connection, sitting, new, at, number)
        detail = f"issue {issue}: correction {number}, {len(marked)} sittings marked again"
        note(connection, at, "correct", detail)
    return number


def corrections_of(connection: sqlite3.Connection, issue: int) -> tuple[Correction, ...]:
    """Return the corrections of an issue, oldest first."""
    rows = connection.execute(
        "SELECT c.*, coalesce(p.code, '') AS code FROM corrections c"
        " LEFT JOIN people p ON p.id = c.decided_by WHERE c.issue = ? ORDER BY c.id",
        (issue,),
    )
    return tuple(
        Correction(r["item"], json.loads(r["change"]), r["reason"], r["code"], r["decided"])
        for r in rows
    )


def _refuse_strangers(
    connection: sqlite3.Connection, issue: int, item: str, marked: Mapping[int, Marked]
) -> None:
    numbers = _numbers(connection, item)
    with_item = {
        int(row["id"]): numbers.intersection(numbers_of(row["questions"]))
        for row in connection.execute(
            "SELECT id, questions FROM forms WHERE issue = ?", (issue,)
        ).fetchall()
    }
    if not any(with_item.values()):
        raise RecordsRefused(f"no form of issue {issue} has the item '{item}'")
    standing = {
        int(row["id"]): int(row["form"])
        for row in connection.execute(
            "SELECT s.id, s.form FROM forms f JOIN sittings s ON s.form = f.id"
            " WHERE f.issue = ? AND s.replaced = 0",
            (issue,),
        )
    }
    if strangers := sorted(set(marked) - set(standing)):
        raise RecordsRefused(f"sitting {strangers[0]} does not stand in issue {issue}")
    touched = {sitting for sitting, form in standing.items() if with_item[form]}
    if left_out := touched - set(marked):
        raise RecordsRefused(
            f"{len(left_out)} sittings of issue {issue} came in meanwhile; correct it again"
        )


def _numbers(connection: sqlite3.Connection, item: str) -> set[int]:
    rows = connection.execute("SELECT id FROM questions WHERE item = ?", (item,))
    return {int(row["id"]) for row in rows}
