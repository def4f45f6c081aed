"""Question papers, answer sheets and answer keys as accessible PDF."""

from generator.printing.paper import PaperSize, answer_key, answer_sheet, question_paper
from generator.printing.typesetter import PrintingRefused

__all__ = ["PaperSize", "PrintingRefused", "answer_key", "answer_sheet", "question_paper"]
