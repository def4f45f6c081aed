"""What was issued: issues, their frozen forms and the questions stored with them."""

from generator.records.issues.frozen_forms import (
    QUESTION,
    QUESTIONS,
    FrozenForm,
    forms_of,
    unfrozen,
)
from generator.records.issues.issued_before import (
    all_issues,
    ids_of_forms,
    same_request,
    voided_words,
)
from generator.records.issues.issues import (
    Issue,
    drop_pending,
    exposure,
    freeze,
    issue_of,
    items_met,
    papers_written,
    pending_issues,
    take_back_void,
    void,
)
from generator.records.issues.stored_questions import items_and_versions, numbers_of

__all__ = [
    "FrozenForm",
    "Issue",
    "QUESTION",
    "QUESTIONS",
    "all_issues",
    "drop_pending",
    "exposure",
    "forms_of",
    "freeze",
    "ids_of_forms",
    "issue_of",
    "items_and_versions",
    "items_met",
    "numbers_of",
    "papers_written",
    "pending_issues",
    "same_request",
    "take_back_void",
    "unfrozen",
    "void",
    "voided_words",
]
