"""`guidecoat records`."""

import click

from generator.command_line.records_certificate import certificate
from generator.command_line.records_dates import date_command, due
from generator.command_line.records_file import backup, check, retention
from generator.command_line.records_going_out import erase, export, pack
from generator.command_line.records_issues import again, issues, void
from generator.command_line.records_mending import show, take_out_command
from generator.command_line.records_people import people
from generator.command_line.records_practice import observe, sheet


@click.group()
def records() -> None:
    """Keep the training records: people, practice, dates, certificates.

    Example: guidecoat records due --within 90

    The records lie in records/, readable by their owner only. Commands show codes; names only
    where they are asked for.
    """


_KEPT = (issues, again, void, people, show, observe, sheet, date_command, due, take_out_command)
_GOING_OUT = (certificate, pack, export, erase)
for command in (*_KEPT, *_GOING_OUT, backup, check, retention):
    records.add_command(command)
