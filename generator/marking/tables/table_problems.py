"""What can be wrong with a table of answers or with its key."""

from collections.abc import Iterable, Iterator, Sequence

from generator.diagnostics import Place, Problem
from generator.marking.tables.csv_cells import FORMULA_STARTS, Cell, Row
from generator.quantities import read_number

KEY_COLUMNS = ("item", "key")


def table_problems(rows: Sequence[Row], path: str) -> Iterator[Problem]:
    """Return every problem of a table of answers."""
    if len(rows) < 2 or len(rows[0]) < 2:
        message = "a table of answers needs a header with items, and a row for each person"
        yield error(Place(path, 1, 1), "empty-table", message)
        return
    header, *body = rows
    yield from _named(header[1:], "item")
    yield from _named([row[0] for row in body], "person")
    yield from width_problems(rows)
    yield from _formulas(cell for row in rows for cell in row)


def key_problems(rows: Sequence[Row], path: str) -> Iterator[Problem]:
    """Return every problem of a key."""
    if not rows or tuple(cell.text.lower() for cell in rows[0]) != KEY_COLUMNS:
        place = rows[0][0].place if rows else Place(path, 1, 1)
        yield error(place, "key-header", "a key begins with the header item,key")
        return
    if len(rows) == 1:
        yield error(rows[0][0].place, "empty-table", "the key has no item")
    yield from _named([row[0] for row in rows[1:]], "item")
    yield from width_problems(rows)
    for row in rows[1:]:
        if len(row) == len(KEY_COLUMNS) and not row[1].text:
            yield error(row[1].place, "empty-key", f"item '{row[0].text}' has no key")
    yield from _formulas(cell for row in rows for cell in row)


def _named(cells: Iterable[Cell], what: str) -> Iterator[Problem]:
    first: dict[str, Place] = {}
    for cell in cells:
        if not cell.text:
            yield error(cell.place, "no-name", f"this {what} has no name")
        elif cell.text in first:
            line = first[cell.text].line
            where = (
                f"line {line}" if line != cell.place.line else f"column {first[cell.text].column}"
            )
            message = f"{what} '{cell.text}' is there already, in {where}"
            yield error(cell.place, f"repeated-{what}", message)
        else:
            first[cell.text] = cell.place


def width_problems(rows: Sequence[Row]) -> Iterator[Problem]:
    """Return the rows that have other cells than the header has."""
    width = len(rows[0])
    for row in rows[1:]:
        if len(row) != width:
            message = f"this row has {len(row)} cells, the header has {width}"
            yield error(row[0].place, "ragged-row", message, "an answer left out is an empty cell")


def _formulas(cells: Iterable[Cell]) -> Iterator[Problem]:
    for cell in cells:
        if cell.text.startswith(FORMULA_STARTS) and read_number(cell.text) is None:
            message = f"'{cell.text}' would run as a formula in a spreadsheet; here it is text"
            yield Problem(cell.place, "warning", "formula-cell", message)


def error(place: Place, rule: str, message: str, hint: str = "") -> Problem:
    """Return a problem that stops the analysis."""
    return Problem(place, "error", rule, message, hint)
