"""One response against one key: marks, findings and corrected keys."""

from generator.marking.answers.answer_shape import needs_a_person, refuse_misfit
from generator.marking.answers.corrected_key import (
    Change,
    Effect,
    accept_number,
    accept_option,
    corrected_form,
    effect_on,
    in_words,
    key_options,
    leave_out,
)
from generator.marking.answers.mark_answer import mark_response
from generator.marking.answers.mark_form import LEFT_OUT, FormMark, QuestionMark, Verdict, mark_form
from generator.marking.answers.marks import About, Code, Finding, Mark, Status, mark_as_plain
from generator.marking.answers.response import (
    Awarded,
    Blank,
    CannotMark,
    Chosen,
    Illegible,
    Matched,
    Ordered,
    Response,
    Typed,
    response_as_plain,
    response_from_plain,
)
from generator.marking.answers.significant_digits import count_significant_digits
from generator.marking.answers.unit_words import APART, spellings

__all__ = [
    "APART",
    "About",
    "Awarded",
    "Blank",
    "CannotMark",
    "Change",
    "Chosen",
    "Code",
    "Effect",
    "Finding",
    "FormMark",
    "Illegible",
    "LEFT_OUT",
    "Mark",
    "Matched",
    "Ordered",
    "QuestionMark",
    "Response",
    "Status",
    "Typed",
    "Verdict",
    "accept_number",
    "accept_option",
    "corrected_form",
    "count_significant_digits",
    "effect_on",
    "in_words",
    "key_options",
    "leave_out",
    "mark_as_plain",
    "mark_form",
    "mark_response",
    "needs_a_person",
    "refuse_misfit",
    "response_as_plain",
    "response_from_plain",
    "spellings",
]
