"""A workbook (.xlsx) as the same cells that comma-separated text gives; None in it is run."""

import warnings
from collections.abc import Iterator
from dataclasses import replace
from datetime import date, time, timedelta
from decimal import Decimal
from typing import Any

from generator.diagnostics import Place, Problem
from generator.marking.tables.csv_cells import Cell, Row, plain_cell
from generator.marking.tables.issued_header import column_name
from generator.marking.tables.table_problems import error
from generator.marking.tables.workbook_parts import WorkbookRefused, safely_packed

MOST_ROWS, MOST_COLUMNS = 2_000, 300
_AS_TEXT = "set the column to Text and type the answer again"
_SAVE_AGAIN = "save the table as .xlsx or as CSV in UTF-8"


def read_workbook(data: bytes, path: str) -> tuple[tuple[Row, ...], tuple[Problem, ...]]:
    """Read the one sheet that holds cells; a place is the number of its row and of its column.

    Numbers come as they were typed. Formulas, dates, truth values and errors are problems, and so
    is a file that is no workbook, is locked, holds too much or has cells on two sheets.
    """
    try:
        sheets = _sheets(data)
    except WorkbookRefused as refused:
        return (), (error(Place(path, 1, 1), "spreadsheet-file", str(refused), _SAVE_AGAIN),)
    problems: list[Problem] = []
    rows = tuple(_row(cells, number, path, problems) for number, cells in _used_rows(sheets))
    return rows, tuple(problems)


def cell_name(place: Place) -> str:
    """Return a place in a workbook as the spreadsheet shows it, such as D7."""
    return f"{column_name(place.column - 1)}{place.line}"


def named_cells(problems: tuple[Problem, ...]) -> tuple[Problem, ...]:
    """Return problems whose messages name the cell as well."""
    return tuple(replace(p, message=f"cell {cell_name(p.place)}: {p.message}") for p in problems)


def named_text_cells(rows: tuple[Row, ...], problems: tuple[Problem, ...]) -> tuple[Problem, ...]:
    """Return problems of a table in text form whose messages name the cell as a spreadsheet does.

    What is wrong with a whole row is left as it is.
    """
    names = {
        cell.place: f"{column_name(column)}{cell.place.line}"
        for row in rows
        for column, cell in enumerate(row)
        if column
    }
    return tuple(
        replace(p, message=f"cell {names[p.place]}: {p.message}") if p.place in names else p
        for p in problems
    )


def _sheets(data: bytes) -> list[list[tuple[Any, ...]]]:
    # loaded where it is needed: it costs every other command a tenth of a second
    import openpyxl

    try:
        with warnings.catch_warnings():
            # it warns of styles and of extensions, which hold no answers
            warnings.simplefilter("ignore")
            book = openpyxl.load_workbook(safely_packed(data), read_only=True, keep_links=False)
            sheets = [_cells_of(sheet) for sheet in book.worksheets]
    except WorkbookRefused:
        raise
    # a damaged or locked file makes the libraries raise anything
    except Exception as broken:
        raise WorkbookRefused("this is no workbook, or it is locked or damaged") from broken
    used = [rows for rows in sheets if rows]
    if len(used) > 1:
        raise WorkbookRefused(
            f"{len(used)} sheets of this workbook hold cells; keep the one with answers"
        )
    return used


def _cells_of(sheet: Any) -> list[tuple[Any, ...]]:
    # what the file says of its own size need not be true
    sheet.reset_dimensions()
    rows: list[tuple[Any, ...]] = []
    for cells in sheet.iter_rows(max_row=MOST_ROWS + 1):
        if len(rows) >= MOST_ROWS or len(cells) > MOST_COLUMNS:
            raise WorkbookRefused(
                f"a sheet here has more than {MOST_ROWS} rows or {MOST_COLUMNS} columns"
            )
        rows.append(tuple(cells))
    while rows and all(cell.value in (None, "") for cell in rows[-1]):
        rows.pop()
    return rows


def _used_rows(sheets: list[list[tuple[Any, ...]]]) -> Iterator[tuple[int, tuple[Any, ...]]]:
    for rows in sheets:
        filled = [[place for place, c in enumerate(row, 1) if c.value is not None] for row in rows]
        width = max((places[-1] for places in filled if places), default=0)
        for number, (row, places) in enumerate(zip(rows, filled, strict=True), start=1):
            if places:
                yield number, (*row[:width], *[None] * (width - len(row)))


def _row(cells: tuple[Any, ...], number: int, path: str, problems: list[Problem]) -> Row:
    row = []
    for column, cell in enumerate(cells, start=1):
        place = Place(path, number, column)
        text, rule, message = _text(cell)
        if rule:
            problems.append(
                error(place, rule, message, _AS_TEXT if rule == "spreadsheet-date" else "")
            )
        row.append(Cell(text, place))
    return tuple(row)


def _text(cell: Any) -> tuple[str, str, str]:
    """Return the text of a cell, or the rule that refuses it with its sentence."""
    value = None if cell is None else cell.value
    if value is None:
        return "", "", ""
    if cell.data_type == "f":
        return "", "spreadsheet-formula", "this cell holds a formula"
    if isinstance(value, date | time | timedelta):
        shown = value.isoformat() if isinstance(value, date | time) else str(value)
        return "", "spreadsheet-date", f"the spreadsheet made a date or a time of it: {shown}"
    if cell.data_type == "e" or isinstance(value, bool):
        return "", "spreadsheet-cell", f"'{value}' is neither a text nor a number"
    if isinstance(value, int | float):
        return _number(value, str(cell.number_format)), "", ""
    return plain_cell(" ".join(str(value).split())), "", ""


def _number(value: int | float, shown_as: str) -> str:
    # repr gives the shortest decimal that is this number: what was typed
    exact = Decimal(repr(value))
    percent = "%" in shown_as
    text = format(exact * 100 if percent else exact, "f")
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    return f"{text} %" if percent else text
