"""The project that somebody works in: its folders, its bank."""

from generator.workflows.project.folder import Project, bank_hash, find_project
from generator.workflows.project.loading import read_and_check, readable_bank, sound, sound_bank

__all__ = [
    "Project",
    "bank_hash",
    "find_project",
    "read_and_check",
    "readable_bank",
    "sound",
    "sound_bank",
]
