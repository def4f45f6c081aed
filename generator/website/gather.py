"""From the bank in memory to what a site is made of; nothing that the rules refuse gets further."""

from collections.abc import Callable, Iterable, Mapping
from pathlib import Path
from typing import Any

from generator.bank import Bank, Entry, Verdicts, table_rows
from generator.bank.checks import checked_bank
from generator.diagnostics import Problem, has_errors, sorted_problems
from generator.issued import issued_question
from generator.questions import DrawnQuestions, study_questions
from generator.website.context import Course, Variants
from generator.website.figures import drawing_problems
from generator.website.pages import course_problems
from generator.website.questions import relations_of_items


def read_course(
    bank_folder: Path,
    lessons: Path,
    theme: Path,
    drawn: DrawnQuestions | None = None,
    verdicts: Verdicts | None = None,
) -> tuple[Course | None, tuple[Problem, ...]]:
    """Read the bank by the same rules as the check, and return the course it gives.

    theme     its templates, by which the texts of lessons are looked at
    drawn     questions of an earlier reading, used again where nothing changed
    verdicts  of an earlier reading, on records that have not changed
    Where a problem is an error there is no course.
    """
    bank, problems = checked_bank(bank_folder, lessons, verdicts)
    found = list(problems)
    if bank is not None:
        said = {problem.place for problem in found}
        texts = (*course_problems(bank, theme), *drawing_problems(lessons))
        found += [problem for problem in texts if problem.place not in said]
    if bank is None or has_errors(found):
        return None, sorted_problems(found)
    return course_of(bank, lessons, drawn), sorted_problems(found)


def course_of(bank: Bank, lessons: Path, drawn: DrawnQuestions | None = None) -> Course:
    """Return the course of a sound bank, with its study questions drawn."""
    questions = {
        module: tuple(tuple(map(issued_question, variants)) for variants in asked)
        for module, asked in study_questions(bank, drawn).items()
    }
    return course_from(bank, questions, lessons / "figures")


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
        data_sheets=_records(bank.data_sheets),
        beliefs=_records(bank.beliefs),
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
