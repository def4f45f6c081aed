"""Marking of a written number: exact, in the accepted band, with its unit."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from generator.marking.answers.marks import Finding, Mark, marked, not_marked
from generator.marking.answers.response import CannotMark
from generator.marking.answers.significant_digits import significant_figures
from generator.marking.answers.typed_number import TypedNumber, read_typed
from generator.marking.answers.unit_words import APART, measures_alike, plain_spelling, unit_of_text
from generator.quantities import UNITS, Band, Unit, short_number, short_quantity


@dataclass(frozen=True, slots=True)
class _Converted:
    """A number in the asked unit; `value` is nothing where it measures something else."""

    value: Fraction | None
    notes: tuple[Finding, ...] = ()


def mark_numeric(key: Mapping[str, Any], text: str) -> Mark:
    """Mark a number, all or nothing; the unit may be left out, or be any that converts.

    A text that is no clear number, or names an unknown unit, is illegible: a person looks at it.
    The number of figures costs nothing.
    """
    typed = read_typed(text)
    if isinstance(typed, str):
        return not_marked("illegible", Finding("reading", text, typed))
    converted = _convert(typed, key)
    if converted is None:
        said = f"'{typed.unit}' is not a unit that is known here."
        return not_marked("illegible", Finding("reading", text, said))
    if converted.value is None:
        return marked(Fraction(0), converted.notes)
    if _accepted(key, converted.value):
        return marked(Fraction(1), notes=(*converted.notes, *_figures(typed, key)))
    return marked(Fraction(0), _reasons(key, typed, converted.value), converted.notes)


def number_in_asked_unit(key: Mapping[str, Any], text: str) -> Fraction:
    """Read a number, with or without a unit, in the unit of a question.

    Raises CannotMark for a text that is no number, or one that measures something else.
    """
    typed = read_typed(text)
    if isinstance(typed, str):
        raise CannotMark(f"'{text}' is not a number that can be read")
    converted = _convert(typed, key)
    if converted is None or converted.value is None:
        raise CannotMark(f"'{text}' is not in {key['unit_symbol'] or 'a bare number'}")
    return converted.value


def _convert(typed: TypedNumber, key: Mapping[str, Any]) -> _Converted | None:
    asked = UNITS.get(key["unit"])
    symbol = key["unit_symbol"]
    if not typed.unit:
        missing = Finding("unit", symbol, f"Write the unit as well: {symbol}.")
        return _Converted(typed.value, (missing,) if symbol else ())
    if asked is None:
        # a unit that has gone from the list since the question was issued
        same = plain_spelling(typed.unit) in map(plain_spelling, (symbol, key["unit"]))
        return _Converted(typed.value) if same else None
    given = unit_of_text(typed.unit, asked)
    return None if given is None else _in_asked_unit(typed, given, asked)


def _in_asked_unit(typed: TypedNumber, given: Unit, asked: Unit) -> _Converted:
    if given == asked:
        return _Converted(typed.value)
    shown = short_quantity(typed.value, given)
    if not measures_alike(given, asked):
        text = f"{shown} is {_kind(given)}; the answer is {_kind(asked)}."
        return _Converted(None, (Finding("unit", given.symbol, text),))
    base = typed.value * given.factor + given.offset
    value = (base - asked.offset) / asked.factor
    said = f"{shown} is {short_quantity(value, asked)}."
    return _Converted(value, (Finding("unit", given.symbol, said),))


def _kind(unit: Unit) -> str:
    return f"a number of {unit.symbol}" if unit.name in APART else unit.kind_words


def _reasons(key: Mapping[str, Any], typed: TypedNumber, value: Fraction) -> list[Finding]:
    """Return the slip that leads to a wrong number, or say that only the unit is wrong."""
    if value != typed.value and _accepted(key, typed.value):
        text = f"The number fits, but in {key['unit_symbol'] or 'no unit'}, not in {typed.unit}."
        return [Finding("unit", typed.unit, text)]
    for slip in key["slips"]:
        if _band(slip).holds(value):
            return [Finding("slip", slip["shown"], slip["says"])]
    return []


def _accepted(key: Mapping[str, Any], value: Fraction) -> bool:
    """Say whether a number is in the band of the key, or in one that a correction added."""
    return any(_band(ends).holds(value) for ends in (key, *key.get("also", ())))


def _band(ends: Mapping[str, Any]) -> Band:
    low, high = ends["low"], ends["high"]
    return Band(None if low is None else Fraction(low), None if high is None else Fraction(high))


def _figures(typed: TypedNumber, key: Mapping[str, Any]) -> list[Finding]:
    written, wanted = significant_figures(typed.number), significant_figures(key["shown"])
    if written is None or wanted is None:
        return []
    if written.most < wanted.fewest:
        text = f"You wrote {written.words} figures; the key has {wanted.words}."
    elif written.fewest > wanted.most:
        step = short_number(Fraction(key["step"]))
        text = f"More figures than asked: the answer goes to the nearest {step}."
    else:
        return []
    return [Finding("figures", typed.number, text)]
