"""The result of a paper in sentences: must-pass questions first, then marks with their interval."""

from collections.abc import Sequence

from generator.questions.wording import lower_start
from generator.reports.course_names import CourseNames
from generator.reports.intervals import FEWEST, Standing, marks_text, percent, share_of_marks
from generator.reports.sat_papers import Answer, SatPaper


def gate_sentences(paper: SatPaper, names: CourseNames) -> list[str]:
    """Say how the must-pass questions came out, before any marks are told."""
    gate = paper.gate
    if not gate:
        return ["This paper has no must-pass question."]
    waiting = [answer for answer in gate if answer.waits]
    said = [
        f"Must-pass question {answer.number} was missed. {_what_it_guards(answer, names)}"
        for answer in paper.gate_missed
    ]
    said += [
        f"Must-pass question {answer.number} is not marked yet. A person must still look."
        for answer in waiting
    ]
    if not said:
        numbers = _listed([str(answer.number) for answer in gate])
        whole = f"All {len(gate)} must-pass questions are right"
        one = "The must-pass question is right"
        said = [f"{one if len(gate) == 1 else whole}: {numbers}."]
    elif paper.gate_missed:
        said.append("A missed must-pass question decides, whatever the marks.")
    return said


def _what_it_guards(answer: Answer, names: CourseNames) -> str:
    if answer.hazard:
        return f"The hazard: {lower_start(answer.hazard)}."
    return f"It is about: {names.objective(answer.objective)}."


def marks_sentences(paper: SatPaper) -> list[str]:
    """Say the marks, what it takes to pass, and what they show, with the interval."""
    share = share_of_marks(paper.counted)
    if share is None:
        return ["No question of this paper counts."]
    gained = f"{marks_text(paper.points)} of {paper.most} marks, {percent(share.share)}"
    needed = f"{gained}. It takes {paper.pass_marks} to pass."
    if any(answer.waits for answer in paper.counted):
        return [needed, "Some answers still wait for a person, so the marks may rise."]
    low, high = share.interval
    equal = marks_text(share.number)
    return [
        needed,
        f"As a sample of all such questions it stands for {percent(low)} to {percent(high)} known "
        f"(95 % interval; {len(paper.counted)} questions, which tell as much as {equal} of equal "
        "weight).",
        _standing(share.standing(paper.pass_percent), paper),
    ]


def _standing(standing: Standing, paper: SatPaper) -> str:
    standard = f"that {paper.pass_percent} % of the subject is known"
    if standing == "shown":
        return f"The paper shows {standard}."
    if standing == "not yet":
        return f"The paper does not show {standard}, and speaks against it so far."
    if standing == "more answers needed":
        return (
            f"The paper alone cannot tell {standard}, or that it is not; that takes more answers."
        )
    return f"With fewer than {FEWEST} questions the paper cannot say {standard}."


def _listed(words: Sequence[str]) -> str:
    return " and ".join([", ".join(words[:-1])] * bool(words[1:]) + list(words[-1:]))
