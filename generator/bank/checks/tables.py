"""Table records: rows as wide as the columns, look-ups that name columns, units that exist."""

from collections.abc import Iterator

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.bank.records import Table
from generator.bank.table_rows import table_rows
from generator.diagnostics import Problem, did_you_mean
from generator.quantities import UNITS


def table_shape(bank: Bank) -> Iterator[Problem]:
    """Give tables whose rows, columns or look-ups do not fit together."""
    for entry in bank.tables.values():
        yield from _columns(entry)
        yield from _rows(entry)


def _columns(entry: Entry[Table]) -> Iterator[Problem]:
    names = [column.name for column in entry.record.columns]
    for place, column in enumerate(entry.record.columns):
        if column.unit != "text" and column.unit not in UNITS:
            message = f"there is no unit named '{column.unit}'"
            hint = did_you_mean(column.unit, UNITS) or "write 'text' for a column of words"
            path = ("columns", place, "unit")
            yield entry.problem("error", "unknown-unit", message, *path, hint=hint)
    for place, look in enumerate(entry.record.look_up):
        for side, name in (("from", look.from_column), ("to", look.to_column)):
            if name not in names:
                message = f"the table has no column '{name}'"
                path = ("look_up", place, side)
                hint = did_you_mean(name, names)
                yield entry.problem("error", "table-shape", message, *path, hint=hint)


def _rows(entry: Entry[Table]) -> Iterator[Problem]:
    try:
        rows = table_rows(entry)
    except (OSError, ValueError):
        message = f"the relations have no table file '{entry.record.rows_from}'"
        yield entry.problem("error", "table-shape", message, "rows_from")
        return
    if not rows:
        yield entry.problem("error", "table-shape", "the table has no rows", "title")
    width = len(entry.record.columns)
    for place, row in enumerate(rows):
        if len(row) != width:
            cells = "1 cell" if len(row) == 1 else f"{len(row)} cells"
            message = f"this row has {cells} and the table {width} columns"
            yield entry.problem("error", "table-shape", message, "rows", place)


RULES = (
    Rule(
        "table-shape",
        "error",
        "Every row fills every column, and a look-up names columns of the table.",
        "columns: [grade, size]\nrows:\n  - [80]",
        "columns: [grade, size]\nrows:\n  - [80, 201]",
        table_shape,
    ),
)
