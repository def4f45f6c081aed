"""Question papers, answer sheets, keys, observation sheets and certificates as accessible PDF."""

from generator.printing.certificate import certificate
from generator.printing.observation_sheet import observation_sheet
from generator.printing.paper import PaperSize, answer_key, answer_sheet, question_paper
from generator.printing.typesetter import PrintingRefused

__all__ = [
    "PaperSize",
    "PrintingRefused",
    "answer_key",
    "answer_sheet",
    "certificate",
    "observation_sheet",
    "question_paper",
]
