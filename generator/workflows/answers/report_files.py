"""The reports of an issue as files; the name of a file holds the form's label, never a person."""

import os
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from functools import partial
from pathlib import Path
from typing import Any, cast

from generator.bank import Bank
from generator.diagnostics import did_you_mean
from generator.printing import PaperSize, PrintingRefused, report
from generator.records import Records, RecordsRefused
from generator.reports import (
    AnsweredIssue,
    AnsweredPaper,
    CourseNames,
    analyse_pool,
    answered_issue,
    class_report,
    course_names,
    paperwork_of,
    person_report,
    pooled,
    procedure_names,
    profile,
)
from generator.website.exam import report_page
from generator.workflows.answers.issued_analysis import issues_of
from generator.workflows.files import off_the_site, write_private_files
from generator.workflows.project import Project
from generator.workflows.refusals import refusing

Plain = Mapping[str, Any]
# the start of its file names, and what gives its content once it is its turn
Document = tuple[str, Callable[[], Plain]]


@dataclass(frozen=True, slots=True)
class Wanted:
    """Which reports are wanted.

    person, label  only the papers of this code or this form
    of_class       the class report; with `profiles` both, alone nothing else
    """

    person: str | None = None
    label: str | None = None
    of_class: bool = False
    profiles: bool = False
    large_print: bool = False

    @property
    def is_everything(self) -> bool:
        """Return whether nothing was picked, so that persons and class get theirs."""
        return self == Wanted(large_print=self.large_print)


@refusing(RecordsRefused, PrintingRefused)
def write_reports(
    project: Project,
    connection: Records,
    bank: Bank,
    number: int,
    wanted: Wanted,
    *,
    day: date,
    output: Path | None = None,
    watched: Callable[[Sequence[Document]], Iterable[Document]] = iter,
) -> tuple[Path, ...]:
    """Write the reports on an issue, readable by their owner only: all of them, or none.

    day      on which dates are judged
    output   another folder than the one beside the papers of the issue
    watched  goes through the reports one by one, so that somebody can be told how far it is
    """
    folder = (output or project.issue_folder(number) / "reports").resolve()
    off_the_site(project, output or folder)
    files = report_files(
        project, connection, bank, number, wanted, folder=folder, day=day, watched=watched
    )
    return write_private_files(folder, files)


def report_files(
    project: Project,
    connection: Records,
    bank: Bank,
    number: int,
    wanted: Wanted,
    *,
    folder: Path,
    day: date,
    watched: Callable[[Sequence[Document]], Iterable[Document]] = iter,
) -> Iterator[tuple[str, bytes]]:
    """Return name and bytes of every report that is wanted, one after the other.

    folder   where the files will lie, for the links to the course
    day      on which dates are judged
    watched  goes through the reports one by one, so that somebody can be told how far it is
    Raises RecordsRefused for an issue, a person or a form without answers, before the first file.
    """
    sat = answered_issue(connection, number)
    if not sat.papers:
        raise RecordsRefused(
            f"nobody has answered issue {number} yet; mark the answers first: guidecoat mark"
        )
    papers = _named(_picked(sat, wanted), sat)
    documents = tuple(_documents(connection, bank, sat, papers, wanted, day))
    settings = sat.issue.settings
    paper = cast("PaperSize", settings.get("paper", "a4"))
    large_print = wanted.large_print or bool(settings.get("large_print"))
    return _files(project, watched(documents), paper, large_print, folder)


def _files(
    project: Project,
    documents: Iterable[Document],
    paper: PaperSize,
    large_print: bool,
    folder: Path,
) -> Iterator[tuple[str, bytes]]:
    site = f"{Path(os.path.relpath(project.site.resolve(), folder)).as_posix()}/"
    for name, content_of in documents:
        content = content_of()
        pdf = report(content, paper=paper, fonts=project.fonts, large_print=large_print)
        yield f"{name}.pdf", pdf
        yield f"{name}.html", report_page(content, theme=project.theme, site=site)


def _documents(
    connection: Records,
    bank: Bank,
    sat: AnsweredIssue,
    papers: Sequence[tuple[str, AnsweredPaper]],
    wanted: Wanted,
    day: date,
) -> Iterator[Document]:
    names = course_names(bank)
    if not wanted.of_class and not wanted.profiles:
        for name, paper in papers:
            yield f"{name}-report", partial(person_report, paper, names)
    if wanted.profiles:
        procedures = procedure_names(bank)
        for name, paper in papers:
            known = paperwork_of(connection, paper.person)
            yield f"{name}-profile", partial(profile, paper, names, known, procedures, day)
    if wanted.of_class or wanted.is_everything:
        yield f"{sat.issue.blueprint}-class-report", partial(_class, connection, sat, names)


def _class(connection: Records, sat: AnsweredIssue, names: CourseNames) -> Plain:
    issues = issues_of(connection, sat.issue.blueprint)
    return class_report(sat, names, analyse_pool(pooled(connection, issues)))


def _picked(sat: AnsweredIssue, wanted: Wanted) -> tuple[AnsweredPaper, ...]:
    if wanted.label is not None:
        labels = [form.label for form in sat.issue.forms]
        if wanted.label not in labels:
            hint = did_you_mean(wanted.label, labels) or f"its forms are {', '.join(labels)}"
            raise RecordsRefused(f"issue {sat.issue.number} has no form '{wanted.label}'; {hint}")
        found = tuple(paper for paper in sat.papers if paper.label == wanted.label)
        if not found:
            raise RecordsRefused(f"form '{wanted.label}' has no answers yet")
        return found
    if wanted.person is not None:
        found = tuple(paper for paper in sat.papers if paper.person == wanted.person)
        if not found:
            hint = did_you_mean(wanted.person, (paper.person for paper in sat.papers))
            said = f"'{wanted.person}' has no answers in issue {sat.issue.number}"
            raise RecordsRefused(f"{said}; {hint}" if hint else said)
        return found
    return sat.papers


def _named(picked: Sequence[AnsweredPaper], sat: AnsweredIssue) -> list[tuple[str, AnsweredPaper]]:
    """Return each paper the start of its file name; papers of one form are numbered."""
    times = Counter(paper.label for paper in sat.papers)
    places: Counter[str] = Counter()
    found = []
    for paper in sat.papers:
        places[paper.label] += 1
        number = f"-{places[paper.label]}" if times[paper.label] > 1 else ""
        if any(paper is wanted for wanted in picked):
            found.append((f"{paper.blueprint}-{paper.label}{number}", paper))
    return found
