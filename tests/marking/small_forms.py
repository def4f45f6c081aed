"""Forms with a question of every kind, as they are issued, and answers to them for hypothesis."""

from collections.abc import Sequence
from typing import Any

from hypothesis import strategies as st

from generator.marking import (
    Awarded,
    Blank,
    Chosen,
    Illegible,
    Matched,
    Ordered,
    Response,
    Typed,
)
from tests.marking.issued import Plain, match, numeric, options, order, written

MARKS = {"choice": 1, "multiple_response": 2, "numeric": 2, "order": 2}
ANN, BOB = "Apprentice 01", "Apprentice 02"


def small_form(
    label: str = "A",
    person: str = "",
    questions: Sequence[Plain] | None = None,
    must_pass: Sequence[int] = (),
    **more: Any,
) -> Plain:
    """Return a form; without questions it has one of every kind, in the order of `every_kind`."""
    asked = list(every_kind() if questions is None else questions)
    entries = [
        {"number": n, "marks": worth(q), "must_pass": n in must_pass, "question": q}
        for n, q in enumerate(asked, start=1)
    ]
    marks = sum(entry["marks"] for entry in entries)
    return {
        "form_id": f"7KQ2M4{label:0>2}",
        "title": "Small check",
        "blueprint": "small_check",
        "form": label,
        "edition": "1",
        "seed": "spring",
        "marks": marks,
        "pass_percent": 80,
        "pass_marks": -(-marks * 80 // 100),
        "gate": list(must_pass),
        "person": person,
        "questions": entries,
    } | more


def every_kind() -> list[Plain]:
    """Return a choice, a multiple response, a number, an order, a match and a written question."""
    made = [
        options("choice", "B", "ABC"),
        options("multiple_response", "AC", "ABCD"),
        numeric("60", "58", "62", slips=(("29", "31", "halved"),)),
        order("ABCD", ("AB", "BC", "CD")),
        match({"1": "C", "2": "A", "3": "B"}, "ABCD"),
        written(2, 1, 1),
    ]
    for question in made:
        question |= {
            "objective": "bench/all",
            "stem": f"What of {question['kind']}?",
            "sheet": None,
            "table": None,
        }
    return made


def worth(question: Plain) -> int:
    """Return what a question is worth, as papers count it."""
    key = question["key"]
    if question["kind"] == "match":
        return len(key["answers"])
    if question["kind"] == "written":
        return sum(point["marks"] for point in key["points"])
    return MARKS[question["kind"]]


RIGHT: dict[int, Response] = {
    1: Chosen(("B",)),
    2: Chosen(("A", "C")),
    3: Typed("60 µm"),
    4: Ordered(tuple("ABCD")),
    5: Matched((("1", "C"), ("2", "A"), ("3", "B"))),
    6: Awarded((2, 1, 1)),
}
RIGHT_CELLS = ("B", "A C", "60 µm", "A B C D", "1C 2A 3B", "2 1 1")

_UNITS = st.sampled_from(["", " µm", " mil", "%", " in"])
_NUMBERS = st.one_of(
    st.decimals(-999, 999, allow_nan=False, places=2).map(str),
    st.integers(0, 9999).map(str),
    st.sampled_from(["12,5", "1 1/2", "½", "3/4", "−7", "1.200,5", "=2+3", "about 60", "60;70"]),
)


def letters(question: Plain, part: str) -> list[str]:
    """Return the letters of a part of a key."""
    return [row["letter"] for row in question["key"][part]]


def answers_to(question: Plain) -> st.SearchStrategy[Response]:
    """Draw any answer that a question takes."""
    kind, key = question["kind"], question["key"]
    if kind in ("choice", "multiple_response"):
        there = letters(question, "options")
        made = st.lists(st.sampled_from(there), min_size=1, unique=True)
        return made.map(lambda found: Chosen(tuple(found)))
    if kind == "numeric":
        return st.tuples(_NUMBERS, _UNITS).map(lambda parts: Typed("".join(parts).strip()))
    if kind == "order":
        some = st.lists(st.sampled_from(letters(question, "steps")), min_size=1, max_size=6)
        return some.map(lambda found: Ordered(tuple(found)))
    if kind == "match":
        right = st.sampled_from(letters(question, "right"))
        pairs = st.dictionaries(st.sampled_from(list(key["answers"])), right, min_size=1)
        return pairs.map(lambda found: Matched(tuple(sorted(found.items()))))
    marks = st.tuples(*(st.integers(0, point["marks"]) for point in key["points"]))
    return marks.map(Awarded)


def any_answer(question: Plain) -> st.SearchStrategy[Response]:
    """Draw any answer, none, or one that nobody can read."""
    return st.one_of(st.just(Blank()), st.just(Illegible()), answers_to(question))
