"""The project that somebody works in: its folder, and where its parts lie."""

from generator.workflows.project.folder import Project, bank_hash, find_project
from generator.workflows.project.plans import known_plan

__all__ = ["Project", "bank_hash", "find_project", "known_plan"]
