"""Questions on the site: their HTML, data and pages."""

from generator.website.questions.check_pages import check_index, look_back_page, today_page
from generator.website.questions.marking_data import asks_unit
from generator.website.questions.methods import relations_of_items
from generator.website.questions.question_html import question_html
from generator.website.questions.question_pages import question_pages
from generator.website.questions.question_parts import part_files
from generator.website.questions.written_questions import Written, written_course

__all__ = [
    "Written",
    "asks_unit",
    "check_index",
    "look_back_page",
    "part_files",
    "question_html",
    "question_pages",
    "relations_of_items",
    "today_page",
    "written_course",
]
