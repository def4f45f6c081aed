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
from generator.command_line.analyse_issued import issues_of
from generator.command_line.project import Project
from generator.diagnostics import did_you_mean
from generator.printing import PaperSize, report
from generator.records import Records, RecordsRefused
from generator.reports import (
    CourseNames,
    SatIssue,
    SatPaper,
    analyse_pool,
    class_report,
    course_names,
    paperwork_of,
    person_report,
    pooled,
    procedure_names,
    profile,
    sat_issue,
)
from generator.website.exam import report_page

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
        """Say whether nothing was picked, so that persons and class get theirs."""
        return self == Wanted(large_print=self.large_print)


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
    sat = sat_issue(connection, number)
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
    sat: SatIssue,
    papers: Sequence[tuple[str, SatPaper]],
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


def _class(connection: Records, sat: SatIssue, names: CourseNames) -> Plain:
    issues = issues_of(connection, sat.issue.blueprint)
    return class_report(sat, names, analyse_pool(pooled(connection, issues)))


def _picked(sat: SatIssue, wanted: Wanted) -> tuple[SatPaper, ...]:
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


def _named(picked: Sequence[SatPaper], sat: SatIssue) -> list[tuple[str, SatPaper]]:
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
