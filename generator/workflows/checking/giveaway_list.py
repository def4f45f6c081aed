"""Writing the bank's list of questions that give one another away."""

from pathlib import Path

from generator.questions import askables
from generator.questions.giveaways import FILE, list_text
from generator.workflows.checking.loading import sound_bank
from generator.workflows.project import Project
from generator.workflows.refusals import Refused


def write_giveaway_list(project: Project) -> Path | Refused:
    """Write the list again and return its path; what was cleared stays in it."""
    from generator.workflows.files import write_files

    bank = sound_bank(project)
    if isinstance(bank, Refused):
        return bank
    path = project.bank / FILE
    old = path.read_text("utf-8") if path.exists() else ""
    write_files(project.bank, {FILE: list_text(bank, askables(bank), old).encode("utf-8")})
    return path
