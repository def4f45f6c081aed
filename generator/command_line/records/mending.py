"""`guidecoat records show` and `guidecoat records take-out`: what stands, what was a mistake."""

from typing import cast

import click

from generator.command_line.terminal import accepted, ask_first, now, records_here
from generator.records.certificates import certificates_of
from generator.records.people import person_of
from generator.records.practice import KINDS, Kind, entries_of
from generator.records.sittings import results_of
from generator.records.store import Amendment, amendments_of_person
from generator.workflows.records import plan_take_out, put_back_entry, take_out_entry


@click.command()
@click.argument("person")
@click.option("--names", is_flag=True, help="Show the name, and what it was before.")
def show(person: str, names: bool) -> None:
    """Show what the records hold about a person, each date and observation with its number.

    Example: guidecoat records show "Apprentice 01"
    """
    with records_here() as (connection, _):
        row, found = person_of(connection, person)
        click.echo(f"{found.code}, {found.role}{f', {found.name}' if names else ''}")
        for result in results_of(connection, person):
            where = f"issue {result.issue}, form {result.label}, {result.sat[:10]}"
            click.echo(f"paper {result.blueprint}, {where}: {result.in_words}")
        for entry in entries_of(connection, person):
            out = "; taken out, counts no more" if entry.taken_out else ""
            click.echo(f"{entry.kind} {entry.number}: {entry.words}{out}")
        for certificate in certificates_of(connection, person):
            click.echo(f"certificate {certificate.number}, {certificate.issued}")
        for change in amendments_of_person(connection, row):
            click.echo(_change_words(change, names))


def _change_words(change: Amendment, names: bool) -> str:
    shown = names or change.what != "name"
    values = f": {change.before or 'nothing'} -> {change.after}" if shown else ""
    number = "" if change.what in ("name", "role") else f" {change.place}"
    return f"changed {change.at[:10]}, {change.what}{number}{values} ({change.reason})"


@click.command("take-out")
@click.argument("person")
@click.argument("kind", type=click.Choice(KINDS))
@click.argument("number", type=click.IntRange(min=1))
@click.option("--reason", required=True, help="Why; it stays in the records.")
@click.option("--put-back", "back", is_flag=True, help="Let what was taken out count again.")
@click.option("--yes", is_flag=True, help="Do not ask first.")
def take_out_command(
    person: str, kind: str, number: int, reason: str, back: bool, yes: bool
) -> None:
    """Take out a date or an observation that was entered by mistake; it counts no more.

    Example: guidecoat records take-out "Apprentice 01" date 3 --reason "another person's"

    It stays in the records with the reason, and --put-back lets it count again. The numbers are
    in 'guidecoat records show'. To put another in its place, enter that one with --instead-of.
    """
    chosen = cast("Kind", kind)
    with records_here() as (connection, _):
        if back:
            words = accepted(put_back_entry(connection, person, chosen, number, reason, now()))
            click.echo(f"{kind} {number} counts again: {words}")
            return
        ask_first(accepted(plan_take_out(connection, person, chosen, number)), yes)
        words = accepted(take_out_entry(connection, person, chosen, number, reason, now()))
    click.echo(f"{kind} {number} is taken out: {words}")
