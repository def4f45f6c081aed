"""`guidecoat records observe` and `guidecoat records sheet`."""

from datetime import date
from typing import cast

import click

from generator.command_line.terminal import (
    Day,
    accepted,
    as_of,
    now,
    project_here,
    records_here,
    today,
)
from generator.printing import PaperSize
from generator.workflows.checking import readable_bank
from generator.workflows.papers import print_observation_sheets
from generator.workflows.records import Watched, keep_observation, observation_of


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
@as_of
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
    project = project_here()
    bank = accepted(readable_bank(project), project.read_line)
    watched = Watched(person, procedure, steps, observer, day, job, note)
    observation = accepted(observation_of(bank, watched, on or today()))
    with records_here() as (connection, _):
        number = accepted(
            keep_observation(connection, observation, now(), earlier=earlier, reason=reason)
        )
    click.echo(f"observation {number}: {observation.title}: {observation.in_words}")


@click.command()
@click.argument("procedure", required=False)
@click.option("--all", "every", is_flag=True, help="The sheet of every procedure.")
@click.option("--paper", type=click.Choice(["A4", "letter"]), default="A4", help="Paper size.")
@click.option("--large-print", is_flag=True, help="Set the text in 18 pt.")
def sheet(procedure: str | None, every: bool, paper: str, large_print: bool) -> None:
    """Write the observation sheet of a procedure into printed/.

    Example: guidecoat records sheet mix_filler
    """
    project = project_here()
    bank = accepted(readable_bank(project), project.read_line)
    if every == (procedure is not None):
        listed = ", ".join(sorted(bank.procedures))
        raise click.UsageError(f"name one procedure, or give --all; the procedures: {listed}")
    names = sorted(bank.procedures) if procedure is None else [procedure]
    size = cast("PaperSize", paper.lower())
    written = print_observation_sheets(project, bank, names, paper=size, large_print=large_print)
    for path in accepted(written):
        click.echo(path.relative_to(project.root))
