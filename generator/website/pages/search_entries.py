"""What can be searched: lessons by their headings, terms, procedures and faults. No question."""

import re
from collections.abc import Iterable
from typing import NamedTuple

from generator.bank.models import Fault, Procedure
from generator.website.context import BuiltPage, Course, PageContext, plain_words, term_address

_BRACKETS = re.compile(r"\s*\([^)]*\)")


class SearchEntry(NamedTuple):
    """One thing that a search can find.

    place  what it belongs to, such as its lesson; names: its other names
    """

    kind: str
    title: str
    address: str
    place: str
    names: str
    text: str


def search_entries(
    course: Course, lessons: Iterable[BuiltPage], draft: PageContext
) -> tuple[SearchEntry, ...]:
    """Return every entry; records first, as they answer most briefly."""
    return (
        *(_fault(name, record, draft) for name, record in course.faults.items()),
        *(_procedure(name, record, draft) for name, record in course.procedures.items()),
        *_terms(course, draft),
        *(entry for page in lessons for entry in lesson_entries(page)),
    )


def other_names(course: Course) -> tuple[tuple[str, str], ...]:
    """Return pairs of another name and the name that the course uses."""
    named = [(fault.other_names, fault.title) for fault in course.faults.values()]
    named += [(term.other_names, term.term) for term in course.terms.values()]
    pairs = [
        (plain, title)
        for names, title in named
        for name in names
        if (plain := _BRACKETS.sub("", name)).lower() != title.lower()
    ]
    return tuple(dict.fromkeys(pairs))


def lesson_entries(page: BuiltPage) -> tuple[SearchEntry, ...]:
    """Return an entry for each part of a lesson that has words."""
    return tuple(
        SearchEntry(
            "Lesson",
            section.title,
            f"{page.path}#{section.anchor}" if section.anchor else page.path,
            "" if section.title == page.title else page.title,
            "",
            section.words,
        )
        for section in page.sections
        if section.words
    )


def _terms(course: Course, draft: PageContext) -> Iterable[SearchEntry]:
    for key, term in course.terms.items():
        names = ", ".join(term.other_names)
        yield SearchEntry(
            "Glossary", term.term, term_address(key), "", names, plain_words(term.meaning, draft)
        )


def _fault(name: str, record: Fault, draft: PageContext) -> SearchEntry:
    lines = [record.look, record.place_and_time, *(cause.text for cause in record.causes)]
    lines += [record.prevention, record.remedy, *(other.difference for other in record.look_alikes)]
    return SearchEntry(
        "Fault",
        record.title,
        f"faults.html#{name}",
        _module_title(record.objective, draft.course),
        ", ".join(record.other_names),
        _sentences(lines, draft),
    )


def _procedure(name: str, record: Procedure, draft: PageContext) -> SearchEntry:
    lines = [
        *(step.action for step in record.steps),
        *record.throughout,
        *record.never,
        *record.cautions,
    ]
    return SearchEntry(
        "Procedure",
        record.title,
        f"procedures.html#{name}",
        _module_title(record.objective, draft.course),
        "",
        _sentences(lines, draft),
    )


def _module_title(objective: str, course: Course) -> str:
    module = course.module_named(objective.partition("/")[0])
    return module.title if module else ""


def _sentences(lines: Iterable[str], draft: PageContext) -> str:
    return " ".join(
        words if words.endswith((".", "?", "!")) else f"{words}."
        for words in (plain_words(line, draft) for line in lines)
        if words
    )
