"""Practical observations: what somebody saw a person do, step by step, on a date."""

import json
import sqlite3
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from generator.records.people import person_id, person_of
from generator.records.practice.observed_steps import SheetStep
from generator.records.store import RecordsRefused, note, plain_text, writing

# so many steps that nobody saw are named; more are counted
MOST_NAMED = 3


@dataclass(frozen=True, slots=True)
class ObservedStep:
    """A step as it read on the day, and whether it was seen done."""

    step: str
    action: str
    critical: bool
    seen: str


@dataclass(frozen=True, slots=True)
class Observation:
    """One look at one piece of work.

    observer  code; empty when that person was erased
    number    of its row once it is kept
    """

    person: str
    procedure: str
    title: str
    steps: tuple[ObservedStep, ...]
    observer: str
    observed: str
    job: str = ""
    note: str = ""
    number: int = field(default=0, compare=False)

    @property
    def in_words(self) -> str:
        """Say how many steps were seen, safety steps first, and name what was not done."""
        missed = self.steps_that_were("no")
        unseen = self.steps_that_were("not_seen")
        said = [_counted(self.steps, True), _counted(self.steps, False)]
        said += [f"Not done: {'; '.join(step.action for step in missed)}"] if missed else []
        if unseen and len(unseen) <= MOST_NAMED:
            said.append(f"Not seen: {'; '.join(step.action for step in unseen)}")
        elif unseen:
            said.append(f"Not seen: {len(unseen)} steps")
        return ". ".join(filter(None, said))

    def steps_that_were(self, seen: str) -> tuple[ObservedStep, ...]:
        """Return the steps of which this was noted: yes, no or not_seen."""
        return tuple(step for step in self.steps if step.seen == seen)

    @property
    def stars_seen(self) -> bool:
        """Say whether every starred step was seen done."""
        return all(step.seen == "yes" for step in self.steps if step.critical)


def _counted(steps: Sequence[ObservedStep], critical: bool) -> str:
    of_kind = [step.seen for step in steps if step.critical is critical]
    if not of_kind:
        return ""
    kind = "Safety steps" if critical else "Other steps"
    return f"{kind} {of_kind.count('yes')} of {len(of_kind)}"


def observe(
    connection: sqlite3.Connection,
    observation: Observation,
    at: str,
) -> int:
    """Keep an observation and give its number.

    Raises RecordsRefused for people who are not in the records, or who watch themselves.
    """
    if observation.observer == observation.person:
        raise RecordsRefused("nobody observes their own work; name another observer")
    with writing(connection):
        number = connection.execute(
            "INSERT INTO observations (person, procedure, title, steps, job, note, observer,"
            " observed, entered) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
            (person_id(connection, observation.person), observation.procedure, observation.title)
            + (_steps_text(observation.steps), observation.job, observation.note)
            + (_observer(connection, observation.observer), observation.observed, at),
        ).lastrowid
        assert number is not None
        note(connection, at, "observe", f"observation {number}: {observation.procedure}")
    return number


def observed_steps(steps: Sequence[SheetStep], seen: Mapping[str, str]) -> tuple[ObservedStep, ...]:
    """Freeze the steps of a sheet with what was seen."""
    return tuple(
        ObservedStep(step.step, step.action, step.critical, seen[step.step]) for step in steps
    )


def _observer(connection: sqlite3.Connection, code: str) -> int:
    number, person = person_of(connection, code)
    if person.role == "learner":
        raise RecordsRefused(f"'{code}' is a learner; an observer is a trainer, marker or lead")
    return number


def _steps_text(steps: Sequence[ObservedStep]) -> str:
    return plain_text([[s.step, s.action, int(s.critical), s.seen] for s in steps])


def observations_of(connection: sqlite3.Connection, code: str) -> tuple[Observation, ...]:
    """Return the observations of a person, oldest first; raises RecordsRefused for nobody."""
    return _observations(connection, "AND o.person = ?", (person_id(connection, code),))


def all_observations(connection: sqlite3.Connection) -> tuple[Observation, ...]:
    """Return every observation, by person and date."""
    return _observations(connection, "", ())


def _observations(
    connection: sqlite3.Connection, where: str, values: tuple[int, ...]
) -> tuple[Observation, ...]:
    rows = connection.execute(
        "SELECT p.code AS person, o.id, o.procedure, o.title, o.steps, o.job, o.note, o.observed,"
        " coalesce(w.code, '') AS observer FROM observations o JOIN people p ON p.id = o.person"
        " LEFT JOIN people w ON w.id = o.observer WHERE o.taken_out = ''"
        f" {where} ORDER BY p.code, o.observed, o.id",
        values,
    )
    return tuple(
        Observation(
            person=row["person"],
            procedure=row["procedure"],
            title=row["title"],
            steps=tuple(
                ObservedStep(step, does, bool(critical), seen)
                for step, does, critical, seen in json.loads(row["steps"])
            ),
            observer=row["observer"],
            observed=row["observed"],
            job=row["job"],
            note=row["note"],
            number=int(row["id"]),
        )
        for row in rows
    )
