"""Papers: asked for, chosen, kept, printed and printed again."""

from generator.workflows.papers.new_issue import issue_papers
from generator.workflows.papers.observation_sheets import print_observation_sheets, procedure_named
from generator.workflows.papers.paper_files import PaperSettings, paper_files
from generator.workflows.papers.pending_papers import Finished, finish_pending, print_again
from generator.workflows.papers.request import request_papers
from generator.workflows.papers.voiding import plan_void, use_again, void_issue

__all__ = [
    "Finished",
    "PaperSettings",
    "finish_pending",
    "issue_papers",
    "paper_files",
    "plan_void",
    "print_again",
    "print_observation_sheets",
    "procedure_named",
    "request_papers",
    "use_again",
    "void_issue",
]
