"""Rosters that somebody made elsewhere, read whole or refused whole."""

import csv
import sys
from io import StringIO
from pathlib import Path

import click

from generator.command_line.printable_people import read_printable
from generator.command_line.project import counted
from generator.command_line.table_files import line_of, text_of
from generator.diagnostics import as_text
from generator.records import Person


def people_of(roster: Path) -> tuple[Person, ...]:
    """Return the people of a roster, or show every problem and stop with exit 1."""
    text, problems = text_of(roster)
    people: tuple[Person, ...] = ()
    if text is not None:
        people, problems = read_printable(text, roster.as_posix())
    if problems:
        click.echo(as_text(problems, line_of), err=True)
        click.echo(f"{counted(len(problems), 'error')}; nothing was written", err=True)
        sys.exit(1)
    return people


def one_person(code: str, name: str) -> Person:
    """Return one person who stands in no table, or say what is wrong and stop with exit 2."""
    written = StringIO()
    csv.writer(written).writerows([("code", "name"), (code, name)])
    people, problems = read_printable(written.getvalue(), "--person")
    for problem in problems:
        hint = f"; {problem.hint}" if problem.hint else ""
        raise click.UsageError(f"{problem.message}{hint}")
    return people[0]
