"""`guidecoat records date` and `guidecoat records due`."""

from datetime import date

import click

from generator.command_line.terminal import (
    Day,
    accepted,
    as_of,
    ask_first,
    now,
    records_here,
    today,
)
from generator.records.practice import KIND_WORDS, due_list
from generator.workflows.records import keep_date, plan_date

WITHIN = 60


@click.command("date")
@click.argument("person")
@click.argument("kind", type=click.Choice(tuple(KIND_WORDS)))
@click.option("--done", type=Day(), required=True, help="Day it was done: 2026-03-01.")
@click.option("--due", type=Day(), help="Day it is due again, where somebody set one.")
@click.option("--subject", default="", help="What was signed off, or the paper to sit again.")
@click.option(
    "--instead-of", "earlier", type=click.IntRange(1), help="Number of the date it corrects."
)
@click.option("--reason", default="", help="Why it is corrected; it is kept.")
@click.option("--yes", is_flag=True, help="Do not ask about a day that looks odd.")
@as_of
def date_command(
    person: str,
    kind: str,
    done: date,
    due: date | None,
    subject: str,
    earlier: int | None,
    reason: str,
    yes: bool,
    on: date | None,
) -> None:
    """Record that something was done on a day: the date only, never a finding.

    Example: guidecoat records date "Apprentice 01" fit_test --done 2026-03-01

    Where a rule sets the next day, the earlier of that day and --due counts. A wrong date is
    corrected with --instead-of and its number, which 'guidecoat records show' gives; what it was
    stays in the records with --reason.
    """
    if (earlier is None) != (not reason):
        raise click.UsageError("--instead-of and --reason go together")
    plan = accepted(
        plan_date(person, kind, done=done, due=due, subject=subject, today=on or today())
    )
    with records_here() as (connection, _):
        if plan.asks is not None:
            ask_first(plan.asks, yes)
        kept = keep_date(connection, plan, now(), earlier=earlier, reason=reason)
        words = accepted(kept)
    click.echo(words)


@click.command()
@as_of
@click.option(
    "--within",
    type=click.IntRange(0, 36_600),
    default=WITHIN,
    show_default=True,
    help="Days to look ahead.",
)
def due(on: date | None, within: int) -> None:
    """List what is overdue or falls due: refreshers, fit tests, retests.

    Example: guidecoat records due --within 90

    Each line ends with the rule that sets the day and how far it was checked. Local law may ask
    for more.
    """
    day = on or today()
    with records_here() as (connection, _):
        found = due_list(connection, day, within)
    for entry in found:
        late = "OVERDUE" if entry.is_overdue(day) else "due"
        click.echo("\t".join((entry.day.isoformat(), late, entry.person, entry.what, entry.why)))
    overdue = sum(entry.is_overdue(day) for entry in found)
    click.echo(
        f"{len(found)} on the list, {overdue} overdue, up to {within} days after {day.isoformat()}",
        err=True,
    )
