"""Every page of the course, in reading order."""

from pathlib import Path
from typing import NamedTuple

from generator.diagnostics import Problem, sorted_problems
from generator.website.context import BuiltPage, Course, SiteContext, SiteFile, SiteMemory, bundles
from generator.website.pages.front_pages import home_page, lessons_page, progress_page
from generator.website.pages.lesson_pages import lesson_page
from generator.website.pages.reference_pages import (
    card_page,
    cautions_page,
    glossary_page,
    relations_page,
    shelves,
    sources_page,
)
from generator.website.pages.search_pages import search_list, search_page
from generator.website.pages.units_script import patterns_script, units_script
from generator.website.questions import (
    Written,
    check_index,
    look_back_page,
    part_files,
    question_pages,
    today_page,
    written_course,
)


class Site(NamedTuple):
    """All pages, what they load, and what the author has to mend before they may be published."""

    pages: tuple[BuiltPage, ...]
    problems: tuple[Problem, ...]
    files: tuple[SiteFile, ...] = ()


def build_site(course: Course, theme: Path, memory: SiteMemory | None = None) -> Site:
    """Build every page from plain data; the same course gives the same pages.

    memory  texts written by an earlier build of the same preview
    """
    desk = SiteContext(course, theme, memory)
    desk.memory.begin(course)
    written = written_course(desk)
    taught, cautions, parts = _modules(desk, written)
    pages = (
        home_page(desk),
        today_page(desk),
        look_back_page(desk),
        lessons_page(desk),
        *(lesson_page(name, desk)[0] for name in _pages_besides(course)),
        *with_neighbours(taught),
        progress_page(desk, written),
        *desk.memory.page("reference", cautions, lambda: _reference(desk, cautions)),
        search_page(desk),
    )
    loaded = bundles(theme, units_script() + patterns_script())
    files = (*loaded, check_index(desk, written), *parts, search_list(pages, desk))
    if desk.problems:
        desk.memory.forget()
    return Site(pages, sorted_problems(desk.problems), files)


def _reference(desk: SiteContext, cautions: dict[str, tuple[str, ...]]) -> tuple[BuiltPage, ...]:
    return (
        cautions_page(desk, cautions),
        glossary_page(desk),
        *(card_page(shelf, desk) for shelf in shelves(desk.course)),
        relations_page(desk),
        sources_page(desk),
    )


def with_neighbours(pages: list[BuiltPage]) -> list[BuiltPage]:
    """Return each page the one before and the one after it."""
    ends = [None, *((page.path, page.title) for page in pages), None]
    return [
        page._replace(before=ends[place], after=ends[place + 2]) for place, page in enumerate(pages)
    ]


def _modules(
    desk: SiteContext, written: Written
) -> tuple[list[BuiltPage], dict[str, tuple[str, ...]], list[SiteFile]]:
    pages: list[BuiltPage] = []
    parts: list[SiteFile] = []
    cautions: dict[str, tuple[str, ...]] = {}
    for module in desk.course.modules:
        if module.module in desk.course.lessons:
            page, cautions[module.module] = lesson_page(module.module, desk)
            pages.append(page)
        if module.module in written:
            pages.extend(question_pages(module, desk, written[module.module]))
            parts.extend(part_files(desk.course, written[module.module]))
    return pages, cautions, parts


def _pages_besides(course: Course) -> list[str]:
    modules = {module.module for module in course.modules}
    return [name for name in course.lessons if name not in modules and name != "index"]
