"""Who the records are about: people, rosters and erased codes."""

from generator.records.people.erased_codes import keep_fingerprint, refuse_erased, was_erased
from generator.records.people.people import (
    ROLES,
    Person,
    add_people,
    all_people,
    amend_person,
    person_id,
    person_of,
    row_or_nobody,
)
from generator.records.people.roster import read_roster
from generator.records.people.roster_rules import ROSTER_RULES

__all__ = [
    "Person",
    "ROLES",
    "ROSTER_RULES",
    "add_people",
    "all_people",
    "amend_person",
    "keep_fingerprint",
    "person_id",
    "person_of",
    "read_roster",
    "refuse_erased",
    "row_or_nobody",
    "was_erased",
]
