"""`guidecoat report`."""

import sys
from collections.abc import Iterable, Sequence
from datetime import date
from pathlib import Path

import click

from generator.command_line.terminal.clock import today
from generator.workflows.files.private_files import write_private_files
from generator.workflows.files.private_targets import off_the_site
from generator.workflows.project.loading import Project
from generator.command_line.terminal.open_records import on_a_day, readable_bank, records_here
from generator.workflows.reporting.report_files import Document, Wanted, report_files

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
@on_a_day
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
    wanted = Wanted(person, label, of_class, profiles, large_print)
    with records_here() as (connection, project):
        folder = (output or project.issue_folder(number) / "reports").resolve()
        off_the_site(project, output or folder)
        bank = readable_bank(project)
        day = on or today()
        files = report_files(
            project, connection, bank, number, wanted, folder=folder, day=day, watched=_watched
        )
        written = write_private_files(folder, files)
    for path in written:
        click.echo(_shown(project, path))


def _watched(documents: Sequence[Document]) -> Iterable[Document]:
    quiet = len(documents) < FEWEST_TO_WATCH or not sys.stderr.isatty()
    with click.progressbar(documents, label="reports", file=sys.stderr, hidden=quiet) as bar:
        yield from bar


def _shown(project: Project, path: Path) -> str:
    root = project.root.resolve()
    return (path.relative_to(root) if path.is_relative_to(root) else path).as_posix()
