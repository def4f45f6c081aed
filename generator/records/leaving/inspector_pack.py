"""What an inspector of painter training asks for, as tables and plain data.

Content of the list: 40 CFR 63.11177(a) asks for each painter's certificate with the first date and
the latest refresher; 63.11173(f) for who sprays and how completion is shown, the last from memory.
"""

import json
import sqlite3
from collections.abc import Iterable, Iterator, Mapping, Sequence
from datetime import date

from generator.records.certificates import all_certificates
from generator.records.leaving.safe_csv import table_text
from generator.records.people import all_people, person_id
from generator.records.practice import (
    NOTE,
    PERIODS,
    SEEN_WORDS,
    DatedFact,
    all_facts,
    all_observations,
    due_list,
)
from generator.records.sittings import all_results
from generator.records.store import amendments_of_person

# far enough that every day in the future is on the list
EVERY_DAY = 100 * 366

READ_FIRST = """What is in this folder

people.csv            everyone in the records, with the role
painter_training.csv  first training, latest refresher and the next one due, for each person
dates.csv             fit tests, medical checks and sign-offs: dates only, no findings
results.csv           every paper that was marked
observations.csv      practical work, step by step, as somebody watched it
certificates.json     every certificate as it was issued
certificate-*.pdf     the same to print and sign, where they were asked for
changes.csv           dates, observations, names and roles that were corrected, with the reason
due.csv               what falls due, with the rule and how far it was checked
keep_times.csv        how long such records are kept, place by place, with the source

How completion is shown
Each person answers papers that are drawn from one checked question bank and marked by key.
Somebody who is not that person watches the work at the panel and notes each step as yes, no or
not seen; starred steps protect people. The trainer then signs a certificate that repeats both.
A result never says that a person is fit or allowed to do hazardous work.

{note}
Written on {day}.
"""


def pack_tables(connection: sqlite3.Connection, today: date) -> Mapping[str, bytes]:
    """Return the name and the bytes of every table and text of the pack."""
    facts = tuple(all_facts(connection))
    texts = {
        "READ_FIRST.txt": READ_FIRST.format(note=NOTE, day=today.isoformat()),
        "people.csv": table_text(
            ("code", "name", "role"), ((p.code, p.name, p.role) for p in all_people(connection))
        ),
        "painter_training.csv": _training(connection, facts),
        "dates.csv": _dates(facts),
        "results.csv": _results(connection),
        "observations.csv": _observations(connection),
        "certificates.json": _certificates(connection),
        "changes.csv": _changes(connection),
        "due.csv": _due(connection, today),
        "keep_times.csv": keep_times(),
    }
    return {name: text.encode("utf-8") for name, text in texts.items()}


def keep_times() -> str:
    """Return the retention periods as a table."""
    header = ("record", "where", "keep", "document", "checked", "kept here")
    return table_text(
        header,
        (
            (p.record, p.jurisdiction, p.keep, p.document, p.status_words)
            + ("yes" if p.here else "no",)
            for p in PERIODS
        ),
    )


def _training(connection: sqlite3.Connection, facts: Iterable[DatedFact]) -> str:
    trained: dict[str, list[DatedFact]] = {}
    for fact in facts:
        if fact.kind == "painter_training":
            trained.setdefault(fact.person, []).append(fact)
    return table_text(
        ("code", "name", "first training", "latest refresher", "next due"),
        (
            (person.code, person.name, *_first_and_last(trained.get(person.code, ())))
            for person in all_people(connection)
        ),
    )


def _first_and_last(training: Sequence[DatedFact]) -> tuple[str, str, str]:
    if not training:
        return "none entered", "", ""
    due = training[-1].falls_due
    latest = training[-1].done if len(training) > 1 else ""
    return training[0].done, latest, due.isoformat() if due else ""


def _dates(facts: Iterable[DatedFact]) -> str:
    return table_text(
        ("code", "what", "done", "due"),
        (
            (fact.person, fact.in_words, fact.done, due.isoformat() if due else "")
            for fact in facts
            for due in (fact.falls_due,)
        ),
    )


def _results(connection: sqlite3.Connection) -> str:
    return table_text(
        ("code", "date", "paper", "issue", "form", "edition", "result", "marker"),
        (
            (r.person, r.sat[:10], r.title, str(r.issue), r.label, r.edition, r.in_words, r.marker)
            for r in all_results(connection)
        ),
    )


def _observations(connection: sqlite3.Connection) -> str:
    header = ("code", "date", "procedure", "job", "step", "starred", "seen", "observer", "note")
    return table_text(header, _observed_rows(connection))


def _observed_rows(connection: sqlite3.Connection) -> Iterator[tuple[str, ...]]:
    for seen in all_observations(connection):
        for step in seen.steps:
            yield (
                *(seen.person, seen.observed, seen.title, seen.job, step.action),
                *("yes" if step.critical else "no", SEEN_WORDS[step.seen]),
                *(seen.observer, seen.note),
            )


def _certificates(connection: sqlite3.Connection) -> str:
    plain = [
        {"number": c.number, "issued": c.issued, **c.content} for c in all_certificates(connection)
    ]
    return json.dumps(plain, ensure_ascii=False, indent=1) + "\n"


def _changes(connection: sqlite3.Connection) -> str:
    return table_text(
        ("code", "day", "what", "before", "after", "reason"),
        (
            (person.code, change.at[:10], change.what, change.before, change.after, change.reason)
            for person in all_people(connection)
            for change in amendments_of_person(connection, person_id(connection, person.code))
        ),
    )


def _due(connection: sqlite3.Connection, today: date) -> str:
    return table_text(
        ("code", "what", "due", "overdue", "last", "why"),
        (
            (d.person, d.what, d.day.isoformat(), "yes" if d.is_overdue(today) else "no")
            + (d.last, d.why)
            for d in due_list(connection, today, EVERY_DAY)
        ),
    )
