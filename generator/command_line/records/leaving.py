"""`guidecoat records pack`, `export` and `erase`: what leaves the records."""

from datetime import date
from pathlib import Path

import click

from generator.command_line.terminal import (
    accepted,
    as_of,
    ask_first,
    needs_option,
    now,
    progress,
    records_here,
    renamed,
    today,
)
from generator.records.leaving import Erased
from generator.workflows.records import (
    carry_out_erasure,
    export_records,
    pack_records,
    plan_erasure,
)

_PATH = click.Path(path_type=Path)


@click.command()
@click.option("--output", "folder", type=_PATH, required=True, help="A new folder to write.")
@needs_option("--output")
@click.option("--pdf/--no-pdf", default=True, help="With or without certificates to print.")
@as_of
def pack(folder: Path, pdf: bool, on: date | None) -> None:
    """Write what an inspector of painter training asks for into a new folder.

    Example: guidecoat records pack --output inspection

    Tables open in any spreadsheet; no cell runs as a formula. The folder is readable by its owner
    only; it holds codes and names, so hand it on with care.
    """
    with records_here() as (connection, project):
        watched = progress("certificates")
        packed = accepted(
            pack_records(
                project, connection, folder, on or today(), certificates=pdf, watched=watched
            )
        )
    for sentence in packed.left_out:
        click.echo(sentence, err=True)
    click.echo(f"{folder.as_posix()}: {packed.files} files")


@click.command()
@click.argument("person")
@click.option(
    "--output", "target", type=_PATH, help="A new file; otherwise one in records/exports/."
)
@renamed("--to", "--output")
def export(person: str, target: Path | None) -> None:
    """Write everything the records hold about a person, for that person.

    Example: guidecoat records export "Apprentice 01"
    """
    with records_here() as (connection, project):
        path = accepted(export_records(project, connection, person, target))
    click.echo(path.relative_to(project.root) if target is None else path)


@click.command()
@click.argument("person")
@click.option("--yes", is_flag=True, help="Do not ask first.")
def erase(person: str, yes: bool) -> None:
    """Take a person out of the records for good.

    Example: guidecoat records erase "Apprentice 01"

    It says first what goes. Observations, dates and certificates go; marks stay without the
    person, for statistics; of the code a fingerprint stays, so that no old roster brings it back.
    Look at 'guidecoat records retention' first: a rule may ask you to keep them.
    """
    with records_here() as (connection, project):
        ask_first(accepted(plan_erasure(connection, person)), yes)
        erased = accepted(carry_out_erasure(project, connection, person, now()))
    _say_what_is_left(erased)


def _say_what_is_left(erased: Erased) -> None:
    click.echo("erased from the records")
    if erased.reprint:
        numbers = ", ".join(map(str, erased.reprint))
        click.echo(f"certificates of others no longer name the person; print again: {numbers}")
    if not erased.pages_clear:
        click.echo("another program has the records open; old pages go when it ends", err=True)
    click.echo(
        "by hand: backups, packs, papers and reports (printed/issue-*/) that were made before "
        "still name the person"
    )
