"""Reads an issue with what was answered from the records."""

from dataclasses import dataclass

from generator.records import Records
from generator.records.issues import Issue, issue_of
from generator.records.sittings import AnsweredPaper, answered_papers


@dataclass(frozen=True, slots=True)
class AnsweredIssue:
    """An issue with its papers that were answered, and the seats that were not.

    papers      in the order of the forms, then in the order in which answers came in
    unanswered  label and code of each form without answers
    """

    issue: Issue
    papers: tuple[AnsweredPaper, ...]
    unanswered: tuple[tuple[str, str], ...]


def answered_issue(connection: Records, number: int) -> AnsweredIssue:
    """Return an issue with what was answered; the keys are those of today, as corrected.

    Raises RecordsRefused for an issue that is not there or was voided.
    """
    papers = tuple(answered_papers(connection, [number]))
    issue = issue_of(connection, number)
    answered = {paper.label for paper in papers}
    return AnsweredIssue(
        issue,
        papers,
        tuple((form.label, form.person) for form in issue.forms if form.label not in answered),
    )
