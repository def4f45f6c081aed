"""Rosters that somebody made elsewhere, read whole or refused whole."""

import csv
from io import StringIO
from pathlib import Path

from generator.records import Person
from generator.workflows.files import text_of
from generator.workflows.project import Project
from generator.workflows.records.printable_people import read_printable
from generator.workflows.refusals import Refused, refused_with


def people_of(project: Project, roster: Path) -> tuple[Person, ...] | Refused:
    """Return the people of a roster, or every problem of the table."""
    text, problems = text_of(roster)
    if text is None:
        return refused_with(problems)
    people, problems = read_printable(text, roster.as_posix(), project.fonts)
    return refused_with(problems) if problems else people


def one_person(project: Project, code: str, name: str, path: str = "--person") -> Person | Refused:
    """Return one person who is in no table, or what is wrong with the code or the name.

    path  what the two came by, for the place of a problem
    """
    written = StringIO()
    csv.writer(written).writerows([("code", "name"), (code, name)])
    people, problems = read_printable(written.getvalue(), path, project.fonts)
    for problem in problems:
        hint = f"; {problem.hint}" if problem.hint else ""
        return Refused(f"{problem.message}{hint}", misuse=True)
    return people[0]
