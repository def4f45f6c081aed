"""Questions on the site: their HTML, data and pages."""

from generator.website.questions.check_pages import check_index, look_back_page, today_page
from generator.website.questions.methods import relations_of_items
from generator.website.questions.packing import PAGE_BYTES, PART_BYTES, packed
from generator.website.questions.question_html import KIND_WORDS, asks_unit, question_html
from generator.website.questions.question_pages import question_pages
from generator.website.questions.question_parts import part_files

__all__ = [
    "KIND_WORDS",
    "PAGE_BYTES",
    "PART_BYTES",
    "asks_unit",
    "check_index",
    "look_back_page",
    "packed",
    "part_files",
    "question_html",
    "question_pages",
    "relations_of_items",
    "today_page",
]
