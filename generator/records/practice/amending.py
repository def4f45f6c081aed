"""Second thoughts about dates and observations: one takes another's place, or is taken out.

Nothing is deleted: what was entered by mistake stays in the file with the reason, counts nowhere,
and can be put back.
"""

import sqlite3
from dataclasses import dataclass
from datetime import date
from typing import Literal

from generator.records.people import person_id
from generator.records.practice.dated_facts import DatedFact, add_fact
from generator.records.practice.observations import Observation, observe
from generator.records.store import Amendment, RecordsRefused, keep_amendment, writing

Kind = Literal["date", "observation"]
KINDS: tuple[Kind, ...] = ("date", "observation")
_TABLES = {"date": "dated_facts", "observation": "observations"}


@dataclass(frozen=True, slots=True)
class Entry:
    """A date or an observation in the record of a person.

    number     by which a command names it
    taken_out  when it was taken out; empty while it counts
    """

    kind: Kind
    number: int
    words: str
    taken_out: str = ""


def entries_of(connection: sqlite3.Connection, code: str) -> tuple[Entry, ...]:
    """Return the dates and the observations of a person, also those that were taken out."""
    row = (person_id(connection, code),)
    facts = connection.execute(
        "SELECT * FROM dated_facts WHERE person = ? ORDER BY done, id", row
    ).fetchall()
    seen = connection.execute(
        "SELECT * FROM observations WHERE person = ? ORDER BY observed, id", row
    ).fetchall()
    dates = [
        (f, fact_words(DatedFact(code, f["kind"], f["done"], f["due"], f["subject"])))
        for f in facts
    ]
    looks = [(look, f"{look['title']}, {look['observed']}") for look in seen]
    return (
        *(Entry("date", int(row["id"]), words, row["taken_out"]) for row, words in dates),
        *(Entry("observation", int(row["id"]), words, row["taken_out"]) for row, words in looks),
    )


def fact_words(fact: DatedFact) -> str:
    """Write a date with what was done and, where somebody set one, the day it is due."""
    return f"{fact.in_words}, {fact.done}{f', due {fact.due}' if fact.due else ''}"


def entry_of(connection: sqlite3.Connection, code: str, kind: Kind, number: int) -> Entry:
    """Return one entry of a person; raises RecordsRefused if the person has no such number."""
    for entry in entries_of(connection, code):
        if (entry.kind, entry.number) == (kind, number):
            return entry
    raise RecordsRefused(
        f"'{code}' has no {kind} {number}; the numbers stand in: guidecoat records show \"{code}\""
    )


def take_out(
    connection: sqlite3.Connection,
    code: str,
    kind: Kind,
    number: int,
    reason: str,
    at: str,
    instead: str = "taken out",
) -> Entry:
    """Let a date or an observation count no more; it stays in the file with the reason.

    Raises RecordsRefused for one that is not there or was taken out before, or without a reason.
    """
    with writing(connection):
        entry = entry_of(connection, code, kind, number)
        if entry.taken_out:
            raise RecordsRefused(f"{kind} {number} was taken out already")
        _change(
            connection, code, entry, at, Amendment(kind, number, entry.words, instead, reason, at)
        )
    return entry


def put_back(
    connection: sqlite3.Connection, code: str, kind: Kind, number: int, reason: str, at: str
) -> Entry:
    """Let a date or an observation that was taken out count again; raises RecordsRefused."""
    with writing(connection):
        entry = entry_of(connection, code, kind, number)
        if not entry.taken_out:
            raise RecordsRefused(f"{kind} {number} counts already; there is nothing to put back")
        _change(
            connection,
            code,
            entry,
            "",
            Amendment(kind, number, "taken out", entry.words, reason, at),
        )
    return entry


def _change(
    connection: sqlite3.Connection, code: str, entry: Entry, taken_out: str, change: Amendment
) -> None:
    connection.execute(
        f"UPDATE {_TABLES[entry.kind]} SET taken_out = ? WHERE id = ?", (taken_out, entry.number)
    )
    keep_amendment(connection, person_id(connection, code), change)


def replace_fact(
    connection: sqlite3.Connection, number: int, fact: DatedFact, reason: str, at: str, today: date
) -> int:
    """Keep a date in the place of another one of the same person; give the new number."""
    with writing(connection):
        take_out(connection, fact.person, "date", number, reason, at, fact_words(fact))
        return add_fact(connection, fact, at, today)


def replace_observation(
    connection: sqlite3.Connection, number: int, seen: Observation, reason: str, at: str
) -> int:
    """Keep an observation in the place of another one of the same person; give the new number."""
    with writing(connection):
        words = f"{seen.title}, {seen.observed}"
        take_out(connection, seen.person, "observation", number, reason, at, words)
        return observe(connection, seen, at)
