"""What falls due: refreshers, fit tests and retests, with the rule that sets each day."""

import sqlite3
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date

from generator.records.practice.dated_facts import RENEWALS, DatedFact, all_facts
from generator.records.sittings import Result, open_retests, passed_since
from generator.records.store import days_after, read_date, years_after

STATUS_WORDS = {
    "read": "read in the rule",
    "restated": "read as restated elsewhere",
    "from_memory": "from memory, not checked against the rule",
    "common_practice": "common practice, no published source",
}


@dataclass(frozen=True, slots=True)
class Due:
    """One thing that falls due for one person.

    why  the rule with its status, or who set the day
    """

    person: str
    what: str
    day: date
    last: str
    why: str

    def is_overdue(self, today: date) -> bool:
        """Say whether its day has gone by; on the day itself it is still in time."""
        return today > self.day


def due_list(connection: sqlite3.Connection, today: date, within: int) -> tuple[Due, ...]:
    """Return what is overdue or falls due within so many days, the earliest first."""
    last_day = days_after(today, within)
    latest = {(fact.person, fact.kind, fact.subject): fact for fact in all_facts(connection)}
    facts = [fact for fact in latest.values() if fact.kind != "retest"]
    planned = [fact for fact in latest.values() if fact.kind == "retest"]
    found = [*_renewals(facts), *_retests(connection, planned)]
    return tuple(
        sorted(
            (due for due in found if due.day <= last_day),
            key=lambda due: (due.day, due.person, due.what),
        )
    )


def _renewals(facts: Iterable[DatedFact]) -> Iterator[Due]:
    for fact in facts:
        day = fact.falls_due
        if day is not None:
            yield Due(fact.person, fact.in_words, day, fact.done, why_due(fact, day))


def why_due(fact: DatedFact, day: date) -> str:
    """Say which rule sets the day on which a fact is due again, and how far it was checked."""
    renewal = RENEWALS.get(fact.kind)
    if renewal is None or day != years_after(read_date(fact.done), renewal.years):
        return "day entered in the records"
    every = "every year" if renewal.years == 1 else f"every {renewal.years} years"
    leap = " (29 February counts as 28)" if fact.done.endswith("-02-29") else ""
    return f"{every}{leap}, {renewal.document} ({STATUS_WORDS[renewal.status]})"


def _retests(connection: sqlite3.Connection, planned: Iterable[DatedFact]) -> Iterator[Due]:
    """Return the papers to be sat again: a planned day goes before the day of the last paper."""
    not_passed = {(r.person, r.blueprint): r for r in open_retests(connection)}
    for fact in planned:
        result = not_passed.pop((fact.person, fact.subject), None)
        day = fact.falls_due
        if day is not None and not passed_since(connection, fact.person, fact.subject, fact.done):
            title = result.title if result else fact.subject
            why = "day entered in the records"
            yield Due(fact.person, f"retest: {title}", day, _last(result), why)
    for result in not_passed.values():
        why = "last paper not passed; teach first"
        day = read_date(result.sat[:10])
        yield Due(result.person, f"retest: {result.title}", day, _last(result), why)


def _last(result: Result | None) -> str:
    return result.sat[:10] if result else ""
