"""`guidecoat mark`."""

import sys
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import click

from generator.command_line.terminal import Day, accepted, issued_records, now, renamed
from generator.diagnostics import as_text

if TYPE_CHECKING:
    from generator.records import Records
    from generator.workflows.answers import FilesRead


@click.command()
@click.argument("responses", nargs=-1, type=click.Path(exists=True, dir_okay=False, path_type=Path))
@click.option("--form-id", help="Enter one paper by hand; give the id printed on it.")
@renamed("--form", "--form-id")
@click.option("--person", default="", help="Whose paper it is, where the form names nobody.")
@click.option("--marker", default="", help="Code of who marks.")
@click.option("--sat", type=Day(), help="Day of the sitting, where it is not today: 2026-03-01.")
@click.option("--format", "output_format", type=click.Choice(["text", "json"]), default="text")
def mark(
    responses: tuple[Path, ...],
    form_id: str | None,
    person: str,
    marker: str,
    sat: date | None,
    output_format: str,
) -> None:
    """Mark answers and keep them with their marks.

    Example: guidecoat mark printed/issue-1/answers.csv --marker "Trainer 1"

    RESPONSES are tables as the issue wrote them, filled in (.csv or .xlsx), and files that the page
    saved (.json). One cell is one answer:

    \b
      choice                 B        (A+C where the paper has two marked)
      several options        A C
      number                 12.5     or 12,5 µm or 1 1/2
      order                  C A B D
      match                  1C 2A 3B
      written, by points     2 0 1    (from the marker)
      nothing answered       empty    (a row without answers is not marked;
                                       write `blank` for an empty paper)
      cannot be read         ?        (or `blank`, once a person has looked)

    A table that does not match what was issued is refused as a whole, with the place of each
    problem. Written answers may be marked later: a row with nothing but their marks completes the
    answers that are kept. With --form-id the answers are asked for one by one. Reports and
    certificates show the day of marking, or the day of --sat.
    """
    if bool(responses) == bool(form_id):
        raise click.UsageError("name files with answers, or one paper with --form-id")
    from generator.command_line.marking.mark_entry import entered_by_hand
    from generator.command_line.marking.mark_words import outcome_json, outcome_text
    from generator.workflows.answers import is_page_file, mark_papers, seats_of

    alone = len(responses) == 1 and is_page_file(responses[0])
    if person and not form_id and not alone:
        raise click.UsageError("--person goes with --form-id or one .json; a table has its column")
    with issued_records() as connection:
        empty: tuple[str, ...] = ()
        if form_id:
            answers = entered_by_hand(connection, form_id, person)
            done = mark_papers(connection, answers, at=now(), marker=marker, sat=sat)
        else:
            read = _from_files(connection, responses, person)
            empty = tuple(read.empty)
            done = mark_papers(
                connection, read.answers, at=now(), marker=marker, sat=sat, loaded=read.forms
            )
        outcome = accepted(done)
        seats = seats_of(connection, empty)
    as_json = output_format == "json"
    click.echo(outcome_json(outcome, empty) if as_json else outcome_text(outcome, seats))


def _from_files(connection: "Records", files: tuple[Path, ...], person: str) -> "FilesRead":
    from generator.wording import counted
    from generator.workflows.answers import read_files, source_line

    read = read_files(connection, files, person)
    if read.problems:
        click.echo(as_text(read.problems, source_line), err=True)
    if not read.answers:
        errors = sum(problem.severity == "error" for problem in read.problems)
        click.echo(f"{counted(errors, 'error')}; nothing was marked", err=True)
        sys.exit(1)
    return read
