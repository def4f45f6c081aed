"""New papers: chosen by what is asked for and by what was issued before, kept, then written."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

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
from generator.issued import IssuedForm
from generator.printing import PrintingRefused
from generator.questions import askables, item_versions
from generator.records import Records, RecordsRefused
from generator.records.issues import FrozenForm, freeze, issue_of, same_request
from generator.records.people import add_people, refuse_erased
from generator.reports import CourseNames, course_names
from generator.workflows.papers.earlier_issues import past_of
from generator.workflows.papers.paper_files import issue_files
from generator.workflows.papers.pending_papers import print_again, settings_kept, write_papers
from generator.workflows.papers.request import Request
from generator.workflows.project import Project, bank_hash
from generator.workflows.refusals import Refused, refused_with, refusing

Watched = Callable[[Sequence[IssuedForm]], Iterable[IssuedForm]]


@dataclass(frozen=True, slots=True)
class Issued:
    """Papers that are in the records and on the disk.

    notes        how the choice came out, form by form; none for papers written again
    made_before  the day on which the same request made these papers; empty for new ones
    """

    number: int
    files: tuple[Path, ...]
    notes: tuple[str, ...] = ()
    made_before: str = ""


@refusing(RecordsRefused)
def issue_papers(
    project: Project,
    bank: Bank,
    connection: Records,
    request: Request,
    at: str,
    watched: Watched = iter,
) -> Issued | Refused:
    """Keep and write new papers, or write those again that the same request made before.

    at       the time, as text
    watched  goes through the forms one by one, so that somebody can be told how far it is
    """
    refuse_erased(connection, (person.code for person in request.people))
    number = same_request(
        connection, request.blueprint, request.seed, bank_hash(project), request.seats
    )
    if number is None:
        return _new(project, bank, connection, request, at, watched)
    written = print_again(project, connection, number, request.settings)
    if isinstance(written, Refused):
        return written
    return Issued(number, written, made_before=issue_of(connection, number).issued[:10])


def _new(
    project: Project, bank: Bank, connection: Records, request: Request, at: str, watched: Watched
) -> Issued | Refused:
    """Choose, keep and write the papers; nothing is kept where they cannot be made."""
    known = askables(bank)
    entry = bank.blueprints[request.blueprint]
    short = shortages(entry, bank, known)
    if short:
        return refused_with(short)
    versions = item_versions(bank, known)
    codes = tuple(person.code for person in request.people)
    past = past_of(connection, codes, versions)
    try:
        built = assemble(bank, entry, request.seed, request.labels, codes, past, known)
    except CannotAssemble as error:
        return Refused(f"these papers cannot be made: {error}; nothing was written")
    names = course_names(bank)
    issued = [_with_titles(form_as_plain(form), names) for form in built.forms]
    try:
        files = issue_files(project, issued, request.settings, watched)
    except PrintingRefused as error:
        return Refused(f"the papers could not be set: {error}; nothing was written")
    add_people(connection, request.people, at)
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
            for (label, code), form in zip(request.seats, issued, strict=True)
        ],
        at=at,
        versions=versions,
    )
    written = write_papers(project, connection, number, files)
    return Issued(number, written, tuple(_how_it_came_out(built, issued, entry.record)))


def _with_titles(form: IssuedForm, names: CourseNames) -> IssuedForm:
    """Add the title of each module and the text of each objective, as they are on the day.

    They come after the id of the form was taken, so that a new wording is no new form.
    """
    objectives = {entry["question"]["objective"] for entry in form["questions"]}
    modules = {entry["question"]["module"] for entry in form["questions"]}
    titles = {name: names.module(name) for name in sorted(modules)}
    return {**form, "titles": titles | {name: names.objective(name) for name in sorted(objectives)}}


def _how_it_came_out(
    built: Assembly, issued: Sequence[IssuedForm], plan: Blueprint
) -> Iterator[str]:
    for form, sheet in zip(built.forms, issued, strict=True):
        if form.person:
            yield f"form {form.label}, {sheet['form_id']}: {form.person}"
        for alarm in position_alarms(form):
            yield f"form {form.label}: {alarm.in_words()}"
    yield built.balance.in_words(int(plan.pass_percent), int(plan.minutes))
