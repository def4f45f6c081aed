"""The places to mark for each kind of question, measured from the corner of their own field."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Final

from generator.printing.answer_sheet.measures import PLACES, POINT, Measures

ON_PAPER: Final = "on the question paper"


@dataclass(frozen=True, slots=True)
class Group:
    """Rings of which one is filled, or several in a question that says so.

    name   of the place or case it answers; empty where a field has one group
    marks  value and centre (x, y) of each ring, in mm from the corner of the field
    """

    name: str
    marks: tuple[tuple[str, float, float], ...]


@dataclass(frozen=True, slots=True)
class Field:
    """Where one question is answered.

    kind    of the question
    caption shown above the rings or in place of them
    boxes   left, top, width and height of the boxes to write in, in mm
    """

    number: int
    kind: str
    height: float
    caption: str
    groups: tuple[Group, ...]
    boxes: tuple[tuple[float, float, float, float], ...] = ()


class DoesNotFit(ValueError):
    """A question has more options, places or cases than an answer sheet can hold."""


def field_of(entry: Mapping[str, Any], measures: Measures) -> Field:
    """Return the field of a question; `entry` is its plain JSON within a form.

    Raises DoesNotFit when its rings would run into each other.
    """
    question = entry["question"]
    make = _FIELDS[question["kind"]]
    return make(int(entry["number"]), question["kind"], question["key"], measures)


def _letters(number: int, kind: str, key: Mapping[str, Any], measures: Measures) -> Field:
    letters = [str(option["letter"]) for option in key["options"]]
    centres = _across(number, len(letters), measures)
    places = zip(letters, centres, strict=True)
    marks = tuple((letter, x, measures.down / 2) for letter, x in places)
    return Field(number, kind, measures.down, "", (Group("", marks),))


def _order(number: int, kind: str, key: Mapping[str, Any], measures: Measures) -> Field:
    letters = [str(step["letter"]) for step in key["steps"]]
    places = [str(place) for place in range(1, len(letters) + 1)]
    return _grid(number, kind, "place", places, letters, measures)


def _match(number: int, kind: str, key: Mapping[str, Any], measures: Measures) -> Field:
    cases = [str(entry["number"]) for entry in key["left"]]
    return _grid(number, kind, "row", cases, [str(e["letter"]) for e in key["right"]], measures)


def _grid(
    number: int,
    kind: str,
    caption: str,
    names: Sequence[str],
    values: Sequence[str],
    measures: Measures,
) -> Field:
    groups = _columns(number, names, values, measures.caption, measures)
    return Field(number, kind, measures.caption + len(values) * measures.down, caption, groups)


def _number(number: int, kind: str, key: Mapping[str, Any], measures: Measures) -> Field:
    if not _has_places(str(key["shown"])):
        return _written(number, kind, key, measures)
    names = [str(place) for place in range(1, PLACES + 1)]
    values = (POINT, *map(str, range(10)))
    top = measures.caption + measures.box
    groups = _columns(number, names, values, top, measures)
    pitch = groups[1].marks[0][1] - groups[0].marks[0][1]
    boxes = tuple(
        (group.marks[0][1] - pitch / 2, measures.caption, pitch, measures.box - 0.6)
        for group in groups
    )
    height = top + len(values) * measures.down
    return Field(number, kind, height, str(key["unit_symbol"]), groups, boxes)


def _written(number: int, kind: str, key: Mapping[str, Any], measures: Measures) -> Field:
    return Field(number, kind, measures.down, ON_PAPER, ())


def _has_places(shown: str) -> bool:
    """Say whether the boxes can hold a number at all: too long or below zero stays on the paper."""
    digits = shown.replace(POINT, "", 1)
    return len(shown) <= PLACES and digits.isascii() and digits.isdecimal()


def _columns(
    number: int, names: Sequence[str], values: Sequence[str], top: float, measures: Measures
) -> tuple[Group, ...]:
    centres = _across(number, len(names), measures)
    downs = [top + (row + 0.5) * measures.down for row in range(len(values))]
    return tuple(
        Group(name, tuple((value, x, y) for value, y in zip(values, downs, strict=True)))
        for name, x in zip(names, centres, strict=True)
    )


def _across(number: int, count: int, measures: Measures) -> list[float]:
    """Return the centres of so many rings side by side, closer together where there are many."""
    room = measures.column - measures.label
    pitch = min(measures.across, room / count)
    if pitch < measures.least_across:
        most = int(room / measures.least_across)
        message = f"question {number} has {count} places side by side; the sheet holds {most}"
        raise DoesNotFit(message)
    return [measures.label + (index + 0.5) * pitch for index in range(count)]


_FIELDS: dict[str, Callable[[int, str, Mapping[str, Any], Measures], Field]] = {
    "choice": _letters,
    "multiple_response": _letters,
    "order": _order,
    "match": _match,
    "numeric": _number,
    "written": _written,
}
