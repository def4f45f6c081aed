"""The course project that a command works in."""

from pathlib import Path

import click

from generator.workflows.project import Project, find_project


def project_here() -> Project:
    """Return the project at or above the working folder; stop with exit 2 where there is none."""
    project = find_project(Path.cwd())
    if project is None:
        raise click.UsageError(
            "no course project here: go to the folder that holds question_bank/ and mkdocs.yml"
        )
    return project
