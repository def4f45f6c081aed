"""The part of the bank that a command asks something of; the rest is not judged."""

import click

from generator.bank import Bank, Part
from generator.command_line.project import Project, counted, stop_with


def sound_part(project: Project, part: Part) -> Bank:
    """Return the bank where the part is sound, or show its errors and stop with exit 1.

    Errors elsewhere are told in one line and stop nobody.
    """
    if part.bank is None or part.errors:
        stop_with(project, part.errors)
    assert part.bank is not None
    if part.elsewhere:
        found = counted(part.elsewhere, "error")
        click.echo(f"{found} elsewhere in the bank; guidecoat check shows all", err=True)
    return part.bank
