"""Answers: taken in, marked, corrected, reported and analysed."""

from generator.workflows.answers.answer_files import (
    FilesRead,
    is_page_file,
    read_files,
    source_line,
)
from generator.workflows.answers.correct import NewKey, carry_out_correction, plan_correction
from generator.workflows.answers.issued_analysis import analyse_issues
from generator.workflows.answers.known_papers import seats_of
from generator.workflows.answers.mark import mark_papers, preview_marks, refuse_without_issues
from generator.workflows.answers.paper_entry import WAYS, PaperEntry, open_entry
from generator.workflows.answers.report_files import Wanted, write_reports
from generator.workflows.answers.table_analysis import analyse_table

__all__ = [
    "FilesRead",
    "NewKey",
    "PaperEntry",
    "WAYS",
    "Wanted",
    "analyse_issues",
    "analyse_table",
    "carry_out_correction",
    "is_page_file",
    "mark_papers",
    "open_entry",
    "plan_correction",
    "preview_marks",
    "read_files",
    "refuse_without_issues",
    "seats_of",
    "source_line",
    "write_reports",
]
