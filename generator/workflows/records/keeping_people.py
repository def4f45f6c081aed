"""People taken into the records; who is there already stays as they are, unless corrected."""

from collections.abc import Iterable
from dataclasses import dataclass

from generator.records import Person, Records, RecordsRefused
from generator.records.people import add_people, all_people, amend_person
from generator.workflows.refusals import refusing


@dataclass(frozen=True, slots=True)
class Added:
    """How many people were new, how many were there, and whose code has another name or role."""

    new: int
    known: int
    differing: tuple[str, ...]


@refusing(RecordsRefused)
def add_to_records(connection: Records, people: Iterable[Person], at: str) -> Added:
    """Add people to the records.

    at  the time, as text
    """
    added = tuple(people)
    new = add_people(connection, added, at)
    there = {person.code: person for person in all_people(connection)}
    differing = (p.code for p in added if _differs(p, there[p.code]))
    return Added(new, len(added) - new, tuple(differing))


def _differs(typed: Person, kept: Person) -> bool:
    return bool(typed.name and typed.name != kept.name) or typed.role != kept.role


@refusing(RecordsRefused)
def correct_person(
    connection: Records, code: str, name: str | None, role: str | None, reason: str, at: str
) -> str:
    """Correct the name or the role of a person, keep what it was, and return the code."""
    amend_person(connection, code, name, role, reason, at)
    return code
