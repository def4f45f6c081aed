"""Numeric questions: values drawn from a label, refused where a slip would pass, then solved."""

from collections.abc import Collection, Mapping
from fractions import Fraction
from itertools import islice

from generator.bank import Entry, PreparedItem, Solution, Value, all_sets, prepare, solve
from generator.bank.models import NumericItem
from generator.quantities import Band, number_text, quantity_text, round_to_step
from generator.questions.drawing.handed_out import Draw
from generator.questions.drawing.seeded_random import SeededRandom
from generator.questions.drawing.working import value_text, working_lines
from generator.questions.question import NumericKey, SolvedSlip
from generator.refinishing import CATALOGUE

MOST_ATTEMPTS = 200
MOST_WALKED = 2000


class NothingToDraw(ValueError):
    """An item for which no set of values was accepted."""


def prepared(entry: Entry[NumericItem]) -> PreparedItem:
    """Return the item ready to draw; raises NothingToDraw where its formulas have problems."""
    item, problems = prepare(entry, CATALOGUE)
    if item is None:
        raise NothingToDraw(f"{entry.name}: {problems[0].message}")
    return item


def draw_solution(
    item: PreparedItem, salt: str, form: str, taken: Collection[Draw] = ()
) -> Solution:
    """Return the solution for the first accepted set of values of a form.

    salt   the edition, so that a new edition draws new values
    form   the form's label
    taken  draws already given away, which are passed over while others can be had
    Each value is a function of (salt, form, item, name, attempt) alone. Where chance meets only
    taken draws, the first free one of the grid is given.
    """
    met: set[tuple[int, ...]] = set()
    passed: list[Mapping[str, Value]] = []
    for attempt in range(MOST_ATTEMPTS):
        places = _drawn_places(item, salt, form, attempt)
        if places in met:
            # it was refused or taken before, and would be again
            continue
        met.add(places)
        values = _values_at(item, places)
        if draw_of(values) in taken:
            passed.append(values)
            continue
        solution = solve(item, values, CATALOGUE)
        if isinstance(solution, Solution):
            return solution
    solved = (solve(item, values, CATALOGUE) for values in passed)
    spare = next((solution for solution in solved if isinstance(solution, Solution)), None)
    if spare is None:
        raise NothingToDraw(f"{item.name}: no accepted values in {MOST_ATTEMPTS} attempts")
    return _first_free(item, taken) or spare


def _first_free(item: PreparedItem, taken: Collection[Draw]) -> Solution | None:
    for values in islice(all_sets(item), MOST_WALKED):
        if draw_of(values) not in taken:
            solution = solve(item, values, CATALOGUE)
            if isinstance(solution, Solution):
                return solution
    return None


def drawn_values(item: PreparedItem, salt: str, form: str, attempt: int) -> Mapping[str, Value]:
    """Return the values of an attempt, functions of (salt, form, item, name, attempt) alone."""
    return _values_at(item, _drawn_places(item, salt, form, attempt))


def _drawn_places(item: PreparedItem, salt: str, form: str, attempt: int) -> tuple[int, ...]:
    """Return which value of each grid an attempt draws, counted from 0."""
    return tuple(
        SeededRandom(salt, form, item.name, name, str(attempt)).below(len(grid))
        for name, grid in item.grids.items()
    )


def _values_at(item: PreparedItem, places: tuple[int, ...]) -> Mapping[str, Value]:
    return {
        name: grid[place] for (name, grid), place in zip(item.grids.items(), places, strict=True)
    }


def draw_of(values: Mapping[str, Value]) -> Draw:
    """Return the drawn values as text, for the record and for comparing draws."""
    return tuple((name, value_text(value)) for name, value in values.items())


def numeric_key(item: PreparedItem, solution: Solution, says: str) -> NumericKey:
    """Return the key of a solved draw, with working and slips in words."""
    return NumericKey(
        exact=solution.exact,
        shown=number_text(solution.key, item.step),
        unit=item.unit,
        step=item.step,
        band=solution.band,
        band_text=band_text(item, solution.band),
        working=working_lines(item, solution.values, solution.exact),
        slips=tuple(_slip(item, value, says) for value, says in solution.slips),
        feedback=says,
    )


def _slip(item: PreparedItem, value: Fraction, says: str) -> SolvedSlip:
    rounded = round_to_step(value, item.step, item.direction)
    half = item.step / 2
    low, high = min(value, rounded) - half, max(value, rounded) + half
    return SolvedSlip(number_text(rounded, item.step), Band(low, high), says)


def band_text(item: PreparedItem, band: Band) -> str:
    """Say which answers pass."""
    if band.low == band.high and band.low is not None:
        return f"{quantity_text(band.low, item.unit, item.step)} only"
    step = item.step / 10
    low = "" if band.low is None else number_text(round_to_step(band.low, step, "up"), step)
    high = "" if band.high is None else number_text(round_to_step(band.high, step, "down"), step)
    symbol = f"\u00a0{item.unit.symbol}" if item.unit.symbol else ""
    side = {"maximum": ", nothing above", "minimum": ", nothing below", "none": ""}[item.limit]
    return f"{low} to {high}{symbol}{side}"
