"""What somebody saw a person do, step by step, kept or corrected."""

from dataclasses import dataclass
from datetime import date

from generator.bank import Bank
from generator.records import Records, RecordsRefused
from generator.records.practice import (
    Observation,
    observe,
    observed_steps,
    replace_observation,
    seen_of,
    sheet_steps,
)
from generator.workflows.papers import procedure_named
from generator.workflows.refusals import Refused, refusing


@dataclass(frozen=True, slots=True)
class Watched:
    """What was noted while a person worked.

    steps  each as name=yes, name=no or name=not_seen; a step that is not named was not seen
    """

    person: str
    procedure: str
    steps: tuple[str, ...]
    observer: str
    day: date
    job: str = ""
    note: str = ""


def observation_of(bank: Bank, watched: Watched, today: date) -> Observation | Refused:
    """Return what was noted as an observation of a procedure of the bank.

    today  a day after it is refused
    """
    if watched.day > today:
        sentence = f"{watched.day.isoformat()} is still to come; give the day of the work"
        return Refused(sentence, misuse=True)
    found = procedure_named(bank, watched.procedure)
    if isinstance(found, Refused):
        return found
    rows = sheet_steps(found)
    try:
        seen = seen_of(rows, watched.steps)
    except RecordsRefused as refused:
        return Refused(str(refused), misuse=True)
    return Observation(
        person=watched.person,
        procedure=watched.procedure,
        title=found.title,
        steps=observed_steps(rows, seen),
        observer=watched.observer,
        observed=watched.day.isoformat(),
        job=watched.job,
        note=watched.note,
    )


@refusing(RecordsRefused)
def keep_observation(
    connection: Records,
    observation: Observation,
    at: str,
    *,
    earlier: int | None = None,
    reason: str = "",
) -> int:
    """Keep an observation, or put it in the place of an earlier one; return its number.

    at               the time, as text
    earlier, reason  number of the one it corrects, and why; what that was stays in the records
    """
    if earlier is None:
        return observe(connection, observation, at)
    return replace_observation(connection, earlier, observation, reason, at)
