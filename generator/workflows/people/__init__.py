"""People: rosters read, added to the records, corrected there."""

from generator.workflows.people.keeping_people import add_to_records, correct_person
from generator.workflows.people.rosters import one_person, people_of

__all__ = ["add_to_records", "correct_person", "one_person", "people_of"]
