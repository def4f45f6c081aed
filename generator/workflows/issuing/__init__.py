"""Issuing: new papers asked for, chosen, kept and written; an issue taken out of use."""

from generator.workflows.issuing.new_issue import issue_papers
from generator.workflows.issuing.request import request_papers
from generator.workflows.issuing.voiding import plan_void, use_again, void_issue

__all__ = ["issue_papers", "plan_void", "request_papers", "use_again", "void_issue"]
