"""`guidecoat records`."""

import click

from generator.command_line.records.certificate import certificate
from generator.command_line.records.dates import date_command, due
from generator.command_line.records.issues import again, issues, void
from generator.command_line.records.keeping import backup, check, retention
from generator.command_line.records.leaving import erase, export, pack
from generator.command_line.records.mending import show, take_out_command
from generator.command_line.records.people import people
from generator.command_line.records.practice import observe, sheet


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
