"""Papers of quizzes, observation sheets and certificates as accessible PDF."""

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
from generator.printing.side_by_side import side_by_side
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
    "side_by_side",
    "unsettable",
]
