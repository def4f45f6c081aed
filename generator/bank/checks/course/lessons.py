"""Lessons: what a block or a link names must exist, and no exam item is shown."""

import re
from collections.abc import Collection, Iterator, Mapping

from generator.bank.bank import Bank, Lesson
from generator.bank.checks.rule import Rule
from generator.diagnostics import Place, Problem, did_you_mean
from generator.refinishing import CATALOGUE

_LINK = re.compile(r"\]\((source|term|lesson):([^)\s]*)\)")
_BLOCK = re.compile(r"```([a-z_]+)[ ]*(.*)")
_UNNAMED = ("caution", "sources", "modules")
_GROUPS = {
    "source": "sources",
    "term": "glossary",
    "lesson": "lessons",
    "procedure": "procedures",
    "fault": "faults",
    "table": "tables",
    "question": "items",
    "data_sheet": "data_sheets",
    "belief": "beliefs",
}
_WORDS = {"worked": "relation", "objectives": "module", "data_sheet": "document"}
COMPUTED_FIGURES = (
    "film_stack",
    "grade_ladder",
    "cup_marks",
    "dew_chart",
    "wet_dry_bars",
    "purge_curve",
    "noise_time",
    "heat_up",
    "overlap_bands",
)


def lesson_names(bank: Bank) -> Iterator[Problem]:
    """Return blocks and links of lessons that name nothing."""
    known = _known_names(bank)
    for lesson in bank.lessons:
        # the line on which the block that is open began, or nought
        inside = 0
        for number, line in enumerate(lesson.text.splitlines(), start=1):
            if line.startswith("```"):
                if inside and line.strip() != "```":
                    yield _not_closed(lesson, inside)
                if not inside or line.strip() != "```":
                    yield from _block_problems(bank, lesson, number, line, known)
                    inside = number
                else:
                    inside = 0
                continue
            for match in _LINK.finditer(line):
                column = match.start(2) + 1
                if not bank.was_unread(_GROUPS.get(match[1], ""), match[2]):
                    yield from _unknown(lesson, number, column, match[1], match[2], known[match[1]])
        if inside:
            yield _not_closed(lesson, inside)


def _not_closed(lesson: Lesson, start: int) -> Problem:
    """Return the error for a block without an end, at the last line before the first gap in it."""
    lines = lesson.text.splitlines()
    gap = next((n for n, line in enumerate(lines[start:], start) if not line.strip()), len(lines))
    message = f"the block that begins on line {start} has no end"
    place = Place(lesson.path, gap, 1)
    return Problem(place, "error", "lesson-block", message, "close it with a line of ``` alone")


def _known_names(bank: Bank) -> Mapping[str, Collection[str]]:
    study = [name for name, entry in bank.items.items() if entry.record.use != "exam"]
    return {
        "source": bank.sources,
        "term": bank.glossary,
        "lesson": [lesson.name for lesson in bank.lessons],
        "procedure": bank.procedures,
        "fault": bank.faults,
        "table": bank.tables,
        "objectives": [module.module for module in bank.modules],
        "question": study,
        "figure": [*bank.figures, *COMPUTED_FIGURES],
        "worked": CATALOGUE,
        "data_sheet": bank.data_sheets,
        "belief": bank.beliefs,
    }


def _block_problems(
    bank: Bank, lesson: Lesson, number: int, line: str, known: Mapping[str, Collection[str]]
) -> Iterator[Problem]:
    match = _BLOCK.match(line)
    word = match[1] if match else ""
    if word == "caution" and match is not None:
        yield from _unknown_hazards(bank, lesson, number, match)
        return
    if word in _UNNAMED:
        return
    if word not in known or match is None:
        message = f"there is no lesson block '{word}'"
        hint = did_you_mean(word, [*known, *_UNNAMED])
        place = Place(lesson.path, number, 4)
        yield Problem(place, "error", "lesson-block", message, hint)
        return
    name = match[2].strip()
    if not bank.was_unread(_GROUPS.get(word, ""), name):
        yield from _unknown(lesson, number, match.start(2) + 1, word, name, known[word])


def _unknown_hazards(
    bank: Bank, lesson: Lesson, number: int, match: re.Match[str]
) -> Iterator[Problem]:
    """Return hazards that a caution block names and hazards.yml does not have."""
    if bank.was_unread("hazards", "any"):
        return
    for name in re.finditer(r"\S+", match[2]):
        column = match.start(2) + name.start() + 1
        yield from _unknown(lesson, number, column, "hazard", name[0], bank.hazards)


def _unknown(
    lesson: Lesson, number: int, column: int, word: str, name: str, known: Collection[str]
) -> Iterator[Problem]:
    if name not in known:
        what = _WORDS.get(word, word)
        message = f"there is no {what} named '{name}' to show here"
        place = Place(lesson.path, number, column)
        yield Problem(place, "error", "lesson-name", message, did_you_mean(name, known))


def shown_figures(bank: Bank) -> set[str]:
    """Return the names of the figures that lessons and cards of faults show."""
    lines = (line for lesson in bank.lessons for line in lesson.text.splitlines())
    asked = {m[2].strip() for line in lines if (m := _BLOCK.match(line)) and m[1] == "figure"}
    return asked | {f"fault_{name}" for name in bank.faults} & set(bank.figures)


RULES = (
    Rule(
        "lesson-block",
        "error",
        "Lessons are filled by blocks with known names.",
        "```procedures mix_filler",
        "```procedure mix_filler",
        lesson_names,
    ),
    Rule(
        "lesson-name",
        "error",
        "What a block or link names must exist; a question block never names an exam item.",
        "[flash](term:flash)",
        "[flash](term:flash_off)",
    ),
)
