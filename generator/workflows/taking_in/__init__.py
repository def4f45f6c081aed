"""Taking in: answers from files and pages, and of one paper question by question."""

from generator.workflows.taking_in.answer_files import (
    FilesRead,
    is_page_file,
    read_files,
    source_line,
)
from generator.workflows.taking_in.known_papers import seats_of
from generator.workflows.taking_in.paper_entry import WAYS, PaperEntry, open_entry

__all__ = [
    "FilesRead",
    "PaperEntry",
    "WAYS",
    "is_page_file",
    "open_entry",
    "read_files",
    "seats_of",
    "source_line",
]
