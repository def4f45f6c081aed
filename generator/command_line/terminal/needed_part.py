"""The part of the bank that a command asks something of; the rest is not judged."""

from typing import TYPE_CHECKING

import click

from generator.command_line.terminal.showing import accepted
from generator.workflows.project import Project

if TYPE_CHECKING:
    from generator.bank import Bank, Part


def sound_part_here(project: Project, part: "Part") -> "Bank":
    """Return the bank where the part is sound, or show its errors and stop with exit 1.

    Errors elsewhere are told in one line and stop nobody.
    """
    from generator.wording import counted
    from generator.workflows.checking import sound_part

    bank = accepted(sound_part(part), project.read_line)
    if part.elsewhere:
        found = counted(part.elsewhere, "error")
        click.echo(f"{found} elsewhere in the bank; guidecoat check shows all", err=True)
    return bank
