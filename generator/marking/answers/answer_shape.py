"""Whether an answer fits the shape of a key: form, letters and points, without marking it."""

from collections.abc import Mapping, Sequence
from typing import TypeVar

from generator.issued import (
    KINDS,
    ForKey,
    IssuedQuestion,
    MatchAnswerKey,
    OptionsAnswerKey,
    WrittenAnswerKey,
)
from generator.marking.answers.numeric_marking import why_illegible
from generator.marking.answers.options_marking import known_letters
from generator.marking.answers.response import (
    WORDS,
    Awarded,
    CannotMark,
    Chosen,
    Illegible,
    Matched,
    Ordered,
    Response,
    Typed,
    is_empty,
)

Wanted = TypeVar("Wanted", Chosen, Typed, Ordered, Matched, Awarded)


def refuse_misfit(question: IssuedQuestion, response: Response) -> None:
    """Raise CannotMark for an answer that `mark_response` could not mark."""
    if isinstance(response, Illegible) or is_empty(response):
        return
    refuse_unknown_kind(question)
    name = question["id"]

    def options(key: OptionsAnswerKey) -> None:
        letters = taken(Chosen, response, name).letters
        known_letters(letters, (option["letter"] for option in key["options"]))

    ForKey[object](
        numeric=lambda key: taken(Typed, response, name),
        choice=options,
        multiple_response=options,
        order=lambda key: known_letters(
            taken(Ordered, response, name).letters, (step["letter"] for step in key["steps"])
        ),
        match=lambda key: refuse_strange_pairs(key, dict(taken(Matched, response, name).answers)),
        written=lambda key: refuse_strange_points(key, taken(Awarded, response, name).marks),
    ).of(question)


def needs_a_person(question: IssuedQuestion, response: Response) -> str:
    """Return why a person must look at an answer before it can be marked; empty where none must."""
    if question["kind"] == "numeric" and isinstance(response, Typed):
        return why_illegible(question["key"], response.text)
    return ""


def refuse_unknown_kind(question: IssuedQuestion) -> None:
    """Raise CannotMark for a question of a kind that a later edition brought."""
    if question["kind"] not in KINDS:
        raise CannotMark(f"there is no way to mark a question of the kind '{question['kind']}'")


def taken(wanted: type[Wanted], response: Response, name: str) -> Wanted:
    """Return an answer that has the form which its question takes; raises CannotMark otherwise."""
    if not isinstance(response, wanted):
        raise CannotMark(f"{name} takes {WORDS[wanted]}, not {WORDS[type(response)]}")
    return response


def refuse_strange_pairs(key: MatchAnswerKey, answers: Mapping[str, str]) -> None:
    """Raise CannotMark for a number or a letter that a match does not have."""
    numbers = [row["number"] for row in key["left"]]
    for number in sorted(set(answers) - set(numbers)):
        raise CannotMark(f"the question has no '{number}', only {', '.join(numbers)}")
    known_letters(answers.values(), (row["letter"] for row in key["right"]))


def refuse_strange_points(key: WrittenAnswerKey, marks: Sequence[int]) -> None:
    """Raise CannotMark when a point has no marks or has more than it is worth."""
    points = key["points"]
    if len(marks) != len(points):
        raise CannotMark(f"there are {len(points)} marking points, and marks for {len(marks)}")
    for number, (given, point) in enumerate(zip(marks, points, strict=True), start=1):
        if not 0 <= given <= point["marks"]:
            raise CannotMark(f"point {number} takes 0 to {point['marks']} marks, not {given}")
