"""Marking of a written number: exact, in the accepted band, with its unit."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from generator.issued import AcceptedBand, NumericAnswerKey
from generator.marking.answers.marks import Code, Finding, Mark, marked, not_marked
from generator.marking.answers.response import CannotMark
from generator.marking.answers.significant_digits import count_significant_digits
from generator.marking.answers.typed_number import TypedNumber, read_typed
from generator.marking.answers.unit_words import APART, measures_alike, plain_spelling, unit_of_text
from generator.quantities import UNITS, Band, Unit, short_number, short_quantity


@dataclass(frozen=True, slots=True)
class _Converted:
    """A number in the asked unit; `value` is None where it measures something else."""

    value: Fraction | None
    notes: tuple[Finding, ...] = ()


def mark_numeric(key: NumericAnswerKey, text: str) -> Mark:
    """Mark a number, all or nothing; the unit may be left out, or be any that converts.

    A text that is no clear number, or names an unknown unit, is illegible: a person looks at it.
    The number of figures costs nothing.
    """
    read = _read(key, text)
    if isinstance(read, Finding):
        return not_marked("illegible", read)
    typed, converted = read
    if converted.value is None:
        return marked(Fraction(0), converted.notes)
    if _accepted(key, converted.value):
        return marked(Fraction(1), notes=(*converted.notes, *_figures(typed, key)))
    return marked(Fraction(0), _reasons(key, typed, converted.value), converted.notes)


def why_illegible(key: NumericAnswerKey, text: str) -> str:
    """Return why a person must look at a text that should be a number; empty where it is one."""
    read = _read(key, text)
    return read.text if isinstance(read, Finding) else ""


def _read(key: NumericAnswerKey, text: str) -> tuple[TypedNumber, _Converted] | Finding:
    typed = read_typed(text)
    if isinstance(typed, str):
        return Finding("no_number", text, typed)
    converted = _convert(typed, key)
    if converted is None:
        said = f"'{typed.unit}' is not a unit that is known here."
        return Finding("unknown_unit", text, said)
    return typed, converted


def number_in_asked_unit(key: NumericAnswerKey, text: str) -> Fraction:
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


def _convert(typed: TypedNumber, key: NumericAnswerKey) -> _Converted | None:
    asked = UNITS.get(key["unit"])
    symbol = key["unit_symbol"]
    if not typed.unit:
        missing = Finding("unit_missing", symbol, f"Write the unit as well: {symbol}.")
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
        return _Converted(None, (Finding("unit_of_another_kind", given.symbol, text),))
    base = typed.value * given.factor + given.offset
    value = (base - asked.offset) / asked.factor
    said = f"{shown} is {short_quantity(value, asked)}."
    return _Converted(value, (Finding("unit_converted", given.symbol, said),))


def _kind(unit: Unit) -> str:
    return f"a number of {unit.symbol}" if unit.name in APART else unit.kind_words


def _reasons(key: NumericAnswerKey, typed: TypedNumber, value: Fraction) -> list[Finding]:
    """Return the slip that leads to a wrong number, or say that only the unit is wrong."""
    if value != typed.value and _accepted(key, typed.value):
        text = f"The number fits, but in {key['unit_symbol'] or 'no unit'}, not in {typed.unit}."
        return [Finding("unit_mixed_up", typed.unit, text)]
    for slip in key["slips"]:
        if _band(slip).holds(value):
            return [Finding("slip", slip["shown"], slip["says"])]
    return []


def _accepted(key: NumericAnswerKey, value: Fraction) -> bool:
    """Return whether a number is in the band of the key, or in one that a correction added."""
    return any(_band(ends).holds(value) for ends in _bands(key))


def _bands(key: NumericAnswerKey) -> Iterator[AcceptedBand]:
    yield key
    yield from key.get("also", ())


def _band(ends: AcceptedBand) -> Band:
    low, high = ends["low"], ends["high"]
    return Band(None if low is None else Fraction(low), None if high is None else Fraction(high))


def _figures(typed: TypedNumber, key: NumericAnswerKey) -> list[Finding]:
    written, wanted = count_significant_digits(typed.number), count_significant_digits(key["shown"])
    if written is None or wanted is None:
        return []
    if written.most < wanted.fewest:
        code: Code = "too_few_digits"
        text = f"You wrote {written.words} figures; the key has {wanted.words}."
    elif written.fewest > wanted.most:
        code = "too_many_digits"
        step = short_number(Fraction(key["step"]))
        text = f"More figures than asked: the answer goes to the nearest {step}."
    else:
        return []
    return [Finding(code, typed.number, text)]
