"""Practical observations: what somebody saw a person do, step by step, on a date."""

import json
import sqlite3
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from generator.records.database import RecordsRefused, writing
from generator.records.diary import note
from generator.records.observed_steps import SEEN_WORDS, SheetStep
from generator.records.people import person_id, person_of
from generator.records.plain_text import plain_text


@dataclass(frozen=True, slots=True)
class ObservedStep:
    """A step as it read on the day, and whether it was seen done."""

    step: str
    does: str
    critical: bool
    seen: str


@dataclass(frozen=True, slots=True)
class Observation:
    """One look at one piece of work.

    observer  code; empty when that person was erased
    """

    person: str
    procedure: str
    title: str
    steps: tuple[ObservedStep, ...]
    observer: str
    observed: str
    job: str = ""
    note: str = ""

    @property
    def in_words(self) -> str:
        """Say how many steps were seen; starred steps apart from the others."""
        return "; ".join(
            text for text in (_counted(self.steps, True), _counted(self.steps, False)) if text
        )

    @property
    def stars_seen(self) -> bool:
        """Say whether every starred step was seen done."""
        return all(step.seen == "yes" for step in self.steps if step.critical)


def _counted(steps: Sequence[ObservedStep], critical: bool) -> str:
    of_kind = [step.seen for step in steps if step.critical is critical]
    if not of_kind:
        return ""
    counts = {word: of_kind.count(word) for word in SEEN_WORDS}
    more = [f"{counts[word]} {SEEN_WORDS[word]}" for word in ("no", "not_seen") if counts[word]]
    kind = "starred steps" if critical else "other steps"
    return ", ".join([f"{kind} yes {counts['yes']} of {len(of_kind)}", *more])


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
        ObservedStep(step.step, step.does, step.critical, seen[step.step]) for step in steps
    )


def _observer(connection: sqlite3.Connection, code: str) -> int:
    number, person = person_of(connection, code)
    if person.role == "learner":
        raise RecordsRefused(f"'{code}' is a learner; an observer is a trainer, marker or lead")
    return number


def _steps_text(steps: Sequence[ObservedStep]) -> str:
    return plain_text([[s.step, s.does, int(s.critical), s.seen] for s in steps])


def observations_of(connection: sqlite3.Connection, code: str) -> tuple[Observation, ...]:
    """Give the observations of a person, oldest first; raises RecordsRefused for nobody."""
    return _observations(connection, "WHERE o.person = ?", (person_id(connection, code),))


def all_observations(connection: sqlite3.Connection) -> tuple[Observation, ...]:
    """Give every observation, by person and date."""
    return _observations(connection, "", ())


def _observations(
    connection: sqlite3.Connection, where: str, values: tuple[int, ...]
) -> tuple[Observation, ...]:
    rows = connection.execute(
        "SELECT p.code AS person, o.procedure, o.title, o.steps, o.job, o.note, o.observed,"
        " coalesce(w.code, '') AS observer FROM observations o JOIN people p ON p.id = o.person"
        f" LEFT JOIN people w ON w.id = o.observer {where} ORDER BY p.code, o.observed, o.id",
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
        )
        for row in rows
    )
