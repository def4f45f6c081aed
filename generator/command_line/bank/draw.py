"""`guidecoat draw`."""

import json
import sys
from typing import TYPE_CHECKING

import click

from generator.command_line.terminal import Seed, project_here, sound_part_here
from generator.diagnostics import did_you_mean
from generator.workflows.project import Project

if TYPE_CHECKING:
    from generator.questions import Askable


@click.command()
@click.argument("item")
@click.option("--seed", default="1", type=Seed(), help="The same seed gives the same question.")
@click.option("--format", "output_format", type=click.Choice(["text", "json"]), default="text")
def draw(item: str, seed: str, output_format: str) -> None:
    """Draw one question and show it with its key and working.

    Example: guidecoat draw film_build/dry_from_wet/wet_film_for_target --seed 7
    """
    from generator.command_line.bank.draw_text import question_text
    from generator.issued import issued_question

    question = _asked(project_here(), item).make(seed, ())
    if question is None:
        click.echo(f"'{item}' gives no question for this seed", err=True)
        sys.exit(1)
    issued = issued_question(question)
    click.echo(
        json.dumps(issued, ensure_ascii=False, indent=2)
        if output_format == "json"
        else question_text(issued)
    )


def _asked(project: Project, name: str) -> "Askable":
    """Return what was asked for, from its own file and what that stands on."""
    from generator.bank import part_for_question
    from generator.questions import askable_named

    bank = sound_part_here(project, part_for_question(project.bank, name))
    asked = askable_named(bank, name)
    if asked is None:
        hint = did_you_mean(name, _all_names(project)) or "items are named module/objective/name"
        raise click.UsageError(f"the bank has no item '{name}'; {hint}")
    return asked


def _all_names(project: Project) -> tuple[str, ...]:
    from generator.bank import load_bank
    from generator.questions import askables

    bank, _ = load_bank(project.bank)
    return tuple(askable.name for askable in askables(bank)) if bank else ()
