"""A paper module by module: counts, and a verdict only where there are enough questions."""

from collections.abc import Sequence
from dataclasses import dataclass

from generator.reports.answered_papers import Answer
from generator.reports.course_names import CourseNames
from generator.reports.intervals import Standing, share_of_answers


@dataclass(frozen=True, slots=True)
class ModuleCount:
    """The questions of one module on a paper.

    answers   every question of the module, those left out or waiting among them
    right     how many are fully right
    asked     how many count and are marked
    standing  against the standard of the paper
    """

    module: str
    answers: tuple[Answer, ...]
    right: int
    asked: int
    standing: Standing


def by_module(
    answers: Sequence[Answer], names: CourseNames, pass_percent: int
) -> tuple[ModuleCount, ...]:
    """Count a paper by module, in the order of the outline."""
    modules: dict[str, list[Answer]] = {}
    for answer in answers:
        modules.setdefault(answer.module, []).append(answer)
    ordered = sorted(modules, key=lambda module: (names.place(module), module))
    return tuple(_count(module, modules[module], pass_percent) for module in ordered)


def _count(module: str, answers: Sequence[Answer], pass_percent: int) -> ModuleCount:
    marked = [answer for answer in answers if not answer.left_out and not answer.waits]
    share = share_of_answers(marked)
    return ModuleCount(
        module=module,
        answers=tuple(answers),
        right=sum(answer.mark.share == 1 for answer in marked),
        asked=len(marked),
        standing=share.standing(pass_percent) if share else "too few questions to say",
    )
