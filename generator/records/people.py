"""People in the records, by code and, where the shop wants it, by name."""

import sqlite3
from collections.abc import Iterable
from dataclasses import dataclass

from generator.diagnostics import did_you_mean
from generator.records.database import RecordsRefused, writing
from generator.records.diary import note

ROLES = ("learner", "trainer", "marker", "lead")


@dataclass(frozen=True, slots=True)
class Person:
    """A person; the code stands on papers and in file names, the name only where asked for."""

    code: str
    name: str = ""
    role: str = "learner"


def add_people(connection: sqlite3.Connection, people: Iterable[Person], at: str) -> int:
    """Add people who are not there yet and give how many were added."""
    added = 0
    with writing(connection):
        for person in people:
            done = connection.execute(
                "INSERT INTO people (code, name, role, added) VALUES (?, ?, ?, ?)"
                " ON CONFLICT (code) DO NOTHING",
                (person.code, person.name, person.role, at),
            )
            added += done.rowcount
        if added:
            note(connection, at, "people", f"{added} added")
    return added


def all_people(connection: sqlite3.Connection) -> tuple[Person, ...]:
    """Give everyone, by code."""
    rows = connection.execute("SELECT code, name, role FROM people ORDER BY code")
    return tuple(Person(row["code"], row["name"], row["role"]) for row in rows)


def person_of(connection: sqlite3.Connection, code: str) -> tuple[int, Person]:
    """Give the row and the person of a code; raises RecordsRefused when there is none."""
    row = connection.execute(
        "SELECT id, code, name, role FROM people WHERE code = ?", (code,)
    ).fetchone()
    if row is None:
        codes = (str(other[0]) for other in connection.execute("SELECT code FROM people"))
        hint = did_you_mean(code, codes) or "add the person first"
        raise RecordsRefused(f"'{code}' is not in the records; {hint}")
    return int(row["id"]), Person(row["code"], row["name"], row["role"])


def person_id(connection: sqlite3.Connection, code: str) -> int:
    """Give the row of a code; raises RecordsRefused when there is none."""
    return person_of(connection, code)[0]


def row_or_nobody(connection: sqlite3.Connection, code: str) -> int | None:
    """Give the row of a code, or nothing for an empty one; raises RecordsRefused as above."""
    return person_id(connection, code) if code else None
