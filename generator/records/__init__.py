"""The training records: what was issued, answered, marked, observed and signed, in one file.

Imports marking and what lies below. SQLite stays in this package. Times and days come in as text
or dates; nothing here reads the clock.
"""

from generator.records.people import ROSTER_RULES, Person, read_roster
from generator.records.store import Records, RecordsRefused, open_records

__all__ = ["Person", "ROSTER_RULES", "Records", "RecordsRefused", "open_records", "read_roster"]
