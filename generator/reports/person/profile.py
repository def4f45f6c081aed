"""The profile of a new hire: task by task, which papers are missing, and where to begin.

It never judges the person: what it says is what was answered and what is not in the records.
"""

from datetime import date
from typing import Any

from generator.reports.answered_papers import SatPaper
from generator.reports.course_names import CourseNames
from generator.reports.fixed_words import NOT_SAID_PROFILE
from generator.reports.intervals import marks_text
from generator.reports.person.paperwork import (
    NOBODY,
    Paperwork,
    ProcedureName,
    dates_there,
    missing_dates,
    missing_sheets,
)
from generator.reports.person.placement import Step, placement
from generator.reports.person.tasks import THRESHOLD, Task, tasks_of
from generator.reports.result_sentences import gate_sentences

Plain = dict[str, Any]
BEFORE_ALL = "Everybody goes through the cautions of the course before any work."


def profile(
    paper: SatPaper,
    names: CourseNames,
    paperwork: Paperwork,
    procedures: tuple[ProcedureName, ...],
    today: date,
) -> Plain:
    """Return the plain JSON of a profile; every sentence of it stands there.

    procedures  those that can be observed
    today       the day on which dates are judged
    """
    tasks = tasks_of(paper, names)
    steps = placement(tasks, names)
    return {
        "kind": "profile",
        "title": f"{paper.title}: profile",
        "corner": f"Issue {paper.issue}, form {paper.label}",
        "edition": paper.edition,
        "foot": [f"Issue {paper.issue} form {paper.label}", f"Drawn up {today.isoformat()}"],
        "facts": [
            ["Person", paper.person or "not named"],
            ["Taken on", paper.sat[:10]],
            ["Marks", f"{marks_text(paper.points)} of {paper.most}"],
        ],
        "gate": gate_sentences(paper, names),
        "tasks": [_task(task, names, paperwork, procedures, bool(paper.person)) for task in tasks],
        "threshold": THRESHOLD,
        "dates_missing": list(missing_dates(paperwork, today)) if paper.person else [NOBODY],
        "dates_there": list(dates_there(paperwork, today)),
        "begin": _begin(steps, names),
        "steps": [_step(step, names) for step in steps],
        "notes": list(NOT_SAID_PROFILE),
    }


def _task(
    task: Task,
    names: CourseNames,
    paperwork: Paperwork,
    procedures: tuple[ProcedureName, ...],
    named: bool,
) -> Plain:
    of_task = tuple(p for p in procedures if p.module == task.module)
    sheets = missing_sheets(paperwork, of_task) if named else ()
    lost = [answer for answer in task.answers if answer.lost and not answer.left_out]
    return {
        "title": names.module(task.module),
        "showing": task.showing,
        "count": f"{task.right} of {task.asked} right",
        "rests_on": task.rests_on,
        "missed": _questions([answer.number for answer in lost]),
        "watch": list(dict.fromkeys(names.objective(answer.objective) for answer in lost)),
        "sheets": "; ".join(sheets),
    }


def _questions(numbers: list[int]) -> str:
    listed = ", ".join(map(str, numbers))
    return f"{'question' if len(numbers) == 1 else 'questions'} {listed}"


def _begin(steps: tuple[Step, ...], names: CourseNames) -> str:
    if not steps:
        return BEFORE_ALL
    return f"{BEFORE_ALL} Then begin with: {names.module(steps[0].module)}."


def _step(step: Step, names: CourseNames) -> Plain:
    return {
        "title": names.module(step.module),
        "why": step.why,
        "module": step.module if step.module in names.lessons else "",
    }
