"""`guidecoat records backup`, `check` and `retention`: the file and how long it is kept."""

import sys
from collections.abc import Iterator
from pathlib import Path

import click

from generator.command_line.leftovers import leftovers
from generator.command_line.private_targets import off_the_site
from generator.command_line.project import Project, counted, find_project
from generator.command_line.records_desk import records_folder, records_here
from generator.records.practice import NOTE, PERIODS
from generator.records.store import OTHERS, back_up, integrity_problems


@click.command()
@click.argument("file", type=click.Path(path_type=Path))
def backup(file: Path) -> None:
    """Copy the records into a new file while they are in use.

    Example: guidecoat records backup /media/stick/records-backup.sqlite

    To go back to it, put it in the place of records/training_records.sqlite and delete the files
    beside that with -wal and -shm at the end.
    """
    with records_here() as (connection, project):
        size = back_up(connection, off_the_site(project, file))
    click.echo(f"{file.as_posix()}: {size / 1e6:.1f} MB")


@click.command()
def check() -> None:
    """Check that the records are whole and that nobody else can read them.

    Example: guidecoat records check
    """
    with records_here() as (connection, project):
        problems = [
            *integrity_problems(connection),
            *_open_doors(records_folder(project)),
            *_left_behind(project),
        ]
    for problem in problems:
        click.echo(problem, err=True)
    click.echo("the records are whole" if not problems else counted(len(problems), "problem"))
    sys.exit(1 if problems else 0)


def _left_behind(project: Project) -> Iterator[str]:
    """Name what a command that was stopped left; it may hold keys, or what is about people."""
    folders = (project.root, project.printed, *_below(records_folder(project)))
    for path in (left for folder in folders for left in leftovers(folder)):
        name = path.relative_to(project.root).as_posix()
        yield f"{name} was left by a command that was stopped; delete it once no other one runs"


def _below(folder: Path) -> Iterator[Path]:
    yield folder
    yield from (path for path in sorted(folder.iterdir()) if path.is_dir())


def _open_doors(folder: Path) -> Iterator[str]:
    for path in (folder, *sorted(folder.rglob("*"))):
        if path.stat().st_mode & OTHERS:
            name = path.relative_to(folder.parent).as_posix()
            yield f"{name} can be read by others; take their rights away: chmod go= {name}"


@click.command()
def retention() -> None:
    """Show how long such records are kept, place by place. Nothing is deleted by age.

    Example: guidecoat records retention
    """
    find_project()
    for period in PERIODS:
        click.echo(f"{period.jurisdiction}: {period.record}")
        click.echo(f"    keep: {period.keep}")
        source = f"{period.document}; " if period.document else ""
        click.echo(f"    source: {source}{period.status_words}")
        if not period.here:
            click.echo("    not kept in these records: file it yourself")
    click.echo(NOTE)
