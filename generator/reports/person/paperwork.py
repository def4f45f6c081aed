"""Which papers about a person are in the records: observation sheets and dates, never findings."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date

from generator.bank import Bank, module_of
from generator.records import Records
from generator.records.practice import DatedFact, Observation, facts_of, observations_of

WANTED_DATES: Mapping[str, str] = {
    "fit_test": "a fit test of the respirator",
    "medical": "a medical clearance for the respirator",
}
NOBODY = "This paper names nobody, so the records cannot be searched for sheets and dates."


@dataclass(frozen=True, slots=True)
class Paperwork:
    """What the records hold about a person.

    observed  the latest observation of each procedure
    dates     the latest date of each kind
    """

    observed: Mapping[str, Observation] = field(default_factory=dict)
    dates: Mapping[str, DatedFact] = field(default_factory=dict)


def paperwork_of(connection: Records, code: str) -> Paperwork:
    """Read what is there; None for nobody. Raises RecordsRefused for an unknown code."""
    if not code:
        return Paperwork()
    return Paperwork(
        {seen.procedure: seen for seen in observations_of(connection, code)},
        {fact.kind: fact for fact in facts_of(connection, code)},
    )


@dataclass(frozen=True, slots=True)
class ProcedureName:
    """A procedure that can be observed, and the module it belongs to."""

    name: str
    title: str
    module: str


def procedure_names(bank: Bank) -> tuple[ProcedureName, ...]:
    """Return the procedures of a bank, by title."""
    found = (
        ProcedureName(name, entry.record.title, module_of(entry.record.objective))
        for name, entry in bank.procedures.items()
    )
    return tuple(sorted(found, key=lambda procedure: procedure.title))


def missing_sheets(paperwork: Paperwork, procedures: tuple[ProcedureName, ...]) -> tuple[str, ...]:
    """Return the titles of procedures without a sheet, or with one that lacks a starred step."""
    missing = []
    for procedure in procedures:
        seen = paperwork.observed.get(procedure.name)
        if seen is None:
            missing.append(procedure.title)
        elif not seen.stars_seen:
            missing.append(f"{procedure.title} (again: a starred step was not seen done)")
    return tuple(missing)


def missing_dates(paperwork: Paperwork, today: date) -> tuple[str, ...]:
    """Say which dates are not in the records, or have run out by a day."""
    said = []
    for kind, words in WANTED_DATES.items():
        fact = paperwork.dates.get(kind)
        due = fact.falls_due if fact else None
        if fact is None:
            said.append(f"No date of {words} is in the records.")
        elif due is not None and due < today:
            said.append(f"The date of {words} is {fact.done}; it was due again by {due}.")
    return tuple(said)


def dates_there(paperwork: Paperwork, today: date) -> tuple[str, ...]:
    """Say which dates are in the records and have not run out."""
    said = []
    for kind, words in WANTED_DATES.items():
        fact = paperwork.dates.get(kind)
        due = fact.falls_due if fact else None
        if fact is not None and (due is None or due >= today):
            again = f", due again by {due}" if due else ""
            said.append(f"In the records: {words}, {fact.done}{again}.")
    return tuple(said)
