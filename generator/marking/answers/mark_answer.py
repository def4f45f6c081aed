"""Marking one answer against the question as it was issued, never against today's bank."""

from collections.abc import Mapping
from fractions import Fraction

from generator.issued import ForKey, IssuedQuestion, MatchAnswerKey, WrittenAnswerKey
from generator.marking.answers.answer_shape import (
    refuse_strange_pairs,
    refuse_strange_points,
    refuse_unknown_kind,
    taken,
)
from generator.marking.answers.marks import Finding, Mark, marked, not_marked
from generator.marking.answers.numeric_marking import mark_numeric
from generator.marking.answers.options_marking import (
    mark_choice,
    mark_multiple_response,
)
from generator.marking.answers.order_marking import mark_order
from generator.marking.answers.response import (
    Awarded,
    Chosen,
    Illegible,
    Matched,
    Ordered,
    Response,
    Typed,
    is_empty,
)


def mark_response(question: IssuedQuestion, response: Response) -> Mark:
    """Mark one answer.

    question  as it was issued
    Raises CannotMark when the answer is of another form than the question takes, or names letters
    that the question does not have.
    """
    if isinstance(response, Illegible):
        return not_marked("illegible")
    if is_empty(response):
        return not_marked("blank")
    refuse_unknown_kind(question)
    name = question["id"]
    return ForKey(
        numeric=lambda key: mark_numeric(key, taken(Typed, response, name).text),
        choice=lambda key: mark_choice(key, taken(Chosen, response, name).letters),
        multiple_response=lambda key: mark_multiple_response(
            key, taken(Chosen, response, name).letters
        ),
        order=lambda key: mark_order(key, taken(Ordered, response, name).letters),
        match=lambda key: mark_match(key, dict(taken(Matched, response, name).answers)),
        written=lambda key: mark_written(key, taken(Awarded, response, name).marks),
    ).of(question)


def mark_match(key: MatchAnswerKey, answers: Mapping[str, str]) -> Mark:
    """Mark pairs by the share of left-hand numbers that have their letter."""
    numbers = [row["number"] for row in key["left"]]
    refuse_strange_pairs(key, answers)
    given = {number: letter.strip().upper() for number, letter in answers.items()}
    wrong = [number for number in numbers if given.get(number) != key["answers"][number]]
    return marked(
        Fraction(len(numbers) - len(wrong), len(numbers)),
        [Finding("wrong_row", number, key["says"].get(number, "")) for number in wrong],
    )


def mark_written(key: WrittenAnswerKey, marks: tuple[int, ...]) -> Mark:
    """Add up the marks that a marker gave for the marking points.

    Raises CannotMark when a point is missing or has more marks than it is worth.
    """
    points = key["points"]
    refuse_strange_points(key, marks)
    short = [
        Finding("point_short", str(number), point["text"])
        for number, (given, point) in enumerate(zip(marks, points, strict=True), start=1)
        if given < point["marks"]
    ]
    return marked(Fraction(sum(marks), sum(point["marks"] for point in points)), short)
