"""Papers of quizzes, observation sheets and certificates as accessible PDF.

typesetter, markup: the engine that makes the PDF; Markdown as nodes for it.
paper: question paper, answer sheet, answer key, class key, marking guide and feedback sheet.
form_facts, result_words, short_answers: what they share; luck, mastery and answers in short.
paper_rules: what the first page of a question paper says.
paper_content, key_content, guide_content, feedback_content: what each paper shows.
class_key_content, class_key_layout: the key of a class, and how it comes on one page.
sheet_content, sheet_rules: what an answer sheet shows, and how it is filled in.
sheet_geometry, sheet_fields, sheet_measures: where every mark of an answer sheet is, in mm.
observation_sheet, certificate: what was seen at the panel; what the records show.
report: what marks mean, for a person, a class and a new hire.
"""

from generator.printing.answer_sheet import sheet_geometry
from generator.printing.certificate import certificate
from generator.printing.observation_sheet import observation_sheet
from generator.printing.paper import (
    PaperSize,
    answer_key,
    answer_sheet,
    class_key,
    feedback_sheet,
    marking_guide,
    question_paper,
)
from generator.printing.report import report
from generator.printing.settable import WAY_OUT, unsettable
from generator.printing.typesetter import PrintingRefused

__all__ = [
    "PaperSize",
    "PrintingRefused",
    "WAY_OUT",
    "answer_key",
    "answer_sheet",
    "certificate",
    "class_key",
    "feedback_sheet",
    "marking_guide",
    "observation_sheet",
    "question_paper",
    "report",
    "sheet_geometry",
    "unsettable",
]
