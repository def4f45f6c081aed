"""Building the course that readers open."""

from generator.workflows.building.course import Built, build_course

__all__ = ["Built", "build_course"]
