"""New papers: chosen by what is asked for and by what was issued before, kept, then written."""

import sys
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import click

from generator.assembly import (
    Assembly,
    CannotAssemble,
    assemble,
    form_as_plain,
    position_alarms,
    shortages,
)
from generator.bank import Bank
from generator.bank.models import Blueprint
from generator.command_line.clock import now
from generator.command_line.earlier_issues import past_of
from generator.command_line.issue_papers import settings_kept, write_papers
from generator.command_line.papers import PaperSettings, issue_files
from generator.command_line.project import Project, bank_hash, stop_with
from generator.printing import PrintingRefused
from generator.questions import askables, item_versions
from generator.records import Person, Records
from generator.records.issues import FrozenForm, freeze
from generator.records.people import add_people
from generator.reports import CourseNames, course_names

Plain = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Request:
    """What was asked for.

    labels  one for each form
    people  who each form is for, in the order of the seats; nobody for papers without names
    """

    blueprint: str
    seed: str
    labels: tuple[str, ...]
    people: tuple[Person, ...]
    settings: PaperSettings

    @property
    def codes(self) -> tuple[str, ...]:
        """Return the code of the person of each form, or nothing."""
        return tuple(person.code for person in self.people) or ("",) * len(self.labels)

    @property
    def seats(self) -> tuple[tuple[str, str], ...]:
        """Return label and code of each form."""
        return tuple(zip(self.labels, self.codes, strict=True))


def new_issue(
    project: Project, bank: Bank, connection: Records, request: Request
) -> tuple[int, tuple[Path, ...]]:
    """Choose, keep and write the papers; give the issue's number and the files.

    Stops with exit 1 and one sentence where the papers cannot be made, and keeps nothing then.
    """
    known = askables(bank)
    entry = bank.blueprints[request.blueprint]
    short = shortages(entry, bank, known)
    if short:
        stop_with(project, short)
    versions = item_versions(bank, known)
    codes = tuple(person.code for person in request.people)
    past = past_of(connection, codes, versions)
    try:
        built = assemble(bank, entry, request.seed, request.labels, codes, past, known)
    except CannotAssemble as error:
        click.echo(f"these papers cannot be made: {error}; nothing was written", err=True)
        sys.exit(1)
    names = course_names(bank)
    plain = [_with_titles(form_as_plain(form), names) for form in built.forms]
    files = _set(project, plain, request.settings)
    add_people(connection, request.people, now())
    number = freeze(
        connection,
        blueprint=request.blueprint,
        title=entry.record.title,
        seed=request.seed,
        edition=bank.sheet.edition,
        bank_hash=bank_hash(project),
        settings=settings_kept(request.settings),
        forms=[
            FrozenForm(label, form, code)
            for (label, code), form in zip(request.seats, plain, strict=True)
        ],
        at=now(),
        versions=versions,
    )
    written = write_papers(project, connection, number, files)
    _say_how_it_came_out(built, plain, entry.record)
    return number, written


def _with_titles(form: Plain, names: CourseNames) -> Plain:
    """Add the title of each module and the text of each objective, as they are on the day.

    They come after the id of the form was taken, so that a new wording is no new form.
    """
    objectives = {entry["question"]["objective"] for entry in form["questions"]}
    modules = {entry["question"]["module"] for entry in form["questions"]}
    titles = {name: names.module(name) for name in sorted(modules)}
    return {**form, "titles": titles | {name: names.objective(name) for name in sorted(objectives)}}


def _set(project: Project, forms: Sequence[Plain], settings: PaperSettings) -> dict[str, bytes]:
    try:
        return issue_files(project, forms, settings, _watched)
    except PrintingRefused as error:
        click.echo(f"the papers could not be set: {error}; nothing was written", err=True)
        sys.exit(1)


def _watched(forms: Sequence[Any]) -> Iterable[Any]:
    with click.progressbar(
        forms, label="papers", file=sys.stderr, hidden=not sys.stderr.isatty()
    ) as bar:
        yield from bar


def _say_how_it_came_out(built: Assembly, plain: Sequence[Plain], plan: Blueprint) -> None:
    for form, sheet in zip(built.forms, plain, strict=True):
        if form.person:
            click.echo(f"form {form.label}, {sheet['form_id']}: {form.person}", err=True)
        for alarm in position_alarms(form):
            click.echo(f"form {form.label}: {alarm.in_words()}", err=True)
    click.echo(built.balance.in_words(int(plan.pass_percent), int(plan.minutes)), err=True)
