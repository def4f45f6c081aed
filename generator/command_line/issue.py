"""`guidecoat issue`."""

import sys
from typing import cast

import click

from generator.assembly import build_forms, form_labels, shortages
from generator.command_line.papers import paper_files
from generator.command_line.project import find_project, sound_bank, stop_with
from generator.command_line.writing import write_files
from generator.diagnostics import did_you_mean
from generator.printing import PaperSize, PrintingRefused

MOST_FORMS = 200


@click.command()
@click.argument("blueprint")
@click.option("--forms", default=1, type=click.IntRange(1, MOST_FORMS), help="How many forms.")
@click.option("--seed", required=True, help="Any text; the same seed gives the same papers.")
@click.option("--paper", type=click.Choice(["A4", "letter"]), default="A4", help="Paper size.")
@click.option("--large-print", is_flag=True, help="Set the text in 18 pt.")
def issue(blueprint: str, forms: int, seed: str, paper: str, large_print: bool) -> None:
    """Write question papers, answer sheets and keys into printed/.

    Example: guidecoat issue filler_check --forms 2 --seed spring
    """
    project = find_project()
    bank = sound_bank(project)
    if blueprint not in bank.blueprints:
        hint = did_you_mean(blueprint, bank.blueprints) or ", ".join(bank.blueprints)
        raise click.UsageError(f"there is no blueprint '{blueprint}'; {hint}")
    entry = bank.blueprints[blueprint]
    short = shortages(entry, bank)
    if short:
        stop_with(project, short)
    size = cast("PaperSize", paper.lower())
    contents: dict[str, bytes] = {}
    built = build_forms(bank, entry, seed, form_labels(forms))
    try:
        with click.progressbar(
            built, label="papers", file=sys.stderr, hidden=not _watched()
        ) as all_forms:
            for form in all_forms:
                contents.update(paper_files(project, form, size, large_print))
    except PrintingRefused as error:
        click.echo(f"the papers could not be set: {error}", err=True)
        sys.exit(1)
    for path in write_files(project.printed, contents):
        click.echo(path.relative_to(project.root))


def _watched() -> bool:
    return sys.stderr.isatty()
