"""`guidecoat issue`."""

from pathlib import Path
from typing import cast

import click

from generator.assembly import form_labels
from generator.bank import Bank
from generator.command_line.issue_papers import finish_pending, print_again
from generator.command_line.new_issue import Request, new_issue
from generator.command_line.papers import PaperSettings
from generator.command_line.project import bank_hash, find_project, sound_bank
from generator.command_line.records_desk import records_here
from generator.command_line.rosters import people_of
from generator.command_line.seeds import Seed
from generator.diagnostics import did_you_mean
from generator.printing import PaperSize
from generator.records.issues import issue_of, same_request
from generator.records.people import refuse_erased

MOST_FORMS = 200


@click.command()
@click.argument("blueprint")
@click.option("--forms", type=click.IntRange(1, MOST_FORMS), help="How many forms; 1 if not said.")
@click.option(
    "--roster",
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    help="A table with the column code, and name where wanted: a form for each person.",
)
@click.option("--seed", type=Seed(), help="Any text; the same seed gives the same papers.")
@click.option("--paper", type=click.Choice(["A4", "letter"]), default="A4", help="Paper size.")
@click.option("--large-print", is_flag=True, help="Set the text in 18 pt.")
@click.option("--on-screen", is_flag=True, help="Add a page for each form to answer on a screen.")
def issue(
    blueprint: str,
    forms: int | None,
    roster: Path | None,
    seed: str | None,
    paper: str,
    large_print: bool,
    on_screen: bool,
) -> None:
    """Keep new papers in the records and write them with their keys into printed/.

    Example: guidecoat issue filler_check --roster people.csv --seed spring

    The same plan, seed and people give the papers that were issued before, and no new ones.
    Their answers are marked with guidecoat mark.
    """
    if seed is None:
        raise click.UsageError(
            "say --seed with a word of your own, such as spring: the numbers are drawn from it, "
            "and the same word gives the same papers again"
        )
    if forms and roster:
        raise click.UsageError("give --forms or --roster, not both; a roster has a form a person")
    project = find_project()
    people = people_of(roster) if roster else ()
    bank = sound_bank(project)
    _refuse_unknown(bank, blueprint)
    settings = PaperSettings(cast("PaperSize", paper.lower()), large_print, on_screen)
    labels = form_labels(len(people) or forms or 1)
    request = Request(blueprint, seed, labels, people, settings)
    with records_here() as (connection, _):
        refuse_erased(connection, (person.code for person in people))
        finish_pending(project, connection)
        day = ""
        number = same_request(connection, blueprint, seed, bank_hash(project), request.seats)
        if number is None:
            number, written = new_issue(project, bank, connection, request)
            click.echo(f"issue {number} is in the records", err=True)
        else:
            written = print_again(project, connection, number, settings)
            day = issue_of(connection, number).issued[:10]
    for path in written:
        click.echo(path.relative_to(project.root))
    if day:
        # last, where it is read: nobody notices one line above a hundred names of files
        click.echo(
            f"NO NEW PAPERS: these are the papers of issue {number}, made on {day}, written again. "
            "For new ones take another --seed.",
            err=True,
        )


def _refuse_unknown(bank: Bank, blueprint: str) -> None:
    if blueprint not in bank.blueprints:
        near = did_you_mean(blueprint, bank.blueprints)
        hint = f"; {near}" if near else f". The papers are: {', '.join(sorted(bank.blueprints))}"
        raise click.UsageError(f"no paper is called '{blueprint}'{hint}")
