"""`guidecoat issue`."""

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import cast

import click

from generator.assembly import (
    Assembly,
    CannotAssemble,
    assemble,
    form_labels,
    position_alarms,
    shortages,
)
from generator.bank import Bank, Entry
from generator.bank.records import Blueprint
from generator.command_line.papers import paper_files
from generator.command_line.project import (
    Project,
    counted,
    find_project,
    sound_bank,
    stop_with,
)
from generator.command_line.table_files import line_of, text_of
from generator.command_line.writing import write_files
from generator.diagnostics import as_text, did_you_mean
from generator.printing import PaperSize, PrintingRefused
from generator.questions import askables
from generator.records import Person, read_roster

MOST_FORMS = 200


@click.command()
@click.argument("blueprint")
@click.option("--forms", type=click.IntRange(1, MOST_FORMS), help="How many forms; 1 if not said.")
@click.option(
    "--roster",
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    help="A table with the column code, and name where wanted: a form for each person.",
)
@click.option("--seed", required=True, help="Any text; the same seed gives the same papers.")
@click.option("--paper", type=click.Choice(["A4", "letter"]), default="A4", help="Paper size.")
@click.option("--large-print", is_flag=True, help="Set the text in 18 pt.")
def issue(
    blueprint: str,
    forms: int | None,
    roster: Path | None,
    seed: str,
    paper: str,
    large_print: bool,
) -> None:
    """Write question papers, answer sheets and keys into printed/.

    Example: guidecoat issue filler_check --roster people.csv --seed spring
    """
    if forms and roster:
        raise click.UsageError("give --forms or --roster, not both; a roster has a form a person")
    project = find_project()
    people = _people(roster) if roster else ()
    bank = sound_bank(project)
    if blueprint not in bank.blueprints:
        hint = did_you_mean(blueprint, bank.blueprints) or ", ".join(bank.blueprints)
        raise click.UsageError(f"there is no blueprint '{blueprint}'; {hint}")
    size = cast("PaperSize", paper.lower())
    contents: dict[str, bytes] = {}
    built = _assembled(project, bank, bank.blueprints[blueprint], seed, forms or 1, people)
    try:
        with click.progressbar(
            built.forms, label="papers", file=sys.stderr, hidden=not _watched()
        ) as all_forms:
            for form in all_forms:
                contents.update(paper_files(project, form, size, large_print))
    except PrintingRefused as error:
        click.echo(f"the papers could not be set: {error}", err=True)
        sys.exit(1)
    for path in write_files(project.printed, contents):
        click.echo(path.relative_to(project.root))
    _say_how_it_came_out(built)


def _people(roster: Path) -> tuple[Person, ...]:
    """Give the people of a roster, or show every problem and stop with exit 1."""
    text, problems = text_of(roster)
    people: tuple[Person, ...] = ()
    if text is not None:
        people, problems = read_roster(text, roster.as_posix())
    if problems:
        click.echo(as_text(problems, line_of), err=True)
        click.echo(f"{counted(len(problems), 'error')}; nothing was written", err=True)
        sys.exit(1)
    return people


def _assembled(
    project: Project,
    bank: Bank,
    entry: Entry[Blueprint],
    seed: str,
    forms: int,
    people: Sequence[Person],
) -> Assembly:
    known = askables(bank)
    short = shortages(entry, bank, known)
    if short:
        stop_with(project, short)
    codes = [person.code for person in people]
    labels = form_labels(len(codes) or forms)
    try:
        return assemble(bank, entry, seed, labels, codes, known=known)
    except CannotAssemble as error:
        click.echo(f"these papers cannot be made: {error}; nothing was written", err=True)
        sys.exit(1)


def _say_how_it_came_out(built: Assembly) -> None:
    for form in built.forms:
        if form.person:
            click.echo(f"form {form.label}: {form.person}", err=True)
        for alarm in position_alarms(form):
            click.echo(f"form {form.label}: {alarm.in_words()}", err=True)
    click.echo(built.balance.in_words(), err=True)


def _watched() -> bool:
    return sys.stderr.isatty()
