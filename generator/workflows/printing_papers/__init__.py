"""Papers as files: of a form, of an issue that is kept, of a procedure to watch."""

from generator.workflows.printing_papers.issue_papers import (
    Finished,
    finish_pending,
    print_again,
    settings_kept,
    write_papers,
)
from generator.workflows.printing_papers.observation_sheets import (
    print_observation_sheets,
    procedure_named,
)
from generator.workflows.printing_papers.paper_files import PaperSettings, issue_files, paper_files

__all__ = [
    "Finished",
    "PaperSettings",
    "finish_pending",
    "issue_files",
    "paper_files",
    "print_again",
    "print_observation_sheets",
    "procedure_named",
    "settings_kept",
    "write_papers",
]
