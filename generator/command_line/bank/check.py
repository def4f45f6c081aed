"""`guidecoat check`."""

import sys
from pathlib import Path

import click

from generator.command_line.terminal import (
    accepted,
    cache_folder,
    project_here,
    python_and_packages,
)
from generator.diagnostics import as_annotations, as_json, as_text, has_errors
from generator.workflows.project import Project
from generator.workflows.verdicts import Found, VerdictCache


@click.command()
@click.option(
    "--format",
    "output_format",
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
@click.option("--no-cache", is_flag=True, help="Judge everything again; keep nothing.")
def check(
    output_format: str, notes: bool, write_schemas: bool, write_giveaways: bool, no_cache: bool
) -> None:
    """Find every problem of bank and course, and count what they hold.

    Example: guidecoat check --format json

    What did not change since the last check is not judged again. The verdicts lie in your cache
    folder and can be deleted at any time.
    """
    project = project_here()
    if write_schemas:
        from generator.workflows.checking import write_record_schemas

        write_record_schemas(project)
    if write_giveaways:
        from generator.workflows.checking import write_giveaway_list

        accepted(write_giveaway_list(project), project.read_line)
    problems, figures = _found(project, None if no_cache else cache_folder())
    shown = [p for p in problems if notes or p.severity != "note" or output_format == "json"]
    if output_format == "json":
        click.echo(as_json(problems, figures))
    elif output_format == "annotations":
        click.echo(as_annotations(shown))
    else:
        if shown:
            click.echo(as_text(shown, project.read_line))
        click.echo(_summary(figures["counts"], problems))
    sys.exit(1 if has_errors(problems) else 0)


def _found(project: Project, folder: Path | None) -> Found:
    """Return what is wrong and what the bank holds, judged anew as far as anything changed."""
    cache = VerdictCache(project, folder, python_and_packages())
    found = cache.found()
    if found is None:
        from generator.bank import Verdicts, bank_figures
        from generator.workflows.checking import whole_project

        verdicts = Verdicts(cache.ground, cache.records)
        bank, problems = whole_project(project, verdicts)
        found = Found(problems, bank_figures(bank) if bank else {"counts": {}, "coverage": {}})
        cache.keep(found, verdicts.used)
    return found


def _summary(counts: dict[str, int], problems: object) -> str:
    assert isinstance(problems, tuple)
    from generator.wording import counted

    kinds = {s: sum(p.severity == s for p in problems) for s in ("error", "warning", "note")}
    held = ", ".join(
        counted(counts.get(f"{word}s", 0), word) for word in ("item", "procedure", "fault", "table")
    )
    found = ", ".join(counted(number, word) for word, number in kinds.items())
    return f"{held}: {found}"
