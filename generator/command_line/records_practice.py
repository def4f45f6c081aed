"""`guidecoat records observe` and `guidecoat records sheet`."""

from datetime import date
from typing import cast

import click

from generator.bank import Bank, hazards_met
from generator.bank.models import Procedure
from generator.command_line.clock import Day, now, today
from generator.command_line.project import Project, find_project
from generator.command_line.records_desk import on_a_day, readable_bank, records_here
from generator.command_line.writing import write_files
from generator.diagnostics import did_you_mean
from generator.printing import PaperSize, PrintingRefused, observation_sheet
from generator.records import RecordsRefused
from generator.records.practice import (
    Observation,
    observed_steps,
    replace_observation,
    seen_of,
    sheet_steps,
)
from generator.records.practice import observe as keep_observation


@click.command()
@click.argument("person")
@click.argument("procedure")
@click.argument("steps", nargs=-1, metavar="STEP=yes|no|not_seen...")
@click.option("--observer", required=True, help="Code of the person who watched.")
@click.option("--date", "day", type=Day(), required=True, help="Day of the work: 2026-03-01.")
@click.option("--job", default="", help="Vehicle or panel, and job number.")
@click.option("--note", default="", help="Note and next step.")
@click.option(
    "--instead-of", "earlier", type=click.IntRange(1), help="Number of the one it corrects."
)
@click.option("--reason", default="", help="Why it is corrected; it is kept.")
@on_a_day
def observe(
    person: str,
    procedure: str,
    steps: tuple[str, ...],
    observer: str,
    day: date,
    job: str,
    note: str,
    earlier: int | None,
    reason: str,
    on: date | None,
) -> None:
    """Record what somebody saw a person do, step by step.

    Example: guidecoat records observe A1 mix_filler --observer T1 --date 2026-03-01 key_bed=yes

    The sheet shows the name of each step; a step that is not named was not seen. A wrong entry is
    corrected with --instead-of and its number; what it was stays in the records with --reason.
    """
    if (earlier is None) != (not reason):
        raise click.UsageError("--instead-of and --reason go together")
    if day > (on or today()):
        raise click.UsageError(f"{day.isoformat()} is still to come; give the day of the work")
    found = _procedure(readable_bank(find_project()), procedure)
    sheet_rows = sheet_steps(found)
    try:
        seen = seen_of(sheet_rows, steps)
    except RecordsRefused as refused:
        raise click.UsageError(str(refused)) from refused
    observation = Observation(
        person=person,
        procedure=procedure,
        title=found.title,
        steps=observed_steps(sheet_rows, seen),
        observer=observer,
        observed=day.isoformat(),
        job=job,
        note=note,
    )
    with records_here() as (connection, _):
        if earlier is None:
            number = keep_observation(connection, observation, now())
        else:
            number = replace_observation(connection, earlier, observation, reason, now())
    click.echo(f"observation {number}: {found.title}: {observation.in_words}")


@click.command()
@click.argument("procedure", required=False)
@click.option("--all", "every", is_flag=True, help="The sheet of every procedure.")
@click.option("--paper", type=click.Choice(["A4", "letter"]), default="A4", help="Paper size.")
@click.option("--large-print", is_flag=True, help="Set the text in 18 pt.")
def sheet(procedure: str | None, every: bool, paper: str, large_print: bool) -> None:
    """Write the observation sheet of a procedure into printed/.

    Example: guidecoat records sheet mix_filler
    """
    if every == (procedure is not None):
        listed = ", ".join(sorted(readable_bank(find_project()).procedures))
        raise click.UsageError(f"name one procedure, or say --all; the procedures: {listed}")
    project = find_project()
    bank = readable_bank(project)
    names = sorted(bank.procedures) if procedure is None else [procedure]
    found = {name: _procedure(bank, name) for name in names}
    size = cast("PaperSize", paper.lower())
    sheets = {
        f"sheet-{name}.pdf": _sheet(project, bank, name, record, size, large_print)
        for name, record in found.items()
    }
    for path in write_files(project.printed, sheets):
        click.echo(path.relative_to(project.root))


def _sheet(
    project: Project, bank: Bank, name: str, record: Procedure, size: PaperSize, large: bool
) -> bytes:
    try:
        return observation_sheet(
            name,
            record,
            edition=bank.sheet.edition,
            paper=size,
            fonts=project.fonts,
            hazards=_titles(bank, hazards_met(record)),
            worn=_titles(bank, record.wears),
            large_print=large,
        )
    except PrintingRefused as refused:
        raise click.ClickException(str(refused)) from refused


def _titles(bank: Bank, hazards: tuple[str, ...]) -> list[str]:
    return [bank.hazards[name].record.title for name in hazards if name in bank.hazards]


def _procedure(bank: Bank, name: str) -> Procedure:
    if name not in bank.procedures:
        hint = did_you_mean(name, bank.procedures) or ", ".join(sorted(bank.procedures))
        raise click.UsageError(f"the bank has no procedure '{name}'; {hint}")
    return bank.procedures[name].record
