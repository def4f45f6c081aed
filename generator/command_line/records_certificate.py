"""`guidecoat records certificate`."""

from datetime import date
from typing import cast

import click

from generator.bank import Bank
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
from generator.records.certificates import Certificate, Training, certificate_of, certify
from generator.records.store import writing


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

    It needs the last paper of painter training passed, each hands-on topic watched with every
    starred step done, and a date of painter training; what is missing is named, with the command
    that supplies it. It lies in records/certificates/ under its number; a person signs it.
    """
    if (trainer is None) == (again is None):
        raise click.UsageError("name the trainer, or say --again with a number")
    with records_here() as (connection, project):
        if again is not None:
            found = certificate_of(connection, again)
            if found.person != person:
                raise RecordsRefused(f"certificate {again} is another person's")
        else:
            training = _training(readable_bank(project))
        size = cast("PaperSize", paper.lower())
        # inside one writing, so that a certificate that cannot be set is not kept either
        with writing(connection):
            if again is None:
                found = certify(connection, person, trainer or "", training, now(), on or today())
            data = set_certificate(project, found, size, large_print)
        path = certificate_file(project, found.number)
        write_private(path, data)
    click.echo(path.relative_to(project.root))


def _training(bank: Bank) -> Training:
    plans = (name for name, plan in bank.blueprints.items() if plan.record.certificate)
    return Training(bank.sheet.edition, frozenset(plans))


def set_certificate(
    project: Project, found: Certificate, paper: PaperSize, large_print: bool = False
) -> bytes:
    """Set a certificate, or say in one sentence why it cannot be set."""
    try:
        return certificate_pdf(
            found.number, found.content, paper=paper, fonts=project.fonts, large_print=large_print
        )
    except PrintingRefused as refused:
        code = found.person
        raise click.ClickException(
            f"{refused} Where that is a letter of a name, write the name in Latin, Greek or "
            f'Cyrillic letters: guidecoat records people --person "{code}" --name ... --reason ...'
        ) from refused
