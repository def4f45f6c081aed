"""What to teach again: objectives by how much of them a class is sure to know."""

from collections.abc import Iterable
from dataclasses import dataclass

from generator.reports.answered_papers import Answer, SatPaper
from generator.reports.course_names import CourseNames
from generator.reports.intervals import FEWEST, Share, share_of_answers


@dataclass(frozen=True, slots=True)
class Objective:
    """How a class answered the questions of one objective.

    share   mean share of the marks, each answer weighing the same
    people  papers that asked it
    lost    answers that are not fully right
    """

    name: str
    share: Share
    answers: int
    people: int
    lost: int

    @property
    def is_ranked(self) -> bool:
        """Say whether there are enough answers to rank it."""
        return self.answers >= FEWEST


def objectives_to_reteach(papers: Iterable[SatPaper], names: CourseNames) -> tuple[Objective, ...]:
    """Return the objectives that lost marks.

    Those with ten answers or more come first, lowest lower bound of the share (Wilson, one-sided
    95 %) first; then those with fewer, most lost answers first. Answers that wait count nowhere.
    """
    asked: dict[str, list[tuple[int, Answer]]] = {}
    for place, paper in enumerate(papers):
        for answer in paper.counted:
            if not answer.waits:
                asked.setdefault(answer.objective, []).append((place, answer))
    found = [_objective(name, whose) for name, whose in asked.items()]
    lost = [objective for objective in found if objective.lost]
    ranked = sorted(
        (objective for objective in lost if objective.is_ranked),
        key=lambda o: (o.share.lower_bound, names.place(o.name), o.name),
    )
    others = sorted(
        (objective for objective in lost if not objective.is_ranked),
        key=lambda o: (-o.lost, names.place(o.name), o.name),
    )
    return (*ranked, *others)


def _objective(name: str, whose: list[tuple[int, Answer]]) -> Objective:
    share = share_of_answers(answer for _, answer in whose)
    assert share is not None
    return Objective(
        name=name,
        share=share,
        answers=len(whose),
        people=len({place for place, _ in whose}),
        lost=sum(answer.lost for _, answer in whose),
    )
