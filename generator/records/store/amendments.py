"""What was changed by hand: the value before, the value now, the reason and the time."""

import sqlite3
from dataclasses import dataclass
from typing import Literal

from generator.records.store.audit_log import note
from generator.records.store.database import RecordsRefused

What = Literal["name", "role", "date", "observation", "sitting", "issue"]


@dataclass(frozen=True, slots=True)
class Amendment:
    """One change.

    place  the number of what was changed: the row of a person, date, observation, sitting or issue
    """

    what: str
    place: int
    before: str
    after: str
    reason: str
    at: str


def keep_amendment(connection: sqlite3.Connection, person: int | None, change: Amendment) -> None:
    """Keep a change inside the writing that is under way; raises RecordsRefused without a reason.

    person  row of the person whose record it is, or nothing for an issue
    """
    if not change.reason.strip():
        raise RecordsRefused("say why it is changed; the reason is kept with the earlier value")
    connection.execute(
        "INSERT INTO amendments (person, what, place, before, after, reason, at)"
        " VALUES (?, ?, ?, ?, ?, ?, ?)",
        (person, change.what, change.place, change.before, change.after)
        + (change.reason.strip(), change.at),
    )
    note(connection, change.at, "amend", f"{change.what} {change.place}")


def amendments_of_person(connection: sqlite3.Connection, row: int) -> tuple[Amendment, ...]:
    """Return the changes in the record of a person, oldest first."""
    return _amendments(connection, "person = ?", row)


def amendments_of_issue(connection: sqlite3.Connection, number: int) -> tuple[Amendment, ...]:
    """Return what was changed about an issue, oldest first."""
    return _amendments(connection, "what = 'issue' AND place = ?", number)


def _amendments(connection: sqlite3.Connection, where: str, value: int) -> tuple[Amendment, ...]:
    rows = connection.execute(f"SELECT * FROM amendments WHERE {where} ORDER BY id", (value,))
    return tuple(
        Amendment(r["what"], r["place"], r["before"], r["after"], r["reason"], r["at"])
        for r in rows
    )
