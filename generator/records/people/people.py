"""People in the records, by code and, where the shop wants it, by name."""

import sqlite3
from collections.abc import Iterable
from dataclasses import dataclass

from generator.diagnostics import nearest_code
from generator.records.people.erased_codes import refuse_erased, was_erased
from generator.records.store import Amendment, RecordsRefused, keep_amendment, note, writing

ROLES = ("learner", "trainer", "marker", "lead")


@dataclass(frozen=True, slots=True)
class Person:
    """A person; the code stands on papers and in file names, the name only where asked for."""

    code: str
    name: str = ""
    role: str = "learner"


def add_people(connection: sqlite3.Connection, people: Iterable[Person], at: str) -> int:
    """Add people who are not there yet and give how many were added.

    Raises RecordsRefused for the code of somebody who was erased.
    """
    people = tuple(people)
    added = 0
    with writing(connection):
        refuse_erased(connection, (person.code for person in people))
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


def amend_person(
    connection: sqlite3.Connection,
    code: str,
    name: str | None,
    role: str | None,
    reason: str,
    at: str,
) -> Person:
    """Correct the name or the role of a person; what it was stays with the reason.

    Raises RecordsRefused for nobody, for an empty reason, and where nothing would change.
    """
    with writing(connection):
        row, person = person_of(connection, code)
        wanted = Person(code, person.name if name is None else name, role or person.role)
        if wanted == person:
            raise RecordsRefused(f"'{code}' has that name and role already; nothing would change")
        for what, before, after in (
            ("name", person.name, wanted.name),
            ("role", person.role, wanted.role),
        ):
            if before != after:
                keep_amendment(connection, row, Amendment(what, row, before, after, reason, at))
        connection.execute(
            "UPDATE people SET name = ?, role = ? WHERE id = ?", (wanted.name, wanted.role, row)
        )
    return wanted


def all_people(connection: sqlite3.Connection) -> tuple[Person, ...]:
    """Return everyone, by code."""
    rows = connection.execute("SELECT code, name, role FROM people ORDER BY code")
    return tuple(Person(row["code"], row["name"], row["role"]) for row in rows)


def person_of(connection: sqlite3.Connection, code: str) -> tuple[int, Person]:
    """Return the row and the person of a code; raises RecordsRefused when there is none."""
    row = connection.execute(
        "SELECT id, code, name, role FROM people WHERE code = ?", (code,)
    ).fetchone()
    if row is None:
        raise RecordsRefused(_nobody(connection, code))
    return int(row["id"]), Person(row["code"], row["name"], row["role"])


def _nobody(connection: sqlite3.Connection, code: str) -> str:
    if was_erased(connection, code):
        return f"'{code}' was erased from these records; nothing is kept for that code any more"
    named = [p.code for p in all_people(connection) if p.name.casefold() == code.casefold()]
    if named:
        theirs = " or ".join(f"'{other}'" for other in named)
        return f"'{code}' is a name; say the code: {theirs}"
    codes = [person.code for person in all_people(connection)]
    hint = nearest_code(code, codes) or (
        f'add the person first: guidecoat records people --person "{code}"'
    )
    return f"'{code}' is not in the records; {hint}"


def person_id(connection: sqlite3.Connection, code: str) -> int:
    """Return the row of a code; raises RecordsRefused when there is none."""
    return person_of(connection, code)[0]


def row_or_nobody(connection: sqlite3.Connection, code: str) -> int | None:
    """Return the row of a code, or None for an empty one; raises RecordsRefused as above."""
    return person_id(connection, code) if code else None
