"""The records of the course project that a command works in."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any, TypeVar

import click

from generator.bank import Bank, load_bank
from generator.command_line.clock import Day
from generator.command_line.project import Project, find_project, stop_with
from generator.records import Records, RecordsRefused, open_records
from generator.records.store import FILE_NAME

F = TypeVar("F", bound=Callable[..., Any])


def records_folder(project: Project) -> Path:
    """Return the folder of the training records."""
    return project.root / "records"


@contextmanager
def records_here() -> Iterator[tuple[Records, Project]]:
    """Open the records of the project; what they refuse is one sentence and exit 1."""
    project = find_project()
    try:
        with open_records(records_folder(project)) as connection:
            yield connection, project
    except RecordsRefused as refused:
        raise click.ClickException(str(refused)) from refused


@contextmanager
def issued_records() -> Iterator[Records]:
    """Open the records in which papers stand already; none are made where there are none."""
    if not (records_folder(find_project()) / FILE_NAME).exists():
        raise click.ClickException(
            "there are no records here yet; `guidecoat issue` keeps each paper that it writes"
        )
    with records_here() as (connection, _):
        yield connection


def readable_bank(project: Project) -> Bank:
    """Return the bank as far as it can be read, without its rules; stop where it cannot be read."""
    bank, problems = load_bank(project.bank, project.course)
    if bank is None:
        stop_with(project, problems)
    assert bank is not None
    return bank


def on_a_day(command: F) -> F:
    """Add the option that counts from another day than today."""
    return click.option("--on", type=Day(), help="Count from this day instead of today.")(command)


def certificate_file(project: Project, number: int) -> Path:
    """Return where the certificate with a number is printed; the name holds no person."""
    return records_folder(project) / "certificates" / f"certificate-{number}.pdf"


def export_file(project: Project, row: int) -> Path:
    """Return where the export of the person in a row lies; the name holds no person."""
    return records_folder(project) / "exports" / f"person-{row}.json"
