"""Answers that were taken in are marked with the key as it stands, and kept with their marks."""

from collections.abc import Mapping, Sequence
from datetime import date
from types import MappingProxyType

from generator.marking.tables import FormAnswers
from generator.records import Records, RecordsRefused
from generator.records.sittings import Entered, Outcome, StoredForm, mark_and_keep, marked_papers
from generator.records.store import FILE_NAME
from generator.workflows.project import Project
from generator.workflows.refusals import Refused, refusing


def refuse_without_issues(project: Project) -> Refused | None:
    """Return why nothing can be marked in a project in which nothing was issued yet."""
    if (project.records / FILE_NAME).exists():
        return None
    return Refused(
        "there are no records here yet; `guidecoat issue` keeps each paper that it writes"
    )


@refusing(RecordsRefused)
def mark_papers(
    connection: Records,
    answers: Sequence[FormAnswers],
    *,
    at: str,
    marker: str = "",
    sat: date | None = None,
    loaded: Mapping[str, StoredForm] = MappingProxyType({}),
) -> Outcome:
    """Mark papers and keep their answers and marks: all of them, or none when one is refused.

    at      the time, as text
    marker  code of who marks
    sat     day of the sitting; None for the day of `at`
    loaded  forms that were read when the answers were taken in
    """
    return mark_and_keep(connection, answers, at, marker, sat.isoformat() if sat else "", loaded)


@refusing(RecordsRefused)
def preview_marks(connection: Records, answers: FormAnswers) -> Entered:
    """Return what one paper comes to with the key as it stands, and keep nothing."""
    return marked_papers(connection, [answers])[0]
