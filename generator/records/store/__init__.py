"""The file of the training records: opening, migrating, backup, and the trail of changes."""

from generator.records.store.amendments import (
    Amendment,
    amendments_of_issue,
    amendments_of_person,
    keep_amendment,
)
from generator.records.store.audit_log import note
from generator.records.store.backup import back_up
from generator.records.store.calendar_dates import days_after, read_date, years_after
from generator.records.store.canonical_json import packed, plain_text, unpacked
from generator.records.store.database import (
    FILE_NAME,
    OTHERS,
    OWNER_FOLDER,
    Records,
    RecordsRefused,
    integrity_problems,
    make_private,
    open_records,
    writing,
)

__all__ = [
    "Amendment",
    "FILE_NAME",
    "OTHERS",
    "OWNER_FOLDER",
    "Records",
    "RecordsRefused",
    "amendments_of_issue",
    "amendments_of_person",
    "back_up",
    "days_after",
    "integrity_problems",
    "keep_amendment",
    "make_private",
    "note",
    "open_records",
    "packed",
    "plain_text",
    "read_date",
    "unpacked",
    "writing",
    "years_after",
]
