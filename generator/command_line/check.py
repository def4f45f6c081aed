"""`guidecoat check`."""

import sys

import click

from generator.bank import bank_figures, record_schemas
from generator.command_line.giveaways import write_list
from generator.command_line.project import counted, find_project
from generator.command_line.whole_project import whole_project
from generator.command_line.writing import write_files
from generator.diagnostics import as_annotations, as_json, as_text, has_errors


@click.command()
@click.option(
    "--format",
    "form",
    type=click.Choice(["text", "json", "annotations"]),
    default="text",
    help="How to write the problems.",
)
@click.option("--notes", is_flag=True, help="Show notes as well as errors and warnings.")
@click.option("--write-schemas", is_flag=True, help="Also write the editors' record schemas.")
@click.option(
    "--write-giveaways",
    is_flag=True,
    help="Also write the list of questions that give one another away.",
)
def check(form: str, notes: bool, write_schemas: bool, write_giveaways: bool) -> None:
    """Find every problem of bank and course, and count what they hold.

    Example: guidecoat check --format json
    """
    project = find_project()
    if write_schemas:
        schemas = {name: text.encode() for name, text in record_schemas().items()}
        write_files(project.bank / "schemas", schemas)
    if write_giveaways:
        write_list(project)
    bank, problems = whole_project(project)
    figures = bank_figures(bank) if bank else {"counts": {}, "coverage": {}}
    shown = [p for p in problems if notes or p.severity != "note" or form == "json"]
    if form == "json":
        click.echo(as_json(problems, figures))
    elif form == "annotations":
        click.echo(as_annotations(shown))
    else:
        if shown:
            click.echo(as_text(shown, project.read_line))
        click.echo(_summary(figures["counts"], problems))
    sys.exit(1 if has_errors(problems) else 0)


def _summary(counts: dict[str, object], problems: object) -> str:
    assert isinstance(problems, tuple)
    kinds = {s: sum(p.severity == s for p in problems) for s in ("error", "warning", "note")}
    held = ", ".join(
        counted(counts.get(f"{word}s", 0), word) for word in ("item", "procedure", "fault", "table")
    )
    found = ", ".join(counted(number, word) for word, number in kinds.items())
    return f"{held}: {found}"
