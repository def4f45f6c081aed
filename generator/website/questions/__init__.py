"""Questions on the site: their HTML, data and pages."""

from generator.website.questions.check_pages import look_back_page, today_page
from generator.website.questions.methods import relations_of_items
from generator.website.questions.question_html import KIND_WORDS, asks_unit, question_html
from generator.website.questions.question_pages import (
    objective_places,
    question_pages,
    written_questions,
)
from generator.website.questions.question_parts import part_files

__all__ = [
    "KIND_WORDS",
    "asks_unit",
    "look_back_page",
    "objective_places",
    "part_files",
    "question_html",
    "question_pages",
    "relations_of_items",
    "today_page",
    "written_questions",
]
