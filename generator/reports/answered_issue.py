"""Reads an issue with what was answered from the records."""

from dataclasses import dataclass

from generator.marking.answers import corrected_form
from generator.records import Records, RecordsRefused
from generator.records.issues import Issue, issue_of, voided_words
from generator.records.sittings import Sitting, changes_of, sittings_of
from generator.reports.answered_papers import Answer, Plain, SatPaper, pass_marks


@dataclass(frozen=True, slots=True)
class SatIssue:
    """An issue with its papers that were sat, and the seats that were not.

    papers      by label, then in the order in which answers came in
    unanswered  label and code of each form without answers
    """

    issue: Issue
    papers: tuple[SatPaper, ...]
    unanswered: tuple[tuple[str, str], ...]


def sat_issue(connection: Records, number: int) -> SatIssue:
    """Return an issue with what was answered; the keys are those of today, as corrected.

    Raises RecordsRefused for an issue that is not there or was voided.
    """
    issue = issue_of(connection, number)
    if issue.state == "voided":
        raise RecordsRefused(voided_words(number))
    changes = changes_of(connection, number)
    forms = {form.label: corrected_form(form.content, changes) for form in issue.forms}
    places = {form.label: place for place, form in enumerate(issue.forms)}
    sat = sorted(sittings_of(connection, number), key=lambda s: (places[s.label], s.number))
    answered = {sitting.label for sitting in sat}
    return SatIssue(
        issue,
        tuple(_paper(issue, forms[sitting.label], sitting) for sitting in sat),
        tuple((form.label, form.person) for form in issue.forms if form.label not in answered),
    )


def _paper(issue: Issue, form: Plain, sitting: Sitting) -> SatPaper:
    marked = sitting.marked
    return SatPaper(
        issue=issue.number,
        blueprint=issue.blueprint,
        title=issue.title,
        label=sitting.label,
        form_id=str(form.get("form_id", "")),
        edition=issue.edition,
        person=sitting.person,
        sat=sitting.sat,
        verdict=marked.verdict,
        points=marked.points,
        most=marked.most,
        pass_marks=pass_marks(form, marked.most),
        pass_percent=int(form["pass_percent"]),
        answers=tuple(
            Answer(
                number=entry["number"],
                marks=entry["marks"],
                must_pass=bool(entry["must_pass"]),
                question=entry["question"],
                response=sitting.responses.get(str(entry["number"]), {}),
                mark=mark,
                left_out=bool(mark.findings.get("left_out")),
            )
            for entry, mark in zip(form["questions"], marked.marks, strict=True)
        ),
    )
