"""Every text of the course read as it will be shown, and what is wrong with it at its place."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from pathlib import Path
from typing import TypeVar

from generator.bank import Bank, Entry, ScalarNode, written_texts
from generator.bank.models import Record
from generator.diagnostics import Place, Problem
from generator.refinishing import CATALOGUE
from generator.website.context import (
    Block,
    Course,
    PageContext,
    SiteContext,
    phrase,
    prose,
    rendered,
)
from generator.website.pages.blocks import lesson_blocks
from generator.website.pages.lesson_pages import page_title
from generator.wording import blocks_in

T = TypeVar("T")
R = TypeVar("R", bound=Record)
# a relation's own source, which a worked example cites
NO_SOURCE = "unknown-source"
# what could be a link, a block, a picture or a note
_MARKS = ("](", "] (", "```", "~~~", "<", ":", "\n")


def course_problems(bank: Bank, theme: Path) -> tuple[Problem, ...]:
    """Return what is wrong with the texts of lessons and records.

    A name of something that could not be read is not called absent.
    """
    course = Course(
        title=bank.sheet.title,
        modules=bank.modules,
        sources=_Names(_records(bank.sources), bank, "sources"),
        terms=_Names(_records(bank.glossary), bank, "glossary"),
        lessons=_Names({lesson.name: lesson.text for lesson in bank.lessons}, bank, "lessons"),
        procedures=_Names(_records(bank.procedures), bank, "procedures"),
        faults=_Names(_records(bank.faults), bank, "faults"),
        tables=_Names(_records(bank.tables), bank, "tables"),
        questions={module.module: () for module in bank.modules},
    )
    desk = SiteContext(course, theme)
    blocks = _blocks(desk)
    for lesson in bank.lessons:
        draft = desk.draft(lesson.path, lesson.text)
        rendered(lesson.text, draft, blocks)
        page_title(draft, lesson.name)
    of_lessons = (p for p in desk.problems if not (bank.is_partly_read and p.rule == NO_SOURCE))
    return (*of_lessons, *_of_records(course, written_texts(bank)))


def _records(entries: Mapping[str, Entry[R]]) -> dict[str, R]:
    return {name: entry.record for name, entry in entries.items()}


class _Names(dict[str, T]):
    """Records by name; what could not be read counts as there."""

    def __init__(self, known: Mapping[str, T], bank: Bank, group: str) -> None:
        super().__init__(known)
        self._unread = bank.was_unread
        self._group = group

    def __contains__(self, name: object) -> bool:
        return super().__contains__(name) or self._unread(self._group, str(name))


def _blocks(desk: SiteContext) -> dict[str, Block]:
    """Return the blocks of lessons as far as they hold a text of the author's own.

    What the others name is looked at by the rules of the bank, and records in their own files.
    """
    known = lesson_blocks(desk)

    def shown(draft: PageContext, name: str, body: str) -> str:
        return ""

    def figure(draft: PageContext, name: str, body: str) -> str:
        return phrase(body.strip(), draft)

    def worked(draft: PageContext, name: str, body: str) -> str:
        return known["worked"](draft, name, body) if name in CATALOGUE else ""

    def caution(draft: PageContext, name: str, body: str) -> str:
        return rendered(body, draft)

    own = {"caution": caution, "figure": figure, "worked": worked}
    return {word: own.get(word, shown) for word in known}


def _of_records(course: Course, texts: Iterable[ScalarNode]) -> Iterator[Problem]:
    for text in texts:
        if any(mark in text.text for mark in _MARKS):
            draft = PageContext(course, text.place.path, text=text.text)
            _blocks_of(text.text, draft)
            prose(text.text, draft)
            for problem in draft.problems:
                yield replace(problem, place=_inside(text, problem.place))


def _blocks_of(text: str, draft: PageContext) -> None:
    for line, what in blocks_in(text):
        draft.line = line + 1
        message = f"this looks like {what}, and would be shown as plain letters"
        draft.report("text-block", message, "write sentences, or put it into the lesson")


def _inside(text: ScalarNode, found: Place) -> Place:
    """Return a place in a record's text as a place in its file, as near as the layout tells."""
    if text.block or found.line > 1:
        return text.place
    return text.inner.shifted(found.column - 1)
