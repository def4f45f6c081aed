"""Marking one answer against the question as it was issued, never against today's bank."""

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from generator.marking.answers.marks import Finding, Mark, marked, not_marked
from generator.marking.answers.numeric_marking import mark_numeric
from generator.marking.answers.options_marking import (
    known_letters,
    mark_choice,
    mark_multiple_response,
)
from generator.marking.answers.order_marking import mark_order
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

_FORMS: Mapping[str, type[Response]] = {
    "choice": Chosen,
    "multiple_response": Chosen,
    "numeric": Typed,
    "order": Ordered,
    "match": Matched,
    "written": Awarded,
}


def mark_response(question: Mapping[str, Any], response: Response) -> Mark:
    """Mark one answer.

    question  the plain JSON form of the question as it was issued
    Raises CannotMark when the answer is of another form than the question takes, or names letters
    that the question does not have.
    """
    if isinstance(response, Illegible):
        return not_marked("illegible")
    if is_empty(response):
        return not_marked("blank")
    kind = question["kind"]
    if kind not in _FORMS:
        raise CannotMark(f"there is no way to mark a question of the kind '{kind}'")
    if not isinstance(response, _FORMS[kind]):
        wanted, given = WORDS[_FORMS[kind]], WORDS[type(response)]
        raise CannotMark(f"{question['id']} takes {wanted}, not {given}")
    return _marked(kind, question["key"], response)


def _marked(kind: str, key: Mapping[str, Any], response: Response) -> Mark:
    match response:
        case Chosen(letters) if kind == "choice":
            return mark_choice(key, letters)
        case Chosen(letters):
            return mark_multiple_response(key, letters)
        case Ordered(letters):
            return mark_order(key, letters)
        case Matched(answers):
            return mark_match(key, dict(answers))
        case Typed(text):
            return mark_numeric(key, text)
        case Awarded(marks):
            return mark_written(key, marks)
    raise CannotMark(f"there is no way to mark {WORDS[type(response)]}")


def mark_match(key: Mapping[str, Any], answers: Mapping[str, str]) -> Mark:
    """Mark pairs by the share of left-hand numbers that have their letter."""
    numbers = [row["number"] for row in key["left"]]
    for number in sorted(set(answers) - set(numbers)):
        raise CannotMark(f"the question has no '{number}', only {', '.join(numbers)}")
    known_letters(answers.values(), (row["letter"] for row in key["right"]))
    given = {number: letter.strip().upper() for number, letter in answers.items()}
    wrong = [number for number in numbers if given.get(number) != key["answers"][number]]
    return marked(
        Fraction(len(numbers) - len(wrong), len(numbers)),
        [Finding("match", number, key["says"].get(number, "")) for number in wrong],
    )


def mark_written(key: Mapping[str, Any], marks: tuple[int, ...]) -> Mark:
    """Add up the marks that a marker gave for the marking points.

    Raises CannotMark when a point is missing or has more marks than it is worth.
    """
    points = key["points"]
    if len(marks) != len(points):
        raise CannotMark(f"there are {len(points)} marking points, and marks for {len(marks)}")
    for number, (given, point) in enumerate(zip(marks, points, strict=True), start=1):
        if not 0 <= given <= point["marks"]:
            raise CannotMark(f"point {number} takes 0 to {point['marks']} marks, not {given}")
    short = [
        Finding("point", str(number), point["text"])
        for number, (given, point) in enumerate(zip(marks, points, strict=True), start=1)
        if given < point["marks"]
    ]
    return marked(Fraction(sum(marks), sum(point["marks"] for point in points)), short)
