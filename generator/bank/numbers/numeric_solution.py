"""Solving a numeric item for one set of values: the key, the band, and where each slip lands."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import product
from math import prod

from generator.bank.numbers.numeric_columns import worked_alone
from generator.bank.numbers.numeric_item import PreparedItem, Value
from generator.diagnostics import OutsideValidity
from generator.formulas import Catalogue, FormulaRefused, evaluate, holds
from generator.quantities import Band, Quantity, Unit, acceptance_band, number_text, round_to_step

MOST_DIGITS = 7
MAY_BE_BELOW_ZERO = ("degC", "degF", "K", "degF_diff")


@dataclass(frozen=True, slots=True)
class Solution:
    """What a set of values leads to; all numbers are in the answer's unit."""

    values: Mapping[str, Value]
    exact: Fraction
    key: Fraction
    band: Band
    slips: tuple[tuple[Fraction, str], ...]


@dataclass(frozen=True, slots=True)
class Refusal:
    """Why a set of values is not used.

    rule     not-required, outside-validity, slip-in-band, slips-alike or ugly-number
    message  one sentence
    slip     the number of the slip it is about, or None
    """

    rule: str
    message: str
    slip: int | None = None


def solve(
    item: PreparedItem, values: Mapping[str, Value], catalogue: Catalogue
) -> Solution | Refusal:
    """Return the solution for a set of values, or why the set is refused."""
    worked = worked_alone(item, values, catalogue)
    if worked is None:
        return solve_by_evaluator(item, values, catalogue)
    if worked is False:
        return _not_required()
    exact, *wrong = worked
    return _outcome(item, values, exact, wrong)


def solve_by_evaluator(
    item: PreparedItem, values: Mapping[str, Value], catalogue: Catalogue
) -> Solution | Refusal:
    """Return what `solve` does, part by part as the formulas stand; slower, and the oracle."""
    try:
        if not all(holds(comparison, values, catalogue) for comparison in item.require):
            return _not_required()
        exact = _in_unit(evaluate(item.answer, values, catalogue), item.unit)
        wrong = [
            _in_unit(evaluate(formula, values, catalogue), item.unit) for formula, _ in item.slips
        ]
    except (FormulaRefused, OutsideValidity) as error:
        return Refusal("outside-validity", str(error))
    return _outcome(item, values, exact, wrong)


def _not_required() -> Refusal:
    return Refusal("not-required", "the item's own requirement leaves these values out")


def _outcome(
    item: PreparedItem, values: Mapping[str, Value], exact: Fraction, wrong: Sequence[Fraction]
) -> Solution | Refusal:
    slips = tuple(zip(wrong, (says for _, says in item.slips), strict=True))
    key = round_to_step(exact, item.step, item.direction)
    band = _band(item, exact, key)
    return _refused(item, key, band, slips) or Solution(values, exact, key, band, slips)


def _in_unit(result: Quantity, unit: Unit) -> Fraction:
    if result.unit.agrees_with(unit):
        return result.to(unit).number
    return result.base


def _band(item: PreparedItem, exact: Fraction, key: Fraction) -> Band:
    if item.is_count:
        return Band(key, key)
    tolerance = item.tolerance.around(exact)
    return acceptance_band(exact, item.step, item.direction, tolerance, item.limit)


def _refused(
    item: PreparedItem, key: Fraction, band: Band, slips: tuple[tuple[Fraction, str], ...]
) -> Refusal | None:
    shown = number_text(key, item.step)
    if key <= 0 and item.unit.name not in MAY_BE_BELOW_ZERO:
        return Refusal("ugly-number", f"the answer is {shown}, which no learner can meet in a shop")
    if len(shown.replace(".", "").strip("-0")) > MOST_DIGITS:
        return Refusal("ugly-number", f"the answer {shown} has too many figures")
    printed = {shown}
    for number, (value, _) in enumerate(slips):
        rounded = round_to_step(value, item.step, item.direction)
        text = number_text(rounded, item.step)
        if band.holds(value) or band.holds(rounded) or text == shown:
            return Refusal("slip-in-band", f"slip {number + 1} gives {text}, which passes", number)
        if text in printed:
            return Refusal("slips-alike", f"two slips both print as {text}", number)
        printed.add(text)
    return None


def corner_numbers(item: PreparedItem) -> tuple[int, ...]:
    """Return the number of every set made of the first and last value of each grid."""
    numbers = [0]
    for grid in item.grids.values():
        ends = dict.fromkeys((0, len(grid) - 1))
        numbers = [number * len(grid) + end for number in numbers for end in ends]
    return tuple(numbers)


def set_at(item: PreparedItem, number: int) -> Mapping[str, Value]:
    """Return the set of values with a number, counted from 0 in the order of `all_sets`."""
    picked: dict[str, Value] = {}
    for name, grid in reversed(tuple(item.grids.items())):
        number, place = divmod(number, len(grid))
        picked[name] = grid[place]
    return dict(reversed(tuple(picked.items())))


def corners(item: PreparedItem) -> Iterator[Mapping[str, Value]]:
    """Return every set made of the first and last value of each grid."""
    return (set_at(item, number) for number in corner_numbers(item))


def all_sets(item: PreparedItem) -> Iterator[Mapping[str, Value]]:
    """Return every set of values of the grids."""
    for combination in product(*item.grids.values()):
        yield dict(zip(item.grids, combination, strict=True))


def set_count(item: PreparedItem) -> int:
    """Count the sets of values of the grids."""
    return prod(map(len, item.grids.values()))
