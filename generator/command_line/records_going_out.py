"""`guidecoat records pack`, `export` and `erase`: what leaves the records."""

import json
import sys
from datetime import date
from pathlib import Path

import click

from generator.command_line.asking import ask_first
from generator.command_line.clock import now, today
from generator.command_line.private_files import write_private, write_private_folder
from generator.command_line.private_targets import new_file, off_the_site
from generator.command_line.records_certificate import set_certificate
from generator.command_line.records_desk import (
    certificate_file,
    export_file,
    on_a_day,
    records_here,
)
from generator.records.certificates import all_certificates
from generator.records.leaving import (
    Erased,
    erase_person,
    export_person,
    pack_tables,
    stake_of_person,
)
from generator.records.people import person_id

_PATH = click.Path(path_type=Path)


@click.command()
@click.argument("folder", type=_PATH)
@click.option("--pdf/--no-pdf", default=True, help="With or without certificates to print.")
@on_a_day
def pack(folder: Path, pdf: bool, on: date | None) -> None:
    """Write what an inspector of painter training asks for into a new folder.

    Example: guidecoat records pack inspection

    Tables open in any spreadsheet; no cell runs as a formula. The folder is readable by its owner
    only; it holds codes and names, so hand it on with care.
    """
    with records_here() as (connection, project):
        off_the_site(project, folder)
        contents = dict(pack_tables(connection, on or today()))
        kept = tuple(all_certificates(connection)) if pdf else ()
        with click.progressbar(
            kept, label="certificates", file=sys.stderr, hidden=not sys.stderr.isatty()
        ) as each:
            for found in each:
                name = certificate_file(project, found.number).name
                try:
                    contents[name] = set_certificate(project, found, "a4")
                except click.ClickException as refused:
                    # one that cannot be set must not keep the others from the inspector
                    click.echo(f"certificate {found.number} is left out: {refused}", err=True)
        write_private_folder(folder, contents)
    click.echo(f"{folder.as_posix()}: {len(contents)} files")


@click.command()
@click.argument("person")
@click.option("--to", "target", type=_PATH, help="A new file; else one in records/exports/.")
def export(person: str, target: Path | None) -> None:
    """Write everything the records hold about a person, for that person.

    Example: guidecoat records export "Apprentice 01"
    """
    with records_here() as (connection, project):
        plain = export_person(connection, person)
        own = export_file(project, person_id(connection, person))
        path = new_file(project, target) if target else own
    text = json.dumps(plain, ensure_ascii=False, indent=1) + "\n"
    write_private(path, text.encode("utf-8"))
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
        number = person_id(connection, person)
        stakes = f"you are about to erase '{person}': {stake_of_person(connection, person)}"
        ask_first(stakes, "Nothing brings it back. Erase?", yes)
        erased = erase_person(connection, person, now())
        files = [certificate_file(project, n) for n in (*erased.certificates, *erased.reprint)]
        for path in (*files, export_file(project, number)):
            path.unlink(missing_ok=True)
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
