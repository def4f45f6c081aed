"""Marking of one answer, and what a whole class's answers say about the questions.

Imports issued (the keys) and what lies below, and from assembly the interval of a share.
`answers` marks one answer and one form, and corrects keys after an appeal; `tables` reads answers
that come in, cell by cell; `analysis` looks at what a whole class answered.
"""

from generator.marking.analysis import (
    ClassAnalysis,
    ItemAnalysis,
    Key,
    ResponseTable,
    Scores,
    Statistic,
    analyse,
    analysis_as_plain,
    key_disagreements,
    read_key,
    read_responses,
    right_or_wrong_scores,
)
from generator.marking.answers import (
    Awarded,
    Blank,
    CannotMark,
    Chosen,
    FormMark,
    Illegible,
    Mark,
    Matched,
    Ordered,
    Response,
    Typed,
    count_significant_digits,
    mark_as_plain,
    mark_form,
    mark_response,
    response_as_plain,
    response_from_plain,
)
from generator.marking.tables import ISSUED_RULES, TABLE_RULES, answer_table, spreadsheet_safe

__all__ = [
    "Awarded",
    "Blank",
    "CannotMark",
    "Chosen",
    "ClassAnalysis",
    "FormMark",
    "ISSUED_RULES",
    "Illegible",
    "ItemAnalysis",
    "Key",
    "Mark",
    "Matched",
    "Ordered",
    "Response",
    "ResponseTable",
    "Scores",
    "Statistic",
    "TABLE_RULES",
    "Typed",
    "analyse",
    "analysis_as_plain",
    "answer_table",
    "count_significant_digits",
    "key_disagreements",
    "mark_as_plain",
    "mark_form",
    "mark_response",
    "read_key",
    "read_responses",
    "response_as_plain",
    "response_from_plain",
    "right_or_wrong_scores",
    "spreadsheet_safe",
]
