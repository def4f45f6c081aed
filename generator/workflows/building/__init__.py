"""Building the course that readers open."""

from generator.workflows.building.course import build_course

__all__ = ["build_course"]
