"""A form as it is issued: plain JSON that is frozen in the records and never changed."""

import json
from collections.abc import Mapping
from hashlib import sha256
from typing import NotRequired, TypedDict

from generator.issued.question import IssuedQuestion

# no I, L, O and U: they are misread as 1, 0 and V
ID_CHARACTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
LENGTH = 8


class IssuedEntry(TypedDict):
    """A question of a form with its number and marks.

    left_out  taken out of the marks by a correction; never in a form as issued
    """

    number: int
    marks: int
    must_pass: bool
    question: IssuedQuestion
    left_out: NotRequired[bool]


class FormHead(TypedDict):
    """What a form holds besides its questions; what may be missing is missing in older issues.

    form             its label
    gate             numbers of the questions that must be right, whatever the marks
    guesser_passes   chance that somebody who guesses everything passes, 0 to 1
    mastery_marks    fewest marks that show the standard; None where the paper is too short
    titles           words of its modules and objectives on the day of issue
    """

    title: str
    blueprint: str
    form: str
    edition: str
    seed: str
    minutes: int
    marks: int
    pass_percent: int
    pass_marks: int
    form_id: NotRequired[str]
    gate: NotRequired[list[int]]
    person: NotRequired[str]
    guesser_passes: NotRequired[float]
    mastery_marks: NotRequired[int | None]
    constants: NotRequired[list[str]]
    cautions: NotRequired[list[str]]
    titles: NotRequired[dict[str, str]]


class IssuedForm(FormHead):
    """One paper: its questions in order, each with its answer key."""

    questions: list[IssuedEntry]


def form_id(form: Mapping[str, object]) -> str:
    """Return eight characters that identify all that is printed on a form, but not its person.

    form  without an id yet; every other content has another id
    """
    printed = {name: value for name, value in form.items() if name != "person"}
    text = json.dumps(printed, ensure_ascii=False, sort_keys=True)
    number = int.from_bytes(sha256(text.encode("utf-8")).digest(), "big")
    places = (number // len(ID_CHARACTERS) ** place % len(ID_CHARACTERS) for place in range(LENGTH))
    return "".join(ID_CHARACTERS[place] for place in places)


def marks_needed(most: int, percent: int) -> int:
    """Return the marks from which a paper is passed; part marks round up."""
    return -(-most * percent // 100)


def pass_marks(form: FormHead, most: int) -> int:
    """Return the marks from which a form is passed; fewer where questions were left out.

    most  marks of the questions that count
    """
    if most == form["marks"]:
        return form["pass_marks"]
    return marks_needed(most, form["pass_percent"])
