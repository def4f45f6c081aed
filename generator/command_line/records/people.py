"""`guidecoat records people`."""

from collections.abc import Iterable
from dataclasses import replace
from pathlib import Path

import click

from generator.command_line.terminal import accepted, now, project_here, records_here, renamed
from generator.records import Person, Records
from generator.records.people import ROLES, all_people
from generator.workflows.files import line_of
from generator.workflows.records import add_to_records, correct_person, one_person, people_of


@click.command()
@click.option(
    "--roster",
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    help="A table with the column code, and name where wanted.",
)
@renamed("--add", "--roster")
@click.option("--person", "code", help="One person to add, or to correct with --reason.")
@click.option("--name", help="Name of that person.")
@click.option("--role", type=click.Choice(ROLES), help="Role of those added [default: learner].")
@click.option("--reason", help="Why a name or role that is there is corrected; it is kept.")
@click.option("--list", "listed", is_flag=True, help="List codes and roles.")
@click.option("--names", is_flag=True, help="List names as well.")
def people(
    roster: Path | None,
    code: str | None,
    name: str | None,
    role: str | None,
    reason: str | None,
    listed: bool,
    names: bool,
) -> None:
    """Add people from a table or one by one, correct a name or a role, or list who is there.

    Example: guidecoat records people --roster roster.csv

    One person without a table: --person "Apprentice 04" --name "..." and --role where it is not a
    learner. Observers, and the trainer on a certificate, have the role trainer or lead. People who
    are there already stay as they are, unless you correct one: --person, what is right, --reason.
    """
    if code is None and (name is not None or reason is not None):
        raise click.UsageError("--name and --reason are about one person: give --person as well")
    if roster is None and code is None and not listed and not names:
        raise click.UsageError("give --roster with a table, --person with a code, or --list")
    if roster is not None and code is not None:
        raise click.UsageError("give --roster for a table or --person for one person, not both")
    added: tuple[Person, ...] = ()
    if roster is not None:
        added = accepted(people_of(project_here(), roster), line_of)
    if code is not None and (reason is None or name):
        # a corrected name is looked at in the same way as a new one
        person = accepted(one_person(project_here(), code, name or ""))
        added = () if reason is not None else (person,)
    with records_here() as (connection, _):
        if code is not None and reason is not None:
            accepted(correct_person(connection, code, name, role, reason, now()))
            click.echo(f"'{code}' is corrected; what it was stays in the records")
        elif added:
            _add(connection, [replace(person, role=role or "learner") for person in added])
        if listed or names:
            for person in all_people(connection):
                cells = (person.code, person.role, *((person.name,) if names else ()))
                click.echo("\t".join(cells))


def _add(connection: Records, people: Iterable[Person]) -> None:
    added = accepted(add_to_records(connection, people, now()))
    click.echo(f"{added.new} added, {added.known} already there")
    for code in added.differing:
        click.echo(
            f"'{code}' has another name or role in the records and keeps it; to "
            f'correct it: guidecoat records people --person "{code}" --name ... '
            "--role ... --reason ...",
            err=True,
        )
