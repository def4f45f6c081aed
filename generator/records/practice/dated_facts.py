"""Dated facts: that something was done on a day, and when it is due again. No findings, no files.

A medical check and a fit test are kept as dates only: what they found belongs to the people who
made them.
"""

import sqlite3
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from datetime import date

from generator.records.people import person_id
from generator.records.store import RecordsRefused, note, read_date, writing, years_after


@dataclass(frozen=True, slots=True)
class Renewal:
    """The rule by which a fact is due again.

    source  key of the bank's sources, or empty for a rule from memory
    """

    years: int
    document: str
    source: str
    status: str
    jurisdiction: str


KIND_WORDS: Mapping[str, str] = {
    "fit_test": "fit test of the respirator",
    "medical": "medical clearance for the respirator",
    "painter_training": "painter training",
    "isocyanate_training": "diisocyanate training",
    "sign_off": "sign-off",
    "retest": "retest",
}
# a day further away than this is asked about before it is kept
YEARS_BACK = YEARS_AHEAD = 10
RENEWALS: Mapping[str, Renewal] = {
    "painter_training": Renewal(
        5, "40 CFR 63.11173(g)", "epa_6h_restated", "restated", "United States"
    ),
    "fit_test": Renewal(1, "29 CFR 1910.134(f)(2)", "", "from_memory", "United States"),
    "isocyanate_training": Renewal(
        5,
        "Regulation (EU) 2020/1149, REACH Annex XVII entry 74",
        "reach_74",
        "restated",
        "European Union",
    ),
}


@dataclass(frozen=True, slots=True)
class DatedFact:
    """A fact about a person.

    subject  what was signed off or is to be retested; empty for the other kinds
    due      as entered, or empty
    number   of its row once it is kept
    """

    person: str
    kind: str
    done: str
    due: str = ""
    subject: str = ""
    number: int = field(default=0, compare=False)

    @property
    def falls_due(self) -> date | None:
        """Return the day it is due again: the earlier of the day entered and the day by rule."""
        renewal = RENEWALS.get(self.kind)
        days = [years_after(read_date(self.done), renewal.years)] if renewal else []
        if self.due:
            days.append(read_date(self.due))
        return min(days, default=None)

    @property
    def in_words(self) -> str:
        """Name the kind and its subject."""
        words = KIND_WORDS[self.kind]
        return f"{words}: {self.subject}" if self.subject else words


def add_fact(connection: sqlite3.Connection, fact: DatedFact, at: str, today: date) -> int:
    """Keep a dated fact and give its number.

    Raises RecordsRefused for a date that cannot be, for one that is there already, and for an
    unknown person.
    """
    done = read_date(fact.done)
    if done > today:
        raise RecordsRefused(f"{fact.done} is still to come; give the day it was done")
    if fact.due and read_date(fact.due) < done:
        raise RecordsRefused(f"it cannot be due on {fact.due}, before it was done on {fact.done}")
    if fact.kind not in KIND_WORDS:
        raise RecordsRefused(f"there is no kind of date '{fact.kind}'")
    fact = replace(fact, subject=fact.subject.strip())
    with writing(connection):
        if fact in facts_of(connection, fact.person):
            raise RecordsRefused(f"{fact.in_words} of {fact.done} is in the records already")
        number = connection.execute(
            "INSERT INTO dated_facts (person, kind, subject, done, due, entered)"
            " VALUES (?, ?, ?, ?, ?, ?)",
            (person_id(connection, fact.person), fact.kind, fact.subject)
            + (fact.done, fact.due, at),
        ).lastrowid
        assert number is not None
        note(connection, at, "date", fact.kind)
    return number


def doubts_about(fact: DatedFact, today: date) -> str:
    """Say what looks odd about a date that can still be right; None where nothing does."""
    done = read_date(fact.done)
    said = f"{fact.in_words} on {fact.done}"
    if fact.due and read_date(fact.due) > years_after(today, YEARS_AHEAD):
        return f"{said} would be due only on {fact.due}, more than {YEARS_AHEAD} years ahead"
    day = fact.falls_due if fact.kind in RENEWALS else None
    if day is not None and day < today:
        return f"{said} would be overdue at once, since {day.isoformat()}"
    if years_after(done, YEARS_BACK) < today:
        return f"{said} is more than {YEARS_BACK} years ago"
    return ""


def facts_of(connection: sqlite3.Connection, code: str) -> tuple[DatedFact, ...]:
    """Return the dated facts of a person, oldest first; raises RecordsRefused for nobody."""
    rows = connection.execute(
        f"{_FACTS} AND f.person = ? ORDER BY f.done, f.id", (person_id(connection, code),)
    )
    return tuple(map(_fact, rows))


def all_facts(connection: sqlite3.Connection) -> Iterable[DatedFact]:
    """Return every dated fact, by person, oldest first."""
    return map(_fact, connection.execute(f"{_FACTS} ORDER BY p.code, f.done, f.id"))


_FACTS = (
    "SELECT p.code AS person, f.id, f.kind, f.done, f.due, f.subject FROM dated_facts f"
    " JOIN people p ON p.id = f.person WHERE f.taken_out = ''"
)


def _fact(row: sqlite3.Row) -> DatedFact:
    return DatedFact(
        row["person"], row["kind"], row["done"], row["due"], row["subject"], int(row["id"])
    )
