"""`guidecoat report`."""

from datetime import date
from pathlib import Path

import click

from generator.command_line.terminal import (
    accepted,
    as_of,
    progress,
    records_here,
    shown_path,
    today,
)

# SQLite holds no larger row number
MOST = 2**31
# one or two are there at once
FEWEST_TO_WATCH = 3


@click.command()
@click.argument("number", type=click.IntRange(1, MOST), metavar="ISSUE")
@click.option("--person", help="Only the papers of the person with this code.")
@click.option("--form", "label", help="Only the papers of the form with this label.")
@click.option("--class", "of_class", is_flag=True, help="The report for the whole class.")
@click.option("--profile", "profiles", is_flag=True, help="Profiles by task, for new hires.")
@click.option("--output", type=click.Path(path_type=Path), help="Another folder to write into.")
@click.option("--large-print", is_flag=True, help="Set the text in 18 pt.")
@as_of
def report(
    number: int,
    person: str | None,
    label: str | None,
    of_class: bool,
    profiles: bool,
    output: Path | None,
    large_print: bool,
    on: date | None,
) -> None:
    """Write reports on an issue that was marked, each as PDF and as a page.

    Example: guidecoat report 3 --person "Apprentice 01"

    Without an option: a page for each person, and one for the class. They lie in
    printed/issue-3/reports/, readable by their owner only; file names hold the form's label and
    never a person. --profile shows, task by task, what was right on paper, what needs watching and
    which sheets and dates are missing in the records.
    """
    if person is not None and label is not None:
        raise click.UsageError("give --person or --form, not both")
    if of_class and (person is not None or label is not None):
        raise click.UsageError("a class report is about everybody: leave --person and --form out")
    from generator.workflows.answers import Wanted, write_reports
    from generator.workflows.checking import readable_bank

    wanted = Wanted(person, label, of_class, profiles, large_print)
    with records_here() as (connection, project):
        bank = accepted(readable_bank(project), project.read_line)
        written = accepted(
            write_reports(
                project,
                connection,
                bank,
                number,
                wanted,
                day=on or today(),
                output=output,
                watched=progress("reports", FEWEST_TO_WATCH),
            )
        )
    for path in written:
        click.echo(shown_path(project, path))
