"""Table records: rows as wide as the columns, no row against another, numbers among numbers."""

from collections.abc import Iterator, Sequence

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.bank.models import Table
from generator.bank.table_rows import table_rows
from generator.diagnostics import Problem, did_you_mean, normal
from generator.quantities import UNITS, read_number


def table_shape(bank: Bank) -> Iterator[Problem]:
    """Return tables whose rows, columns or look-ups do not fit together."""
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


Rows = Sequence[tuple[str, ...]]


def _whole_rows(entry: Entry[Table]) -> Rows:
    """Return the rows of a table, or none where another rule speaks of their shape."""
    try:
        rows = table_rows(entry)
    except (OSError, ValueError):
        return ()
    width = len(entry.record.columns)
    return rows if all(len(row) == width for row in rows) else ()


def _same(cell: str) -> object:
    """Return what a cell is compared by: 81 and 81.0 are one number."""
    number = read_number(cell)
    return normal(cell) if number is None else number


def rows_agree(bank: Bank) -> Iterator[Problem]:
    """Return rows that appear twice, and rows that answer one look-up in two ways."""
    for entry in bank.tables.values():
        rows = _whole_rows(entry)
        whole: dict[tuple[object, ...], int] = {}
        twice = set()
        for place, row in enumerate(rows):
            first = whole.setdefault(tuple(map(_same, row)), place)
            if first != place:
                twice.add(place)
                yield _row_problem(entry, place, f"this row appears again, after row {first + 1}")
        yield from _contradictions(entry, rows, twice)


def _contradictions(entry: Entry[Table], rows: Rows, twice: set[int]) -> Iterator[Problem]:
    names = [column.name for column in entry.record.columns]
    said = set(twice)
    for look in entry.record.look_up:
        if look.from_column not in names:
            continue
        given = names.index(look.from_column)
        seen: dict[object, int] = {}
        for place, row in enumerate(rows):
            first = seen.setdefault(_same(row[given]), place)
            if first != place and place not in said:
                said.add(place)
                message = f"row {first + 1} answers for this '{look.from_column}' already"
                yield _row_problem(entry, place, message)


def _row_problem(entry: Entry[Table], place: int, message: str) -> Problem:
    path = ("rows_from",) if entry.record.rows_from else ("rows", place)
    hint = "keep the row that the source prints"
    return entry.problem("error", "rows-agree", message, *path, hint=hint)


def column_repeated(bank: Bank) -> Iterator[Problem]:
    """Return columns with a name that an earlier column has."""
    for entry in bank.tables.values():
        seen: dict[str, int] = {}
        for place, column in enumerate(entry.record.columns):
            first = seen.setdefault(normal(column.name), place)
            if first != place:
                message = f"column {first + 1} is named '{column.name}' already"
                path = ("columns", place, "name")
                yield entry.problem("error", "column-repeated", message, *path)


def words_among_numbers(bank: Bank) -> Iterator[Problem]:
    """Return cells of words in a column that has a unit."""
    for entry in bank.tables.values():
        for place, row in enumerate(_whole_rows(entry)):
            for at, (column, cell) in enumerate(zip(entry.record.columns, row, strict=True)):
                if column.unit in UNITS and read_number(cell) is None:
                    message = f"'{cell}' is no number, and the column is in {column.unit}"
                    yield entry.problem(
                        "error", "words-among-numbers", message,
                        *(("rows_from",) if entry.record.rows_from else ("rows", place, at)),
                        hint="write the number alone, or give the column the unit 'text'",
                    )  # fmt: skip


RULES = (
    Rule(
        "table-shape",
        "error",
        "Every row fills every column, and a look-up names columns of the table.",
        "columns: [grade, size]\nrows:\n  - [80]",
        "columns: [grade, size]\nrows:\n  - [80, 201]",
        table_shape,
    ),
    Rule(
        "rows-agree",
        "error",
        "A table answers each look-up in one way; where two rows differ, one of them is wrong.",
        "rows:\n  - [81, 27.9]\n  - [81, 21]",
        "rows:\n  - [81, 27.9]\n  - [82, 24.3]",
        rows_agree,
    ),
    Rule(
        "column-repeated",
        "error",
        "A question names the column to read, so no two columns share a name.",
        "columns:\n  - {name: Limit, unit: ppm}\n  - {name: Limit, unit: mg/m3}",
        "columns:\n  - {name: Limit by volume, unit: ppm}\n  - {name: Limit by mass, unit: mg/m3}",
        column_repeated,
    ),
    Rule(
        "words-among-numbers",
        "error",
        "A column with a unit is asked for as a number, and words in it cannot be keyed.",
        "columns: [{name: Limit, unit: ppm}, ...]\nrows:\n  - [see sheet, ...]",
        "columns: [{name: Limit, unit: text}, ...]\nrows:\n  - [see sheet, ...]",
        words_among_numbers,
    ),
)
