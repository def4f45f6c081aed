"""Pages that are made for one issue: the exam on screen and reports."""

from generator.website.exam.exam_page import sitting_page
from generator.website.exam.report_page import report_page

__all__ = ["report_page", "sitting_page"]
