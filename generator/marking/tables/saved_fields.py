"""The fields of a saved file with answers, each read from a value that knows its place."""

import re
from collections.abc import Callable, Mapping
from typing import Any
from unicodedata import category

from generator.assembly.forms import LENGTH, SIGNS
from generator.diagnostics import Place
from generator.marking.answers import (
    Awarded,
    CannotMark,
    Chosen,
    Illegible,
    Matched,
    Ordered,
    Response,
    Typed,
    response_from_plain,
)
from generator.marking.tables.located_json import Located

LONGEST_TYPED, LONGEST_WRITTEN, LONGEST_NAME = 200, 10_000, 120
MOST_MINUTES = 100_000
_LONGEST_SHOWN = 60
_UNSEEN = ("Cc", "Cf", "Zl", "Zp")
_NUMBER = re.compile(r"[1-9][0-9]{0,2}")
_LETTER = re.compile(r"[A-Z]")
_FORM_ID = re.compile(rf"[{SIGNS}]{{{LENGTH}}}")


class FieldRefused(ValueError):
    """A value that is not what the file should hold; `place` says where it stands."""

    def __init__(self, place: Place, message: str) -> None:
        super().__init__(message)
        self.place = place


def object_of(found: Located) -> dict[str, Located]:
    """Return the names and values of an object."""
    if not isinstance(found.value, dict):
        message = f"names with values are expected here, not {shown(found.value)}"
        raise FieldRefused(found.place, message)
    return found.value


def shown(value: Any) -> str:
    """Write a value for a message, on one line and cut where it is long."""
    if isinstance(value, dict | tuple):
        return "names with values" if isinstance(value, dict) else "a list"
    text = "nothing" if value is None else repr(value)
    return text if len(text) <= _LONGEST_SHOWN else text[:_LONGEST_SHOWN] + "..."


def _text(found: Located, longest: int) -> str:
    if not isinstance(found.value, str):
        raise FieldRefused(found.place, f"a text is expected here, not {shown(found.value)}")
    if len(found.value) > longest:
        raise FieldRefused(found.place, f"a text here has at most {longest:,} characters")
    return found.value


def _name(found: Located) -> str:
    text = _text(found, LONGEST_NAME)
    if text != text.strip() or any(category(sign) in _UNSEEN for sign in text):
        raise FieldRefused(found.place, f"{shown(text)} holds spaces or signs no name has")
    return text


def _form_id(found: Located) -> str:
    text = _text(found, LONGEST_NAME)
    if not _FORM_ID.fullmatch(text):
        raise FieldRefused(found.place, f"{shown(text)} is not the id of a form")
    return text


def _minutes(found: Located) -> int:
    value = found.value
    if not isinstance(value, int) or isinstance(value, bool) or not 0 <= value <= MOST_MINUTES:
        raise FieldRefused(found.place, f"whole minutes are expected here, not {shown(value)}")
    return value


def _numbered(read: Callable[[Located], Any]) -> Callable[[Located], dict[int, Any]]:
    def entries(found: Located) -> dict[int, Any]:
        taken = {}
        for number, entry in object_of(found).items():
            if not _NUMBER.fullmatch(number):
                raise FieldRefused(entry.place, f"{shown(number)} is not a question's number")
            taken[int(number)] = read(entry)
        return dict(sorted(taken.items()))

    return entries


def _response(found: Located) -> Response:
    try:
        response = response_from_plain(_plain(Located(object_of(found), found.place)))
    except CannotMark as error:
        raise FieldRefused(found.place, "this is not an answer in a known form") from error
    if isinstance(response, Awarded | Illegible):
        raise FieldRefused(found.place, "a page saves answers; this comes from a marker")
    if wrong := _unlikely(response):
        raise FieldRefused(found.place, wrong)
    return response


def _plain(found: Located) -> Any:
    if isinstance(found.value, dict):
        return {name: _plain(entry) for name, entry in found.value.items()}
    if isinstance(found.value, tuple):
        return [_plain(entry) for entry in found.value]
    return found.value


def _unlikely(response: Response) -> str:
    """Say what no page saves, whatever the question is; empty where there is nothing."""
    match response:
        case Typed(text) if len(text) > LONGEST_TYPED:
            return f"a number has at most {LONGEST_TYPED} characters"
        case Chosen(letters) | Ordered(letters):
            return _unlikely_letters(letters)
        case Matched(answers):
            odd = [number for number, _ in answers if not _NUMBER.fullmatch(number)]
            if odd:
                return f"{shown(odd[0])} is not the number of a pair"
            return _not_letters(letter for _, letter in answers if letter)
    return ""


def _unlikely_letters(letters: tuple[str, ...]) -> str:
    if wrong := _not_letters(letters):
        return wrong
    twice = sorted({letter for letter in letters if letters.count(letter) > 1})
    return f"'{twice[0]}' is there more than once" if twice else ""


def _not_letters(letters: Any) -> str:
    wrong = [letter for letter in letters if not _LETTER.fullmatch(letter)]
    return f"{shown(wrong[0])} is not a letter of an answer" if wrong else ""


FIELDS: Mapping[str, Callable[[Located], Any]] = {
    "form_id": _form_id,
    "label": _name,
    "edition": _name,
    "person": _name,
    "responses": _numbered(_response),
    "written": _numbered(lambda found: _text(found, LONGEST_WRITTEN)),
    "minutes_used": _minutes,
    "minutes_over": _minutes,
}
