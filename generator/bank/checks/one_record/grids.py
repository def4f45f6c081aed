"""Allowed values of a given: rising, of one size, and a range that ends where it says."""

import re
from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import cast

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.bank.models import NumericItem, decimal
from generator.bank.nodes import ScalarNode, walk
from generator.diagnostics import Problem

# a range of one job spans four times its start at most; ten is another job or a lost point
WIDEST = 10
# so much farther than its neighbors are from one another stands a value with a lost point
STANDS_OFF = 5
_RANGE = re.compile(r"(\S+) to (\S+) step (\S+)\Z")


def grid_values(bank: Bank) -> Iterator[Problem]:
    """Return grids with a value that stands off from the others or out of order."""
    for entry in bank.items.values():
        if isinstance(entry.record, NumericItem):
            for name, given in entry.record.given.items():
                if given.unit != "ratio":
                    yield from _one_grid(cast("Entry[NumericItem]", entry), name)


def _one_grid(entry: Entry[NumericItem], name: str) -> Iterator[Problem]:
    path = ("given", name, "values")
    written = list(walk(entry.node, path))[-1]
    try:
        values = [decimal(text) for text in entry.record.given[name].values]
    except ValueError:
        # what is no number has a rule of its own
        return
    if isinstance(written, ScalarNode):
        yield from _range(entry, path, written.text.strip())
        return
    hint = "look whether a point was lost; then list the values in rising order"
    for place, (one, other) in enumerate(zip(values, values[1:], strict=False)):
        if other < one:
            message = f"{_said(entry, path, place + 1)} stands after {_said(entry, path, place)}"
            yield entry.problem("warning", "grid-order", message, *path, place + 1, hint=hint)
            return
    far = _far_off(values)
    if far is not None:
        message = f"{_said(entry, path, far)} stands far off from the other values"
        hint = "look whether a point was lost"
        yield entry.problem("warning", "grid-order", message, *path, far, hint=hint)


def _said(entry: Entry[NumericItem], path: tuple[str, str, str], place: int) -> str:
    return entry.record.given[path[1]].values[place]


def _far_off(values: Sequence[Fraction]) -> int | None:
    """Return the place of the first or last value where it alone is of another size."""
    if len(values) < 3 or values[0] <= 0:
        return None
    steps = [after / before for before, after in zip(values, values[1:], strict=False)]
    for far, step, rest in ((0, steps[0], steps[1:]), (len(values) - 1, steps[-1], steps[:-1])):
        if step >= STANDS_OFF and max(rest) < STANDS_OFF / 2:
            return far
    return None


def _range(entry: Entry[NumericItem], path: tuple[str, str, str], text: str) -> Iterator[Problem]:
    match = _RANGE.match(text)
    if match is None:
        return
    first, last, step = map(decimal, match.groups())
    if (last - first) % step:
        message = f"'{text}' never lands on {match[2]}"
        hint = "end the range at a value that it reaches"
        yield entry.problem("warning", "grid-range", message, *path, hint=hint)
    elif first > 0 and last > WIDEST * first:
        message = f"'{text}' spans more than {WIDEST} times its start"
        hint = "look whether a point was lost; a range of one job is narrower"
        yield entry.problem("warning", "grid-range", message, *path, hint=hint)


RULES = (
    Rule(
        "grid-order",
        "warning",
        "Values in rising order and of one size show at once where a point was lost.",
        "wet: {unit: um, values: [60, 700, 80]}",
        "wet: {unit: um, values: [60, 70, 80]}",
        grid_values,
    ),
    Rule(
        "grid-range",
        "warning",
        "A range that never reaches its own end, or that spans ten times its start, has most often "
        "lost or won a nought.",
        "wet: {unit: um, values: 9 to 150 step 10}",
        "wet: {unit: um, values: 90 to 150 step 10}",
    ),
)
