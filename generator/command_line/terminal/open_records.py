"""The records of the course project that a command works in."""

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

import click

from generator.command_line.terminal.project_here import project_here
from generator.command_line.terminal.showing import accepted
from generator.workflows.project import Project

if TYPE_CHECKING:
    from generator.records import Records


@contextmanager
def records_here() -> "Iterator[tuple[Records, Project]]":
    """Open the records of the project; what they refuse is one sentence and exit 1."""
    from generator.records import RecordsRefused, open_records

    project = project_here()
    try:
        with open_records(project.records) as connection:
            yield connection, project
    except RecordsRefused as refused:
        raise click.ClickException(str(refused)) from refused


@contextmanager
def issued_records() -> "Iterator[Records]":
    """Open the records that hold issued papers; none are made where there are none."""
    from generator.workflows.answers import refuse_without_issues

    refused = refuse_without_issues(project_here())
    if refused is not None:
        accepted(refused)
    with records_here() as (connection, _):
        yield connection
