"""The requirements, the answer and the slips of an item, worked out in whole numbers."""

from collections.abc import Mapping
from fractions import Fraction
from typing import Literal

from generator.bank.numbers.numeric_item import PreparedItem, Value
from generator.formulas import Catalogue, Column, Columns, Formula, NotByColumns, held_by


def answers(item: PreparedItem, columns: Columns) -> tuple[Column, ...]:
    """Return the answer, then each slip, in the answer's unit; raises NotByColumns."""
    answer = columns.column(item.answer.root).turned_into(item.unit)
    return (answer, *(_slip(item, place, f, columns) for place, (f, _) in enumerate(item.slips)))


def _slip(item: PreparedItem, place: int, formula: Formula, columns: Columns) -> Column:
    column = columns.column(formula.root)
    return column if place in item.bare_slips else column.turned_into(item.unit)


def worked_alone(
    item: PreparedItem, values: Mapping[str, Value], catalogue: Catalogue
) -> tuple[Fraction, ...] | Literal[False] | None:
    """Return answer and slips for one set of values.

    False where a requirement of the item leaves the set out, and None where it is for the
    evaluator to say what to do.
    """
    grids = {name: (value,) for name, value in values.items()}
    columns = Columns(grids, dict.fromkeys(grids, (0,)), catalogue, 1)
    try:
        for comparison in item.require:
            (holds,) = held_by(comparison, columns)
            if columns.odd or not holds:
                return None if columns.odd else False
        found = tuple(column.fractions()[0] for column in answers(item, columns))
    except NotByColumns:
        return None
    return None if columns.odd else found
