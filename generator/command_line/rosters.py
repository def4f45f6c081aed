"""Rosters that somebody made elsewhere, read whole or refused whole."""

import sys
from pathlib import Path

import click

from generator.command_line.printable_people import read_printable
from generator.command_line.project import counted
from generator.command_line.table_files import line_of, text_of
from generator.diagnostics import as_text
from generator.records import Person


def people_of(roster: Path) -> tuple[Person, ...]:
    """Give the people of a roster, or show every problem and stop with exit 1."""
    text, problems = text_of(roster)
    people: tuple[Person, ...] = ()
    if text is not None:
        people, problems = read_printable(text, roster.as_posix())
    if problems:
        click.echo(as_text(problems, line_of), err=True)
        click.echo(f"{counted(len(problems), 'error')}; nothing was written", err=True)
        sys.exit(1)
    return people
