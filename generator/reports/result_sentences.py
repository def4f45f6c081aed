"""The result of a paper in sentences: must-pass questions first, then marks with their interval."""

from collections.abc import Sequence

from generator.questions import lower_start
from generator.records.sittings import VERDICT_WORDS
from generator.reports.answered_papers import Answer, SatPaper
from generator.reports.course_names import CourseNames
from generator.reports.intervals import FEWEST, Standing, marks_text, percent, share_of_marks

# what a shop does between shown and not shown; common practice
GREY_ZONE = (
    "Before work that rests on it, ask again about what was missed: a module check, or a few "
    "questions at the panel."
)


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
    asked = len(paper.counted)
    return [
        needed,
        f"From {asked} question{'s' * (asked != 1)}, your knowledge of the subject lies between "
        f"about {percent(low)} and {percent(high)}.",
        _standing(share.standing(paper.pass_percent), paper),
    ]


def verdict_sentence(paper: SatPaper) -> str:
    """Say how a paper came out; where marks and a must-pass question fell short, say both."""
    words = VERDICT_WORDS[paper.verdict]
    if paper.verdict == "must_pass_missed" and too_few_marks(paper):
        words = "not passed: too few marks, and a must-pass question was missed"
    return words[:1].upper() + words[1:]


def too_few_marks(paper: SatPaper) -> bool:
    """Say whether the marks alone would not have been enough."""
    return paper.points < paper.pass_marks


def _standing(standing: Standing, paper: SatPaper) -> str:
    standard = f"that {paper.pass_percent} % of the subject is known"
    if standing == "shown":
        return f"The paper shows {standard}."
    if standing == "not yet":
        return f"The paper does not show {standard}, and speaks against it so far."
    if standing == "more answers needed":
        return f"The paper alone cannot tell {standard}, or that it is not. {GREY_ZONE}"
    return f"With fewer than {FEWEST} questions the paper cannot say {standard}."


def _listed(words: Sequence[str]) -> str:
    return " and ".join([", ".join(words[:-1])] * bool(words[1:]) + list(words[-1:]))
