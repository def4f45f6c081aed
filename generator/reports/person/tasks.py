"""A paper task by task: all right, or to be watched; with how little that rests on."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from generator.reports.answered_papers import Answer, SatPaper
from generator.reports.course_names import CourseNames
from generator.reports.guessing_odds import chance_all_right, odds_in_words
from generator.reports.person.module_counts import by_module

Showing = Literal["all right", "needs watching", "too few questions to say"]
FEWEST_TO_SHOW = 2
THRESHOLD = (
    "All right means: every question of the task is right, and there are at least "
    f"{FEWEST_TO_SHOW}. Anything else needs watching. That is little to go by: somebody who knows "
    "only 7 in 10 of a task gets 2 of 2 right about every second time (49 %) and 5 of 5 about one "
    "time in 6 (17 %)."
)


@dataclass(frozen=True, slots=True)
class Task:
    """The questions of one task, which is a module of the course.

    gate_missed  a must-pass question of it was missed
    """

    module: str
    answers: tuple[Answer, ...]
    right: int
    asked: int
    gate_missed: bool

    @property
    def showing(self) -> Showing:
        """Say what the answers show about the task."""
        if self.right < self.asked or any(a.waits for a in self.answers if not a.left_out):
            return "needs watching"
        enough = self.asked >= FEWEST_TO_SHOW
        return "all right" if enough else "too few questions to say"

    @property
    def rests_on(self) -> str:
        """Say how few questions that is, and how a guesser would do."""
        questions = "1 question" if self.asked == 1 else f"{self.asked} questions"
        chance = chance_all_right(a.question for a in self.answers if not a.left_out)
        verb = "it" if self.asked == 1 else "all"
        if chance == 0:
            return f"{questions}; cannot be guessed"
        return f"{questions}; a guesser gets {verb} right {odds_in_words(chance)}"


def tasks_of(paper: SatPaper, names: CourseNames) -> tuple[Task, ...]:
    """Return the tasks of a paper, in the order of the outline."""
    return tuple(
        Task(
            module=count.module,
            answers=count.answers,
            right=count.right,
            asked=count.asked,
            gate_missed=_gate_missed(count.answers),
        )
        for count in by_module(paper.answers, names, paper.pass_percent)
        if any(not answer.left_out for answer in count.answers)
    )


def _gate_missed(answers: Sequence[Answer]) -> bool:
    return any(a.must_pass and a.lost and not a.left_out for a in answers)
