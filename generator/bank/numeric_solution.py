"""Solving a numeric item for one set of values: the key, the band, and where each slip lands."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from itertools import product

from generator.bank.numeric_item import PreparedItem, Value
from generator.diagnostics import OutsideValidity
from generator.formulas import Catalogue, FormulaRefused, evaluate, holds
from generator.quantities import Band, Quantity, Unit, acceptance_band, number_text, round_to_step

MOST_DIGITS = 7


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
    slip     the number of the slip it is about, or nothing
    """

    rule: str
    message: str
    slip: int | None = None


def solve(
    item: PreparedItem, values: Mapping[str, Value], catalogue: Catalogue
) -> Solution | Refusal:
    """Return the solution for a set of values, or why the set is refused."""
    try:
        if not all(holds(comparison, values, catalogue) for comparison in item.require):
            return Refusal("not-required", "the item's own requirement leaves these values out")
        exact = _in_unit(evaluate(item.answer, values, catalogue), item.unit)
        slips = tuple(
            (_in_unit(evaluate(formula, values, catalogue), item.unit), says)
            for formula, says in item.slips
        )
    except (FormulaRefused, OutsideValidity) as error:
        return Refusal("outside-validity", str(error))
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
    if key <= 0 and item.unit.name not in ("degC", "degF", "K", "degF_diff"):
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


def corners(item: PreparedItem) -> Iterator[Mapping[str, Value]]:
    """Return every set made of the first and last value of each grid."""
    ends = [dict.fromkeys((grid[0], grid[-1])) for grid in item.grids.values()]
    for combination in product(*ends):
        yield dict(zip(item.grids, combination, strict=True))


def all_sets(item: PreparedItem) -> Iterator[Mapping[str, Value]]:
    """Return every set of values of the grids."""
    for combination in product(*item.grids.values()):
        yield dict(zip(item.grids, combination, strict=True))


def set_count(item: PreparedItem) -> int:
    """Count the sets of values of the grids."""
    count = 1
    for grid in item.grids.values():
        count *= len(grid)
    return count
