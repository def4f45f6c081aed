"""What to study: the objectives that lost marks, and where the course teaches them."""

from collections.abc import Sequence
from typing import Any

from generator.reports.answered_papers import Answer
from generator.reports.course_names import CourseNames

Plain = dict[str, Any]
NO_LESSON = "No lesson yet: ask your trainer"


def numbers_of(answers: Sequence[Answer]) -> str:
    """Write question numbers, with a star at a must-pass question."""
    return ", ".join(f"{answer.number}{'*' * answer.must_pass}" for answer in answers)


def study_rows(answers: Sequence[Answer], names: CourseNames) -> list[Plain]:
    """Return the objectives that lost marks: must-pass ones first, then in the outline's order."""
    lost: dict[str, list[Answer]] = {}
    for answer in answers:
        if answer.lost:
            lost.setdefault(answer.objective, []).append(answer)
    ordered = sorted(lost, key=lambda name: (not _must(lost[name]), names.place(name), name))
    return [_study_row(name, lost[name], names) for name in ordered]


def _study_row(objective: str, answers: Sequence[Answer], names: CourseNames) -> Plain:
    module = answers[0].module
    taught = module in names.lessons
    return {
        "text": names.objective(objective),
        "numbers": numbers_of(answers),
        "asked": "question" if len(answers) == 1 else "questions",
        "lesson": names.module(module) if taught else NO_LESSON,
        "module": module if taught else "",
        "objective": objective if taught and objective in names.practised else "",
    }


def _must(answers: Sequence[Answer]) -> bool:
    return any(answer.must_pass for answer in answers)
