"""What can be searched: lessons by their headings, terms, procedures and faults. No question."""

import re
from collections.abc import Iterable
from html import unescape
from html.parser import HTMLParser
from typing import NamedTuple

from generator.bank.models import Fault, Procedure
from generator.website.context import BuiltPage, Course, PageContext, phrase, term_address

# cards are entries of their own; questions are never searched
LEFT_OUT = frozenset(("question", "card", "source-line", "source-list", "published-table"))
NOT_WORDS = frozenset(("svg", "script", "template"))
_TAG = re.compile(r"<[^>]*>")
_SPACE = re.compile(r"\s+")
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
    """Cut a lesson at its headings of the second level."""
    reader = _LessonReader(page)
    reader.feed(page.html)
    return tuple(
        SearchEntry("Lesson", title, address, "" if title == page.title else page.title, "", text)
        for title, address, pieces in reader.parts
        if (text := _one_line("".join(pieces)))
    )


class _LessonReader(HTMLParser):
    """Collects [heading, address, pieces of text] of each part of a lesson."""

    def __init__(self, page: BuiltPage) -> None:
        super().__init__()
        self._path = page.path
        self.parts: list[tuple[str, str, list[str]]] = [(page.title, page.path, [])]
        self._in_text = False
        self._heading: list[str] | None = None
        self._skipped, self._depth = "", 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        found = {name: value or "" for name, value in attrs}
        classes = found.get("class", "").split()
        if self._skipped:
            self._depth += tag == self._skipped
        elif tag in NOT_WORDS or LEFT_OUT.intersection(classes):
            self._skipped, self._depth = tag, 1
        elif tag == "div" and "text" in classes:
            self._in_text = True
        elif tag == "h2" and self._in_text:
            self._heading = []
            self.parts.append(("", f"{self._path}#{found['id']}", []))
        else:
            self.parts[-1][2].append(" ")

    def handle_endtag(self, tag: str) -> None:
        if self._skipped:
            self._depth -= tag == self._skipped
            self._skipped = self._skipped if self._depth else ""
        elif tag == "h2" and self._heading is not None:
            _, address, pieces = self.parts[-1]
            self.parts[-1] = (_one_line("".join(self._heading)), address, pieces)
            self._heading = None

    def handle_data(self, data: str) -> None:
        if self._in_text and not self._skipped:
            (self.parts[-1][2] if self._heading is None else self._heading).append(data)


def _terms(course: Course, draft: PageContext) -> Iterable[SearchEntry]:
    for key, term in course.terms.items():
        names = ", ".join(term.other_names)
        yield SearchEntry(
            "Glossary", term.term, term_address(key), "", names, _words(term.meaning, draft)
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
        for words in (_words(line, draft) for line in lines)
        if words
    )


def _words(markdown: str, draft: PageContext) -> str:
    return _one_line(unescape(_TAG.sub("", phrase(markdown, draft))))


def _one_line(text: str) -> str:
    return _SPACE.sub(" ", text).strip()
