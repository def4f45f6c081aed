"""Sheets of items: each row is a name and its value, as page and paper print them."""

from collections.abc import Iterator

from generator.bank.bank import Bank
from generator.bank.checks.rule import Rule
from generator.diagnostics import Problem


def sheet_shape(bank: Bank) -> Iterator[Problem]:
    """Give rows of sheets that are no pair of cells, and sheets without rows."""
    for entry in bank.items.values():
        sheet = entry.record.sheet
        if sheet is None:
            continue
        if not sheet.rows:
            message = "this sheet has no rows, so nothing of it is printed"
            yield entry.problem("error", "sheet-shape", message, "sheet", "rows")
        for place, row in enumerate(sheet.rows):
            if len(row) != 2:
                cells = {0: "no cell", 1: "1 cell"}.get(len(row), f"{len(row)} cells")
                message = f"this row has {cells}; a row of a sheet is a name and its value"
                yield entry.problem(
                    "error", "sheet-shape", message, "sheet", "rows", place,
                    hint="write [name, value]; a cell that holds a comma needs quotes",
                )  # fmt: skip


RULES = (
    Rule(
        "sheet-shape",
        "error",
        "A sheet is printed in two columns: a third cell would be lost, and a missing one would "
        "move every later row.",
        "rows:\n  - [Add, 18 to 22 s, 4 mm cup]",
        'rows:\n  - [Add, "18 to 22 s, 4 mm cup"]',
        sheet_shape,
    ),
)
