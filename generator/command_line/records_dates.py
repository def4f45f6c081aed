"""`guidecoat records date` and `guidecoat records due`."""

from datetime import date

import click

from generator.command_line.asking import ask_first
from generator.command_line.clock import Day, now, today
from generator.command_line.records_desk import on_a_day, records_here
from generator.records.practice import (
    KIND_WORDS,
    DatedFact,
    add_fact,
    doubts_about,
    due_list,
    replace_fact,
    why_due,
)

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
@on_a_day
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
    if kind == "retest" and (due is None or not subject):
        raise click.UsageError("a retest needs --due and --subject with the name of the paper")
    fact = DatedFact(person, kind, done.isoformat(), due.isoformat() if due else "", subject)
    if (earlier is None) != (not reason):
        raise click.UsageError("--instead-of and --reason go together")
    today_here = on or today()
    with records_here() as (connection, _):
        if doubts := doubts_about(fact, today_here):
            ask_first(doubts, "Keep this date?", yes)
        if earlier is None:
            add_fact(connection, fact, now(), today_here)
        else:
            replace_fact(connection, earlier, fact, reason, now(), today_here)
    day = fact.falls_due
    click.echo(
        f"{fact.in_words}: {fact.done}"
        + (f"; due again on {day.isoformat()}: {why_due(fact, day)}" if day else "")
    )


@click.command()
@on_a_day
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
