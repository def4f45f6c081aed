"""The file that an on-screen page saves: the answers of one person to one form.

Its JSON holds kind, version, form_id, label, edition, person (a code or empty), responses (number
of the question to the plain form of a response), written (number to text), minutes_used and
minutes_over.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import islice
from typing import Any

from generator.diagnostics import Place, Problem, did_you_mean, sorted_problems
from generator.marking.answers import Response
from generator.marking.tables.located_json import BrokenJson, Located, read_located
from generator.marking.tables.saved_fields import (
    FIELDS,
    LONGEST_NAME,
    FieldRefused,
    object_of,
    shown,
)
from generator.marking.tables.table_problems import error

KIND, VERSION = "guidecoat answers", 1
MOST_CHARACTERS = 1_000_000
MOST_PROBLEMS = 20
_RULE = "answers-file"
_SAVE_AGAIN = "take the file as the page saved it"


@dataclass(frozen=True, slots=True)
class AnswersFile:
    """What a page saved.

    person        code as issued or as typed; empty where nobody typed one
    responses     by the number of the question; never for a written question
    written       texts of written answers by the number of the question, for the marker
    minutes_used  whole minutes, the last one counted as begun
    minutes_over  how many of them were past the time of the form
    """

    form_id: str
    label: str
    edition: str
    person: str
    responses: Mapping[int, Response]
    written: Mapping[int, str]
    minutes_used: int
    minutes_over: int


def read_answers_file(text: str, path: str) -> tuple[AnswersFile | None, tuple[Problem, ...]]:
    """Read a saved file; any problem is an error, has its line and column, and nothing is taken.

    Never raises, whatever the text. Whether the form was issued, and whether the answers are
    answers to its questions, is for whoever knows the form.
    """
    if len(text) > MOST_CHARACTERS:
        message = f"a file with answers has at most {MOST_CHARACTERS:,} characters"
        return None, (error(Place(path, 1, 1), _RULE, message, _SAVE_AGAIN),)
    try:
        found = read_located(text, path)
        given = object_of(found)
        _of_this_kind(given, found.place)
    except (BrokenJson, FieldRefused) as broken:
        message = f"this is not a file with answers: {broken}"
        return None, (error(broken.place, _RULE, message, _SAVE_AGAIN),)
    fields, problems = _fields(given, found.place)
    if not problems:
        problems = tuple(_answered_twice(fields, object_of(given["written"])))
    return (None if problems else AnswersFile(**fields)), problems


def _of_this_kind(given: Mapping[str, Located], start: Place) -> None:
    for name, wanted in (("kind", KIND), ("version", VERSION)):
        entry = given.get(name, Located(None, start))
        if type(entry.value) is not type(wanted) or entry.value != wanted:
            message = f"its {name} is {shown(entry.value)}; {wanted!r} can be read here"
            raise FieldRefused(entry.place, message)


def _fields(
    given: Mapping[str, Located], start: Place
) -> tuple[dict[str, Any], tuple[Problem, ...]]:
    fields, problems = {}, list(islice(_unknown(given), MOST_PROBLEMS))
    for name, read in FIELDS.items():
        try:
            if name not in given:
                raise FieldRefused(start, f"'{name}' is missing")
            fields[name] = read(given[name])
        except FieldRefused as refused:
            problems.append(error(refused.place, _RULE, str(refused), _SAVE_AGAIN))
    return fields, sorted_problems(problems)


def _unknown(given: Mapping[str, Located]) -> Iterator[Problem]:
    for name, entry in given.items():
        if name not in FIELDS and name not in ("kind", "version"):
            hint = did_you_mean(name[:LONGEST_NAME], FIELDS) or _SAVE_AGAIN
            yield error(entry.place, _RULE, f"{shown(name)} is not known here", hint)


def _answered_twice(fields: Mapping[str, Any], written: Mapping[str, Located]) -> Iterator[Problem]:
    for number in sorted(fields["responses"].keys() & fields["written"].keys()):
        message = f"question {number} is answered among the responses as well"
        yield error(written[str(number)].place, _RULE, message, _SAVE_AGAIN)
