"""The answer sheet that a machine can read."""

from generator.printing.answer_sheet.content import answer_sheet_content
from generator.printing.answer_sheet.fields import DoesNotFit
from generator.printing.answer_sheet.geometry import sheet_geometry
from generator.printing.answer_sheet.measures import PAPERS

__all__ = ["DoesNotFit", "PAPERS", "answer_sheet_content", "sheet_geometry"]
