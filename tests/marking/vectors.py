"""Shared marking vectors: question, answer and expected share, the same for every marker.

The questions are the study questions of the real bank, with hand-made numbers on the edges. Run
`python -m tests.marking.vectors` to write them as one JSON document.
"""

import json
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from itertools import combinations, groupby
from typing import Any

from generator.bank import load_bank
from generator.marking import (
    Awarded,
    Blank,
    Chosen,
    Matched,
    Ordered,
    Response,
    Typed,
    mark_response,
    response_as_plain,
)
from generator.quantities import number_text
from generator.questions import SeededRandom, as_plain, askables
from tests.bank.small_bank import REPOSITORY
from tests.marking.numeric_edges import EDGES

Plain = dict[str, Any]
DRAWN_ORDERS = 6
LEAST = Fraction(1, 10**9)


@dataclass(frozen=True, slots=True)
class Vector:
    """One case.

    expected   share of the marks
    page_asks  the page asks again instead of marking: nothing clear was typed, or another unit
    """

    question: Plain
    response: Response
    expected: Fraction
    page_asks: bool


def marking_vectors() -> tuple[Vector, ...]:
    """Return every vector; the same bank gives the same ones in the same order."""
    return tuple(
        _vector(question, response, other_unit)
        for question, response, other_unit in (*_edge_cases(), *_bank_cases())
    )


def vectors_as_json(vectors: tuple[Vector, ...]) -> str:
    """Write vectors for a marker in another language, question by question."""
    plain = [
        {"question": question, "cases": [_plain_case(vector) for vector in cases]}
        for question, cases in groupby(vectors, key=lambda vector: vector.question)
    ]
    return json.dumps(plain, ensure_ascii=False, sort_keys=True)


def _plain_case(vector: Vector) -> Plain:
    return {
        "response": response_as_plain(vector.response),
        "share": str(vector.expected),
        "page_asks": vector.page_asks,
    }


def _vector(question: Plain, response: Response, other_unit: bool) -> Vector:
    mark = mark_response(question, response)
    asks = other_unit or mark.status in ("blank", "illegible")
    return Vector(question, response, mark.share, asks)


Case = tuple[Plain, Response, bool]


def _edge_cases() -> Iterator[Case]:
    for edge in EDGES:
        for text in edge.texts:
            yield edge.question, Typed(text), False
        for text in edge.in_other_units:
            yield edge.question, Typed(text), True


def _bank_cases() -> Iterator[Case]:
    for question in _study_questions():
        yield question, Blank(), False
        for response in _RESPONSES[question["kind"]](question):
            yield question, response, False


@cache
def _study_questions() -> tuple[Plain, ...]:
    bank, _ = load_bank(REPOSITORY / "question_bank", REPOSITORY / "course")
    assert bank is not None
    found = (
        askable.make(f"vector-{number}", ())
        for askable in askables(bank)
        if askable.use in ("study", "both")
        for number in range(2 if askable.kind == "numeric" else 1)
    )
    return tuple(as_plain(question) for question in found if question is not None)


def _numeric(question: Plain) -> Iterator[Response]:
    key = question["key"]
    shown, symbol = key["shown"], key["unit_symbol"]
    texts = [shown, f" {shown} {symbol}", shown.replace(".", ","), f"-{shown}", f"{shown}0"]
    texts += [slip["shown"] for slip in key["slips"]]
    for end, outward in ((key["low"], -LEAST), (key["high"], LEAST)):
        if end is not None:
            texts += [_typed(Fraction(end)), _typed(Fraction(end) + outward)]
            texts.append(_typed(Fraction(end) - outward))
    return (Typed(text) for text in dict.fromkeys(texts))


def _typed(value: Fraction) -> str:
    return number_text(value) if value >= 0 else f"\u2212{number_text(-value)}"


def _choice(question: Plain) -> Iterator[Response]:
    return (Chosen((option["letter"],)) for option in question["key"]["options"])


def _multiple(question: Plain) -> Iterator[Response]:
    letters = [option["letter"] for option in question["key"]["options"]]
    for size in range(1, len(letters) + 1):
        yield from (Chosen(chosen) for chosen in combinations(letters, size))


def _order(question: Plain) -> Iterator[Response]:
    key = question["key"]
    right = tuple(key["one_order"])
    stream = SeededRandom("marking-vectors", question["id"])
    rows = [right, right[::-1], tuple(step["letter"] for step in key["steps"])]
    for place in range(len(right) - 1):
        turned = (right[place + 1], right[place])
        rows.append((*right[:place], *turned, *right[place + 2 :]))
    rows += [stream.shuffled(right) for _ in range(DRAWN_ORDERS)]
    return (Ordered(row) for row in dict.fromkeys(rows))


def _match(question: Plain) -> Iterator[Response]:
    answers = question["key"]["answers"]
    letters = [row["letter"] for row in question["key"]["right"]]
    for turn in range(len(letters)):
        turned = letters[turn:] + letters[:turn]
        yield Matched(tuple((n, turned[letters.index(letter)]) for n, letter in answers.items()))
    for number in answers:
        for letter in letters:
            yield Matched(tuple({**answers, number: letter}.items()))


def _written(question: Plain) -> Iterator[Response]:
    most = [point["marks"] for point in question["key"]["points"]]
    yield Awarded(tuple(most))
    yield Awarded((0,) * len(most))
    for place in range(len(most)):
        yield Awarded(tuple(marks if at == place else 0 for at, marks in enumerate(most)))


_RESPONSES = {
    "numeric": _numeric,
    "choice": _choice,
    "multiple_response": _multiple,
    "order": _order,
    "match": _match,
    "written": _written,
}

if __name__ == "__main__":
    sys.stdout.write(vectors_as_json(marking_vectors()))
