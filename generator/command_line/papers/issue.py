"""`guidecoat issue`."""

from pathlib import Path
from typing import TYPE_CHECKING, cast

import click

from generator.command_line.terminal import (
    Seed,
    accepted,
    now,
    progress,
    project_here,
    records_here,
    say_finished,
    sound_part_here,
)
from generator.workflows.project import known_plan

if TYPE_CHECKING:
    from generator.printing import PaperSize

MOST_FORMS = 200


@click.command()
@click.argument("blueprint")
@click.option("--forms", type=click.IntRange(1, MOST_FORMS), help="Number of forms [default: 1].")
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
            "give --seed with a word of your own, such as spring: the numbers are drawn from it, "
            "and the same word gives the same papers again"
        )
    if forms and roster:
        raise click.UsageError("give --forms or --roster, not both; a roster has a form a person")
    project = project_here()
    plan = accepted(known_plan(project, blueprint))
    # read only now, so that a misspelt name is told at once
    from generator.bank import part_for_plan
    from generator.workflows.files import line_of
    from generator.workflows.papers import (
        PaperSettings,
        finish_pending,
        issue_papers,
        request_papers,
    )
    from generator.workflows.records import people_of

    people = accepted(people_of(project, roster), line_of) if roster else ()
    bank = sound_part_here(project, part_for_plan(project.bank, plan))
    settings = PaperSettings(cast("PaperSize", paper.lower()), large_print, on_screen)
    request = request_papers(plan, seed, people=people, forms=forms or 1, settings=settings)
    with records_here() as (connection, _):
        say_finished(finish_pending(project, connection))
        watched = progress("papers")
        issued = accepted(
            issue_papers(project, bank, connection, request, now(), watched), project.read_line
        )
    for note in issued.notes:
        click.echo(note, err=True)
    if not issued.made_before:
        click.echo(f"issue {issued.number} is in the records", err=True)
    for path in issued.files:
        click.echo(path.relative_to(project.root))
    if issued.made_before:
        # last, where it is read: nobody notices one line above a hundred names of files
        click.echo(
            f"NO NEW PAPERS: these are the papers of issue {issued.number}, made on "
            f"{issued.made_before}, written again. For new ones take another --seed.",
            err=True,
        )
