"""`guidecoat records backup`, `check` and `retention`: the file and how long it is kept."""

import sys
from pathlib import Path

import click

from generator.command_line.terminal import accepted, needs_option, project_here, records_here
from generator.records.practice import NOTE, PERIODS
from generator.wording import counted
from generator.workflows.records import back_up_records, record_problems


@click.command()
@click.option(
    "--output",
    "file",
    type=click.Path(path_type=Path),
    required=True,
    help="A new file to write.",
)
@needs_option("--output")
def backup(file: Path) -> None:
    """Copy the records into a new file while they are in use.

    Example: guidecoat records backup --output /media/stick/records-backup.sqlite

    To go back to it, put it in the place of records/training_records.sqlite and delete the files
    beside that with -wal and -shm at the end.
    """
    with records_here() as (connection, project):
        size = accepted(back_up_records(project, connection, file))
    click.echo(f"{file.as_posix()}: {size / 1e6:.1f} MB")


@click.command()
def check() -> None:
    """Check that the records are intact and that nobody else can read them.

    Example: guidecoat records check
    """
    with records_here() as (connection, project):
        problems = record_problems(project, connection)
    for problem in problems:
        click.echo(problem, err=True)
    click.echo("the records are intact" if not problems else counted(len(problems), "problem"))
    sys.exit(1 if problems else 0)


@click.command()
def retention() -> None:
    """Show how long such records are kept, place by place. Nothing is deleted by age.

    Example: guidecoat records retention
    """
    project_here()
    for period in PERIODS:
        click.echo(f"{period.jurisdiction}: {period.record}")
        click.echo(f"    keep: {period.keep}")
        source = f"{period.document}; " if period.document else ""
        click.echo(f"    source: {source}{period.status_words}")
        if not period.here:
            click.echo("    not kept in these records: file it yourself")
    click.echo(NOTE)
