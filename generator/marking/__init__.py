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

from generator.marking.analysis import ClassAnalysis, ItemAnalysis, analyse
from generator.marking.analysis_plain import analysis_as_plain
from generator.marking.analysis_scores import Figure, Scores, right_or_wrong_scores
from generator.marking.csv_cells import spreadsheet_safe
from generator.marking.figures import significant_figures
from generator.marking.form_marking import FormMark, QuestionMark, Verdict, mark_form
from generator.marking.issued_rules import ISSUED_RULES
from generator.marking.issued_table import answer_table
from generator.marking.mark import Finding, Mark, mark_as_plain
from generator.marking.marking import mark_response
from generator.marking.response import (
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
from generator.marking.response_table import (
    Key,
    ResponseTable,
    key_disagreements,
    read_key,
    read_responses,
)
from generator.marking.table_rules import TABLE_RULES

__all__ = [
    "ISSUED_RULES",
    "TABLE_RULES",
    "Awarded",
    "Blank",
    "CannotMark",
    "Chosen",
    "ClassAnalysis",
    "Figure",
    "Finding",
    "FormMark",
    "Illegible",
    "ItemAnalysis",
    "Key",
    "Mark",
    "Matched",
    "Ordered",
    "QuestionMark",
    "Response",
    "ResponseTable",
    "Scores",
    "Typed",
    "Verdict",
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
