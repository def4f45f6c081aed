"""Where in the course a new hire begins: missed must-pass questions first, what was shown last."""

from collections.abc import Sequence
from dataclasses import dataclass

from generator.reports.course_names import CourseNames
from generator.reports.person.tasks import Task

GATE = "a must-pass question was missed: before any such work"
WATCH = "a question was missed"
NOT_ASKED = "not tested: take it in the usual order"
SHOWN = "all right on paper: go through its cautions and cards, then on"


@dataclass(frozen=True, slots=True)
class Step:
    """A module and why it stands where it does."""

    module: str
    why: str


def placement(tasks: Sequence[Task], names: CourseNames) -> tuple[Step, ...]:
    """Return every module that has a lesson or was asked, in the order in which to take them."""
    by_module = {task.module: task for task in tasks}
    modules = sorted(names.lessons | set(by_module), key=lambda name: (names.place(name), name))
    steps = [Step(module, _why(by_module.get(module))) for module in modules]
    order = (GATE, WATCH, NOT_ASKED, SHOWN)
    return tuple(sorted(steps, key=lambda step: order.index(step.why)))


def _why(task: Task | None) -> str:
    if task is None or task.showing == "too few questions to say":
        return NOT_ASKED
    if task.gate_missed:
        return GATE
    return WATCH if task.showing == "needs watching" else SHOWN
