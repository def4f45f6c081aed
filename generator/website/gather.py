"""From the bank in memory to what a site is made of."""

from collections.abc import Callable, Iterable, Mapping
from pathlib import Path
from typing import Any

from generator.bank import Bank, Entry, load_bank, table_rows
from generator.diagnostics import Problem
from generator.issued import issued_question
from generator.questions import study_questions
from generator.website.context import Course, Variants
from generator.website.questions import relations_of_items


def read_course(bank_folder: Path, lessons: Path) -> tuple[Course | None, tuple[Problem, ...]]:
    """Read the bank and return the course, with every problem found on the way."""
    bank, problems = load_bank(bank_folder, lessons)
    if bank is None:
        return None, problems
    questions = {
        module: tuple(tuple(map(issued_question, variants)) for variants in asked)
        for module, asked in study_questions(bank).items()
    }
    return course_from(bank, questions, lessons / "figures"), problems


def line_reader(root: Path) -> Callable[[str, int], str]:
    """Return a function that shows a line of an author's file, or None when there is none."""

    def line_of(path: str, line: int) -> str:
        file = root / path
        lines = file.read_text(encoding="utf-8").splitlines() if file.is_file() else []
        return lines[line - 1] if 0 < line <= len(lines) else ""

    return line_of


def course_from(bank: Bank, questions: Mapping[str, tuple[Variants, ...]], figures: Path) -> Course:
    """Gather the bank, its study questions and its drawn figures.

    figures  folder of the SVG files beside the lessons
    """
    return Course(
        title=bank.sheet.title,
        modules=bank.modules,
        lessons={lesson.name: lesson.text for lesson in bank.lessons},
        figures=_drawings(figures),
        procedures=_records(bank.procedures),
        faults=_records(bank.faults),
        tables=_records(bank.tables),
        rows={name: table_rows(entry) for name, entry in bank.tables.items()},
        sources=_records(bank.sources),
        hazards=_records(bank.hazards),
        terms=_records(bank.glossary),
        questions=questions,
        relations=relations_of_items(bank),
        places=tuple(bank.places[n].record.title for n in bank.sheet.places if n in bank.places),
    )


def _records(entries: Mapping[str, Entry[Any]]) -> dict[str, Any]:
    return {name: entry.record for name, entry in entries.items()}


def _drawings(folder: Path) -> dict[str, str]:
    return {path.stem: path.read_text(encoding="utf-8") for path in _svg_files(folder)}


def _svg_files(folder: Path) -> Iterable[Path]:
    return sorted(folder.glob("*.svg"))
