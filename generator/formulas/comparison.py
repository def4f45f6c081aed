"""Comparisons such as `wet_film(a, b) < 150 um`, which say what drawn numbers must satisfy."""

import operator
import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, Literal, TypeAlias

from generator.formulas.catalogue_protocol import Catalogue, Kind
from generator.formulas.columns import Columns
from generator.formulas.evaluate import FormulaRefused, Value, evaluate
from generator.formulas.literals import exact_number
from generator.formulas.parse import parse_shifted
from generator.formulas.syntax import Formula, FormulaProblem, NumberNode
from generator.formulas.units_check import check_units
from generator.quantities import UNITS, Quantity, Unit, UnknownUnit, unit_named

ComparisonOperator: TypeAlias = Literal["<", "<=", ">", ">=", "==", "!="]

_OPERATORS: dict[str, ComparisonOperator] = {
    "<=": "<=",
    ">=": ">=",
    "==": "==",
    "!=": "!=",
    "<": "<",
    ">": ">",
}
_COMPARE: dict[ComparisonOperator, Callable[[Any, Any], bool]] = {
    "<": operator.lt,
    "<=": operator.le,
    ">": operator.gt,
    ">=": operator.ge,
    "==": operator.eq,
    "!=": operator.ne,
}
_OPERATOR = re.compile(r"<=|>=|==|!=|<|>|=")
_MEASURE = re.compile(r"(\s*)(-?)\s*([0-9.][0-9.eE+-]*)\s+([A-Za-z][A-Za-z0-9_/]*)\s*")


@dataclass(frozen=True, slots=True)
class Comparison:
    """Two sides and how they must compare.

    right   a formula, or a number with its unit
    column  where the operator stands, counted from 1
    """

    left: Formula
    operator: ComparisonOperator
    right: Formula | Quantity
    column: int


def parse_comparison(text: str) -> tuple[Comparison | None, tuple[FormulaProblem, ...]]:
    """Read a comparison; return it, or every problem that its text has."""
    found = _operators_outside_brackets(text)
    if not found:
        message = "a comparison has one of < <= > >= == != in it"
        return None, (FormulaProblem(message, len(text) + 1, "formula-syntax"),)
    for extra in [m for m in found if m[0] == "="] + found[1:]:
        message = "write == for equal" if extra[0] == "=" else "a comparison has one operator only"
        return None, (FormulaProblem(message, extra.start() + 1, "formula-syntax"),)
    sign = found[0]
    left, left_problems = parse_shifted(text[: sign.start()], 0)
    right, right_problems = _right_side(text[sign.end() :], sign.end())
    if left is None or right is None:
        return None, left_problems + right_problems
    return Comparison(left, _OPERATORS[sign[0]], right, sign.start() + 1), ()


def check_comparison(
    comparison: Comparison, names: Mapping[str, Kind], catalogue: Catalogue
) -> tuple[FormulaProblem, ...]:
    """Check the names, calls and units of both sides; return every problem."""
    left, problems = check_units(comparison.left, names, catalogue)
    right: Unit | None
    if isinstance(comparison.right, Quantity):
        right = comparison.right.unit
    else:
        result, right_problems = check_units(comparison.right, names, catalogue)
        problems += right_problems
        right = result.unit if result else None
    if left is None or right is None or left.agrees_with(right):
        return problems
    message = f"cannot compare {left.unit.words} with {right.words}"
    return (FormulaProblem(message, comparison.column, "formula-units"),)


def holds(comparison: Comparison, values: Mapping[str, Value], catalogue: Catalogue) -> bool:
    """Return whether a comparison is true of given values; exact, so == means exactly equal.

    Raises FormulaRefused as evaluate does, and for sides that do not measure the same.
    """
    left = evaluate(comparison.left, values, catalogue)
    right = comparison.right
    if isinstance(right, Formula):
        right = evaluate(right, values, catalogue)
    if not left.unit.agrees_with(right.unit):
        message = f"cannot compare {left.unit.words} with {right.unit.words}"
        raise FormulaRefused(message, comparison.column)
    return _COMPARE[comparison.operator](left.base, right.base)


def held_by(comparison: Comparison, columns: Columns) -> list[bool]:
    """Say of each set of values whether a checked comparison is true of it, as `holds` does.

    What it says of a set that the columns call odd means nothing. Raises NotByColumns.
    """
    left = columns.column(comparison.left.root)
    if isinstance(comparison.right, Formula):
        right = columns.column(comparison.right.root)
    else:
        base = comparison.right.base
        right = columns.column(NumberNode(base, comparison.column))
    compare = _COMPARE[comparison.operator]
    pairs = zip(left.above, left.belows(), right.above, right.belows(), strict=True)
    return [compare(a * d, c * b) for a, b, c, d in pairs]


def _operators_outside_brackets(text: str) -> list[re.Match[str]]:
    # inputs by keyword have their own = inside the brackets of a call
    return [m for m in _OPERATOR.finditer(text) if _depth(text, m.start()) == 0]


def _depth(text: str, end: int) -> int:
    before = text[:end]
    return sum(before.count(c) for c in "([{") - sum(before.count(c) for c in ")]}")


def _right_side(
    text: str, shift: int
) -> tuple[Formula | Quantity | None, tuple[FormulaProblem, ...]]:
    if _MEASURE.fullmatch(text):
        return _measure(text, shift)
    return parse_shifted(text, shift)


def _measure(text: str, shift: int) -> tuple[Quantity | None, tuple[FormulaProblem, ...]]:
    match = _MEASURE.fullmatch(text)
    if match is None:
        hint = "write it like 20 um or 50 percent"
        message = "a number and a unit are expected here"
        return None, (FormulaProblem(message, shift + 1, "formula-syntax", hint),)
    number = exact_number(match[3], shift + match.start(3) + 1)
    if isinstance(number, FormulaProblem):
        return None, (number,)
    try:
        unit = unit_named(match[4])
    except UnknownUnit as error:
        near = f"did you mean '{error.suggestion}'?" if error.suggestion else ""
        hint = near or f"known units are {', '.join(UNITS)}"
        message = f"there is no unit named '{error.name}'"
        column = shift + match.start(4) + 1
        return None, (FormulaProblem(message, column, "formula-name", hint),)
    return Quantity(-number if match[2] else number, unit), ()
