"""Every page of the course, in reading order."""

from pathlib import Path
from typing import NamedTuple

from generator.diagnostics import Problem, sorted_problems
from generator.website.course import Course
from generator.website.desk import Desk
from generator.website.draft import BuiltPage
from generator.website.front_pages import home_page, lessons_page, progress_page
from generator.website.lesson_pages import lesson_page
from generator.website.question_pages import question_page
from generator.website.reference_pages import (
    card_page,
    cautions_page,
    glossary_page,
    relations_page,
    shelves,
    sources_page,
)


class Site(NamedTuple):
    """All pages, and what the author has to mend before they may be published."""

    pages: tuple[BuiltPage, ...]
    problems: tuple[Problem, ...]


def build_site(course: Course, theme: Path) -> Site:
    """Build every page from plain data; the same course gives the same pages."""
    desk = Desk(course, theme)
    taught, cautions = _module_pages(desk)
    pages = (
        home_page(desk),
        lessons_page(desk),
        *(lesson_page(name, desk)[0] for name in _pages_besides(course)),
        *with_neighbours(taught),
        progress_page(desk),
        cautions_page(desk, cautions),
        glossary_page(desk),
        *(card_page(shelf, desk) for shelf in shelves(course)),
        relations_page(desk),
        sources_page(desk),
    )
    return Site(pages, sorted_problems(desk.problems))


def with_neighbours(pages: list[BuiltPage]) -> list[BuiltPage]:
    """Give each page the one before and the one after it."""
    ends = [None, *((page.path, page.title) for page in pages), None]
    return [
        page._replace(before=ends[place], after=ends[place + 2]) for place, page in enumerate(pages)
    ]


def _module_pages(desk: Desk) -> tuple[list[BuiltPage], dict[str, tuple[str, ...]]]:
    pages: list[BuiltPage] = []
    cautions: dict[str, tuple[str, ...]] = {}
    for module in desk.course.modules:
        if module.module in desk.course.lessons:
            page, cautions[module.module] = lesson_page(module.module, desk)
            pages.append(page)
        if desk.course.questions.get(module.module):
            pages.append(question_page(module, desk))
    return pages, cautions


def _pages_besides(course: Course) -> list[str]:
    modules = {module.module for module in course.modules}
    return [name for name in course.lessons if name not in modules and name != "index"]
