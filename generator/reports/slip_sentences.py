"""What went wrong on a paper and why, as sentences that do not give the key away.

A letter, a step or a number of the key never stands in a sentence: the paper may be used again.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from generator.reports.answered_papers import Answer

ABOUT_OPTION, ABOUT_MISSED, ABOUT_POINT = "option", "missed", "point"
# in the order in which a report tells them
KINDS: Mapping[str, str] = {
    "option": "A wrong option was taken",
    "missed": "A right option was left out",
    "slip": "A sum went wrong",
    "order": "The order of steps",
    "match": "Pairs",
    "point": "A written answer",
    "blank": "Not answered",
    "waiting": "Not marked yet",
}
_KIND_OF = {
    "option": "option",
    "missed": "missed",
    "slip": "slip",
    "unit": "slip",
    "pair": "order",
    "step": "order",
    "match": "match",
    "point": "point",
}
_KIND_OF_QUESTION = {
    "choice": "option",
    "multiple_response": "missed",
    "numeric": "slip",
    "order": "order",
    "match": "match",
    "written": "point",
}
NO_KNOWN_SLIP = "No known slip leads to this number. Work it again, step by step."
NO_REASON = "Go through this one with your trainer."
NO_POINT = "None of the points that were asked for was there."
MISSED_ALL = "At least as many wrong options were taken as right ones."
LEFT_OUT_STEP = "A step was left out."
STEP_TWICE = "A step is there more than once."


@dataclass(frozen=True, slots=True)
class Slip:
    """One thing that went wrong.

    kind  a key of KINDS
    text  the sentence for the learner; empty where nothing can be said
    took  the wrong option that was taken, or the wrong number that was written
    """

    kind: str
    text: str
    took: str = ""


@dataclass(frozen=True, slots=True)
class SlipGroup:
    """The same slip wherever it was made on a paper."""

    slip: Slip
    answers: tuple[Answer, ...]


def slips_of(answer: Answer) -> tuple[Slip, ...]:
    """Return what went wrong with an answer, each slip once; None where it is right."""
    if answer.left_out or answer.mark.share == 1:
        return ()
    if answer.waits:
        return (Slip("waiting", ""),)
    if answer.mark.status == "blank":
        return (Slip("blank", ""),)
    return tuple(dict.fromkeys(_said(answer))) or (_nothing_known(answer),)


def grouped_slips(answers: Iterable[Answer]) -> tuple[SlipGroup, ...]:
    """Gather the same slips of a paper: by kind, must-pass questions first, then by number."""
    groups: dict[Slip, list[Answer]] = {}
    for answer in answers:
        for slip in slips_of(answer):
            groups.setdefault(slip, []).append(answer)
    kinds = list(KINDS)
    found = [SlipGroup(slip, tuple(whose)) for slip, whose in groups.items()]
    return tuple(sorted(found, key=lambda group: (kinds.index(group.slip.kind), _first(group))))


def _first(group: SlipGroup) -> tuple[bool, int]:
    must = any(answer.must_pass for answer in group.answers)
    return not must, min(answer.number for answer in group.answers)


def _said(answer: Answer) -> Iterator[Slip]:
    findings: Sequence[Mapping[str, Any]] = answer.mark.findings.get("went_wrong", ())
    nothing_right = answer.mark.share == 0
    for finding in findings:
        about, text = str(finding["about"]), str(finding["text"])
        kind = _KIND_OF.get(about, _KIND_OF_QUESTION[answer.question["kind"]])
        if about == ABOUT_POINT and nothing_right:
            yield Slip(kind, NO_POINT)
        elif about == ABOUT_MISSED and nothing_right:
            yield Slip(kind, MISSED_ALL)
        elif about == "step":
            yield Slip(kind, STEP_TWICE if "more than once" in text else LEFT_OUT_STEP)
        elif about == "match":
            yield Slip(kind, text or NO_REASON)
        elif about == ABOUT_OPTION:
            yield Slip(kind, text, _option_text(answer, str(finding["place"])))
        else:
            yield Slip(kind, text, _written_number(answer))


def _nothing_known(answer: Answer) -> Slip:
    kind = _KIND_OF_QUESTION[answer.question["kind"]]
    return Slip(kind, NO_KNOWN_SLIP if kind == "slip" else NO_REASON, _written_number(answer))


def _option_text(answer: Answer, letter: str) -> str:
    options = answer.question["key"].get("options", ())
    return next((str(o["text"]) for o in options if o["letter"] == letter), "")


def _written_number(answer: Answer) -> str:
    return str(answer.response.get("text", "")) if answer.question["kind"] == "numeric" else ""


def worth_knowing(answers: Iterable[Answer]) -> tuple[tuple[int, str], ...]:
    """Return what cost nothing but is worth saying: another unit, too many or too few figures.

    That no unit was written is not: the answer sheet and the table print the unit themselves.
    """
    return tuple(
        (answer.number, str(note["text"]))
        for answer in answers
        if answer.mark.share == 1 and not answer.left_out
        for note in answer.mark.findings.get("notes", ())
        if isinstance(note, Mapping) and _is_worth_saying(note, answer)
    )


def _is_worth_saying(note: Mapping[str, Any], answer: Answer) -> bool:
    if note["about"] == "unit":
        return bool(note["place"] != answer.question["key"].get("unit_symbol"))
    return bool(note["about"] == "figures")
