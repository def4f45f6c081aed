"""Lines of lessons are whole: short enough to show, quotations closed, nothing pasted twice."""

from collections.abc import Iterator

from generator.bank.bank import Bank, Lesson
from generator.bank.checks.one_record import (
    MOST_CHARACTERS,
    lone_quote_problem,
    long_problem,
    said_twice_problem,
)
from generator.bank.checks.rule import Rule
from generator.diagnostics import Place, Problem, odd_signs


def whole_lines(bank: Bank) -> Iterator[Problem]:
    """Return lines of lessons that are too long, stand twice, or hold half a quotation."""
    for lesson in bank.lessons:
        yield from odd_signs(lesson.text, lesson.path)
        before = ""
        for number, line in enumerate(lesson.text.split("\n"), start=1):
            yield from _line(lesson, number, line, before)
            before = line


def _line(lesson: Lesson, number: int, line: str, before: str) -> Iterator[Problem]:
    if len(line) > MOST_CHARACTERS:
        yield long_problem(Place(lesson.path, number, 1), len(line))
    elif line.strip() and line == before:
        shown = line.strip()[:40]
        yield said_twice_problem(Place(lesson.path, number, 1), shown)
    elif line.count('"') % 2:
        yield lone_quote_problem(Place(lesson.path, number, line.rindex('"') + 1))


RULES = (
    Rule(
        "odd-sign",
        "error",
        "A sign that nobody sees makes two equal texts differ, hides a word from a search, and "
        "may print as an empty box. It comes along when text is copied from a page or a letter.",
        "stem: How thick is the film?  (with a soft hyphen in 'film')",
        "stem: How thick is the film?",
        whole_lines,
    ),
)
