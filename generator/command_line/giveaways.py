"""Writing the bank's list of questions that give one another away."""

from generator.command_line.project import Project, sound_bank
from generator.command_line.writing import write_files
from generator.questions import askables
from generator.questions.giveaways import FILE, list_text


def write_list(project: Project) -> None:
    """Write the list anew and keep what was cleared; stops where the bank has errors."""
    bank = sound_bank(project)
    path = project.bank / FILE
    old = path.read_text("utf-8") if path.exists() else ""
    write_files(project.bank, {FILE: list_text(bank, askables(bank), old).encode("utf-8")})
