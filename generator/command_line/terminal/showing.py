"""Shows what a workflow gave back: its result goes on, a refusal stops the command."""

import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

import click

from generator.diagnostics import as_text
from generator.workflows import Refused
from generator.workflows.project import Project

if TYPE_CHECKING:
    from generator.workflows.papers import Finished

T = TypeVar("T")


def accepted(done: T | Refused, line_of: Callable[[str, int], str] = lambda path, line: "") -> T:
    """Return what a workflow gave, or show why it gave nothing and stop.

    Stops with exit 2 where something else must be asked for, otherwise with exit 1.

    line_of  reads the line of a file that a problem is about
    """
    if not isinstance(done, Refused):
        return done
    if done.problems:
        click.echo(as_text(done.problems, line_of), err=True)
    if done.misuse:
        raise click.UsageError(done.sentence)
    if not done.problems:
        raise click.ClickException(done.sentence)
    if done.sentence:
        click.echo(done.sentence, err=True)
    sys.exit(1)


def say_finished(finished: "Finished") -> None:
    """Say which issues were stopped halfway and have their papers now."""
    for number in finished.numbers:
        click.echo(f"issue {number} was stopped halfway; its papers are written now", err=True)
    if finished.refused is not None:
        accepted(finished.refused)


def shown_path(project: Project, path: Path) -> str:
    """Return a path as it is seen from the project, or whole where it lies elsewhere."""
    root = project.root.resolve()
    whole = path.resolve()
    return (whole.relative_to(root) if whole.is_relative_to(root) else path).as_posix()
