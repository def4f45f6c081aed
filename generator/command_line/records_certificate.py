"""`guidecoat records certificate`."""

from datetime import date
from typing import cast

import click

from generator.command_line.clock import now, today
from generator.command_line.private_files import write_private
from generator.command_line.project import Project
from generator.command_line.records_desk import (
    certificate_file,
    on_a_day,
    readable_bank,
    records_here,
)
from generator.printing import PaperSize, PrintingRefused
from generator.printing import certificate as certificate_pdf
from generator.records import RecordsRefused
from generator.records.certificates import Certificate, certificate_of, certify


@click.command()
@click.argument("person")
@click.option("--trainer", help="Code of the trainer who signs.")
@click.option("--again", type=click.IntRange(1, 2**31), help="Print this number again.")
@click.option("--paper", type=click.Choice(["A4", "letter"]), default="A4", help="Paper size.")
@click.option("--large-print", is_flag=True, help="Set the text in 18 pt.")
@on_a_day
def certificate(
    person: str,
    trainer: str | None,
    again: int | None,
    paper: str,
    large_print: bool,
    on: date | None,
) -> None:
    """Issue a training certificate from what the records show.

    Example: guidecoat records certificate "Apprentice 01" --trainer "Trainer 1"

    It needs a passed paper, an observed procedure and a date of painter training. It lies in
    records/certificates/ under its number; a person signs it.
    """
    if (trainer is None) == (again is None):
        raise click.UsageError("name the trainer, or say --again with a number")
    with records_here() as (connection, project):
        if again is not None:
            found = certificate_of(connection, again)
            if found.person != person:
                raise RecordsRefused(f"certificate {again} is another person's")
        else:
            edition = readable_bank(project).sheet.edition
            found = certify(connection, person, trainer or "", edition, now(), on or today())
        path = certificate_file(project, found.number)
        size = cast("PaperSize", paper.lower())
        write_private(path, set_certificate(project, found, size, large_print))
    click.echo(path.relative_to(project.root))


def set_certificate(
    project: Project, found: Certificate, paper: PaperSize, large_print: bool = False
) -> bytes:
    """Set a certificate, or say in one sentence why it cannot be set."""
    try:
        return certificate_pdf(
            found.number, found.content, paper=paper, fonts=project.fonts, large_print=large_print
        )
    except PrintingRefused as refused:
        raise click.ClickException(str(refused)) from refused
