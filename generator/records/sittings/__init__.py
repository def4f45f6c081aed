"""What was answered: sittings, their marks, corrections and appeals."""

from generator.records.sittings.answered_paper import (
    AnsweredPaper,
    AnsweredQuestion,
    PaperFindings,
    PrintedQuestion,
)
from generator.records.sittings.answered_papers import answered_papers
from generator.records.sittings.answers import shares_of_items
from generator.records.sittings.appeals import (
    Appeal,
    MarkedAgain,
    correct_and_mark_again,
    preview_correction,
)
from generator.records.sittings.corrected_forms import (
    StoredForm,
    changes_of,
    corrected_forms,
    issued_forms,
    voided_forms,
)
from generator.records.sittings.corrections import Correction
from generator.records.sittings.mark_and_store import Entered, Outcome, mark_and_keep, marked_papers
from generator.records.sittings.results import (
    Result,
    all_results,
    open_retests,
    passed_since,
    results_of,
)
from generator.records.sittings.sittings import Kept, sittings_of
from generator.records.sittings.stored_marks import KeptMark, Marked, StoredFinding, all_markings

__all__ = [
    "AnsweredPaper",
    "AnsweredQuestion",
    "Appeal",
    "Correction",
    "Entered",
    "Kept",
    "KeptMark",
    "Marked",
    "MarkedAgain",
    "Outcome",
    "PaperFindings",
    "PrintedQuestion",
    "Result",
    "StoredFinding",
    "StoredForm",
    "all_markings",
    "all_results",
    "answered_papers",
    "changes_of",
    "correct_and_mark_again",
    "corrected_forms",
    "issued_forms",
    "mark_and_keep",
    "marked_papers",
    "open_retests",
    "passed_since",
    "preview_correction",
    "results_of",
    "shares_of_items",
    "sittings_of",
    "voided_forms",
]
