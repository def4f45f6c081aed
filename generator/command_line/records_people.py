"""`guidecoat records people`."""

from dataclasses import replace
from pathlib import Path

import click

from generator.command_line.clock import now
from generator.command_line.records_desk import records_here
from generator.command_line.rosters import people_of
from generator.records.people import ROLES, add_people, all_people


@click.command()
@click.option(
    "--add",
    "roster",
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    help="A table with the column code, and name where wanted.",
)
@click.option("--role", type=click.Choice(ROLES), default="learner", help="Role of those added.")
@click.option("--list", "listed", is_flag=True, help="List codes and roles.")
@click.option("--names", is_flag=True, help="List names as well.")
def people(roster: Path | None, role: str, listed: bool, names: bool) -> None:
    """Add people from a table, or list who is in the records.

    Example: guidecoat records people --add roster.csv

    Observers, and the trainer on a certificate, are added with --role trainer or lead. People who
    are there already stay as they are.
    """
    if roster is None and not listed and not names:
        raise click.UsageError("say --add with a table, or --list")
    added = people_of(roster) if roster else ()
    with records_here() as (connection, _):
        if added:
            new = add_people(connection, (replace(p, role=role) for p in added), now())
            click.echo(f"{new} added, {len(added) - new} there already")
        if listed or names:
            for person in all_people(connection):
                cells = (person.code, person.role, *((person.name,) if names else ()))
                click.echo("\t".join(cells))
