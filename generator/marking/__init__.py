"""Marking of one answer, and what a whole class's answers say about the questions.

Imports assembly (the signs of a form's id), bank (precedence, rule pages), quantities and
diagnostics.
One answer: response, mark, marking (the one door), options_marking, order_marking,
numeric_marking with typed_number, unit_words and figures.
A form: form_marking, corrected_key (appeals).
The table of an issue: issued_table, issued_answers with issued_seats, issued_cells and
issued_rules; spreadsheet with workbook_parts.
The file of an on-screen page: answers_file over saved_fields and located_json.
A class: csv_cells, response_table with table_problems and table_rules, analysis (the one door)
over analysis_scores, _moments, _reliability, _decision, _options and _flags; analysis_plain.
"""

from generator.marking.analysis import (
    ClassAnalysis,
    Figure,
    ItemAnalysis,
    Key,
    ResponseTable,
    Scores,
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
    mark_as_plain,
    mark_form,
    mark_response,
    response_as_plain,
    response_from_plain,
    significant_figures,
)
from generator.marking.tables import ISSUED_RULES, TABLE_RULES, answer_table, spreadsheet_safe

__all__ = [
    "Awarded",
    "Blank",
    "CannotMark",
    "Chosen",
    "ClassAnalysis",
    "Figure",
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
    "TABLE_RULES",
    "Typed",
    "analyse",
    "analysis_as_plain",
    "answer_table",
    "key_disagreements",
    "mark_as_plain",
    "mark_form",
    "mark_response",
    "read_key",
    "read_responses",
    "response_as_plain",
    "response_from_plain",
    "right_or_wrong_scores",
    "significant_figures",
    "spreadsheet_safe",
]
