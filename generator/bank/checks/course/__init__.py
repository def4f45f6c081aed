"""What lessons and their files must hold before they are shown."""

from generator.bank.checks.course import course_pages, lesson_texts, lessons
from generator.bank.checks.course.lessons import shown_figures

FILES = (lessons, lesson_texts, course_pages)

__all__ = ["FILES", "shown_figures"]
