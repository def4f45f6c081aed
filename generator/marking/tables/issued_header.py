"""The header of a filled-in table held against the columns that were issued."""

from collections.abc import Iterator, Sequence

from generator.diagnostics import Place, Problem
from generator.marking.tables.csv_cells import Cell, Row
from generator.marking.tables.issued_table import COLUMNS, header
from generator.marking.tables.table_problems import error


def header_problems(rows: Sequence[Row], path: str, questions: int) -> Iterator[Problem]:
    """Return what a table's header has too much, too little or in another order.

    questions  of the longest form that the table names, or 0 where it names none
    A column that was added is named once, with what to do; the columns behind it are not.
    """
    if not rows:
        yield error(Place(path, 1, 1), "issued-header", "this table is empty")
        return
    given = list(rows[0])
    while given and not given[-1].text:
        given.pop()
    names = [cell.text.casefold() for cell in given]
    wanted = header(max(questions, _counted_up(names), 1))
    added = [n for n, name in enumerate(names) if name not in wanted or name in names[:n]]
    left = [name for n, name in enumerate(names) if n not in added]
    missing = [name for name in wanted if name not in left]
    if missing and len(added) == len(missing):
        yield from (_renamed(given[n], n, name) for n, name in zip(added, missing, strict=True))
        return
    yield from (_added(given[n], n) for n in added)
    if missing:
        yield _missing(rows[0][0], missing, wanted)
    elif left != list(wanted) and not added:
        yield _moved(given, left, wanted)


def _counted_up(names: Sequence[str]) -> int:
    """Count the questions that the header has from 1 on without a gap."""
    number = 0
    while str(number + 1) in names:
        number += 1
    return number


def column_name(place: int) -> str:
    """Return the letters by which a spreadsheet shows a column; the first has the place 0."""
    letters, column = "", place + 1
    while column:
        column, letter = divmod(column - 1, 26)
        letters = chr(ord("A") + letter) + letters
    return letters


def _added(cell: Cell, place: int) -> Problem:
    name = f"'{cell.text}'" if cell.text else "without a name"
    message = f"column {column_name(place)} {name} is not in the table as it was issued"
    return error(cell.place, "issued-header", message, "delete the column")


def _renamed(cell: Cell, place: int, name: str) -> Problem:
    message = f"column {column_name(place)} was '{name}' in the table as it was issued"
    said = f", not '{cell.text}'" if cell.text else " and has no name now"
    return error(cell.place, "issued-header", f"{message}{said}", f"write {name} again")


def _missing(first: Cell, missing: Sequence[str], wanted: Sequence[str]) -> Problem:
    listed = f"column {missing[0]} is" if len(missing) == 1 else f"columns {', '.join(missing)} are"
    hint = f"put back what was deleted: {','.join(wanted[: len(COLUMNS) + 2])},..."
    return error(first.place, "issued-header", f"the {listed} missing", hint)


def _moved(given: Sequence[Cell], left: Sequence[str], wanted: Sequence[str]) -> Problem:
    spot = next(n for n, (one, other) in enumerate(zip(left, wanted, strict=True)) if one != other)
    message = f"column {column_name(spot)} is '{given[spot].text}' and was '{wanted[spot]}'"
    hint = "put the columns back in the order in which they were issued"
    return error(given[spot].place, "issued-header", message, hint)
