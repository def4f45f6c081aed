"""Columns of tables: a row of numbers that stands out of the line of the others."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.bank.models import Table
from generator.diagnostics import Problem
from generator.quantities import UNITS, read_number

# fewer rows than these rise or fall by chance
FEWEST_ROWS = 5


def row_out_of_line(bank: Bank) -> Iterator[Problem]:
    """Return the one cell that breaks a column which rises or falls in every other row."""
    for entry in bank.tables.values():
        for at, column in enumerate(entry.record.columns):
            if column.unit in UNITS and not entry.record.rows_from:
                yield from _column(entry, at)


def _column(entry: Entry[Table], at: int) -> Iterator[Problem]:
    cells = [row[at] if at < len(row) else "" for row in entry.record.rows]
    numbers = [number for cell in cells if (number := read_number(cell)) is not None]
    if len(numbers) < max(len(cells), FEWEST_ROWS) or _one_way(numbers):
        return
    breaking = [n for n in range(len(numbers)) if _one_way([*numbers[:n], *numbers[n + 1 :]])]
    if breaking:
        place = max(breaking, key=lambda n: _stands_off(numbers, n))
        message = f"'{cells[place]}' breaks a column that goes one way in every other row"
        hint = "look whether a digit or a point was lost"
        yield entry.problem("warning", "row-out-of-line", message, "rows", place, at, hint=hint)


def _one_way(numbers: Sequence[Fraction]) -> bool:
    pairs = list(zip(numbers, numbers[1:], strict=False))
    return all(a < b for a, b in pairs) or all(a > b for a, b in pairs)


def _stands_off(numbers: Sequence[Fraction], place: int) -> Fraction:
    """Return how far a number lies from the nearer one of its neighbors."""
    beside = [*numbers[max(place - 1, 0) : place], *numbers[place + 1 : place + 2]]
    return min(abs(numbers[place] - number) for number in beside)


RULES = (
    Rule(
        "row-out-of-line",
        "warning",
        "Where every other row of a column rises, the one that does not has most often lost a "
        "digit.",
        "rows:\n  - [80, 32]\n  - [81, 2.79]\n  - [82, 24.3]\n  - [84, 18.4]\n  - [85, 16]",
        "rows:\n  - [80, 32]\n  - [81, 27.9]\n  - [82, 24.3]\n  - [84, 18.4]\n  - [85, 16]",
        row_out_of_line,
    ),
)
