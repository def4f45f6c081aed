"""`guidecoat records certificate`."""

from datetime import date
from typing import cast

import click

from generator.command_line.terminal import accepted, as_of, now, records_here, today
from generator.printing import PaperSize
from generator.workflows.checking import readable_bank
from generator.workflows.records import Page, certify_training, print_certificate_again


@click.command()
@click.argument("person")
@click.option("--trainer", help="Code of the trainer who signs.")
@click.option("--again", type=click.IntRange(1, 2**31), help="Print this number again.")
@click.option("--paper", type=click.Choice(["A4", "letter"]), default="A4", help="Paper size.")
@click.option("--large-print", is_flag=True, help="Set the text in 18 pt.")
@as_of
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
        raise click.UsageError("name the trainer, or give --again with a number")
    page = Page(cast("PaperSize", paper.lower()), large_print)
    with records_here() as (connection, project):
        if again is not None:
            path = accepted(print_certificate_again(project, connection, again, person, page))
        else:
            bank = accepted(readable_bank(project), project.read_line)
            path = accepted(
                certify_training(
                    project,
                    connection,
                    bank,
                    person,
                    trainer or "",
                    at=now(),
                    day=on or today(),
                    page=page,
                )
            )
    click.echo(path.relative_to(project.root))
