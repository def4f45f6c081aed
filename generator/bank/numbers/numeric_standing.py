"""Which of many sets of values an item accepts, found together in whole numbers.

`numeric_solution.solve` says what is right, one set at a time; a set that is not plainly accepted
or left out is for it to look at.
"""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from math import lcm, prod
from typing import Literal

from generator.bank.numbers.numeric_columns import answers
from generator.bank.numbers.numeric_item import PreparedItem
from generator.bank.numbers.numeric_solution import MAY_BE_BELOW_ZERO, MOST_DIGITS
from generator.formulas import Catalogue, Columns, NotByColumns, held_by

Standing = Literal["accepted", "not-required", "look"]
MOST_PLACES = 31
_LOOK: Standing = "look"
# what the direction of rounding must be for the band to be built
_SAFE = {"maximum": "down", "minimum": "up"}


def standings(
    item: PreparedItem, numbers: Sequence[int], catalogue: Catalogue
) -> tuple[Standing, ...]:
    """Say of each set whether it is accepted, left out by a requirement, or to be looked at.

    numbers  of the sets, as `set_at` counts them
    """
    found: list[Standing] = [_LOOK] * len(numbers)
    columns = Columns(item.grids, _picks(item, numbers), catalogue, len(numbers))
    places: Sequence[int] = range(len(numbers))
    try:
        for comparison in item.require:
            held = held_by(comparison, columns)
            sure = [at for at in range(len(places)) if at not in columns.odd]
            for at in sure:
                if not held[at]:
                    found[places[at]] = "not-required"
            kept = [at for at in sure if held[at]]
            places = [places[at] for at in kept]
            columns = columns.only(kept)
        for at in _accepted(item, columns):
            found[places[at]] = "accepted"
    except NotByColumns:
        return tuple(_LOOK for _ in numbers)
    return tuple(found)


def _picks(item: PreparedItem, numbers: Sequence[int]) -> dict[str, list[int]]:
    picks = {}
    size = prod(map(len, item.grids.values()))
    for name, grid in item.grids.items():
        size //= len(grid)
        picks[name] = [number // size % len(grid) for number in numbers]
    return picks


def _accepted(item: PreparedItem, columns: Columns) -> Iterator[int]:
    """Return the places of the sets that `solve` gives a solution for."""
    judge = _Judge(item)
    answer, *slips = answers(item, columns)
    rows = [zip(slip.above, slip.belows(), strict=True) for slip in slips]
    numbers = zip(answer.above, answer.belows(), *rows, strict=True)
    for place, (above, below, *wrong) in enumerate(numbers):
        if place not in columns.odd and judge.accepts(above, below, wrong):
            yield place


class _Judge:
    """The rules of `numeric_solution` in whole numbers, over parts of the rounding step."""

    def __init__(self, item: PreparedItem) -> None:
        step, tolerance = item.step, item.tolerance
        if _SAFE.get(item.limit, item.direction) != item.direction:
            raise NotByColumns
        # twice the step's own, so that half a step is whole
        over = lcm(2 * step.denominator, tolerance.amount.denominator, tolerance.share.denominator)
        self.over = over
        self.step = int(step * over)
        self.amount, self.share = int(tolerance.amount * over), int(tolerance.share * over)
        self.direction, self.limit, self.is_count = item.direction, item.limit, item.is_count
        self.above_zero = item.unit.name not in MAY_BE_BELOW_ZERO
        self.written = _last_figure(step)

    def accepts(self, above: int, below: int, slips: Sequence[tuple[int, int]]) -> bool:
        """Return whether the answer above / below can be keyed and no slip comes near it."""
        steps = self._steps(above, below)
        if steps <= 0 and self.above_zero:
            return False
        if len(str(abs(steps) * self.written).strip("0")) > MOST_DIGITS:
            return False
        low, high = self._band(above, below, steps)
        unit = below * self.over
        printed = {steps}
        for number, under in slips:
            shown = self._steps(number, under)
            rounded = shown * self.step * below
            if shown in printed or low <= rounded <= high:
                return False
            if low * under <= number * unit <= high * under:
                return False
            printed.add(shown)
        return True

    def _steps(self, above: int, below: int) -> int:
        """Round a number to a whole number of steps, and return how many."""
        size, step = above * self.over, below * self.step
        if self.direction == "up":
            return -(-size // step)
        if self.direction == "down":
            return size // step
        nearest = (2 * abs(size) + step) // (2 * step)
        return nearest if size >= 0 else -nearest

    def _band(self, above: int, below: int, steps: int) -> tuple[int, int]:
        """Return the ends of the accepted band, in parts of 1 / (below * over)."""
        key, step = steps * self.step * below, self.step * below
        if self.is_count:
            return key, key
        exact = above * self.over
        reach = self.amount * below + self.share * abs(above)
        if self.limit == "maximum":
            return key - reach, exact
        if self.limit == "minimum":
            return exact, key + reach
        slack = reach
        if self.direction == "half" and (2 * exact - step) % (2 * step) == 0:
            slack = max(reach, step // 2)
        low = exact if self.direction == "up" and reach < step else min(exact - slack, key)
        high = exact if self.direction == "down" and reach < step else max(exact + slack, key)
        return low, high


def _last_figure(step: Fraction) -> int:
    """Return a step as a whole number of its last decimal places; raises NotByColumns."""
    for places in range(MOST_PLACES):
        whole: Fraction = step * 10**places
        if whole.denominator == 1:
            return whole.numerator
    raise NotByColumns
