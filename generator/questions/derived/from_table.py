"""Questions that ask the learner to look a value up in a published table."""

from collections.abc import Sequence
from fractions import Fraction

from generator.bank import Bank, Entry, table_rows
from generator.bank.models import Table
from generator.quantities import Band, number_text, read_number, unit_named
from generator.questions.drawing import SeededRandom, lettered
from generator.questions.question import Derived, Exhibit, Key, NumericKey, SolvedSlip

NEIGHBOURS = 2


def look_up(
    bank: Bank, entry: Entry[Table], stream: SeededRandom
) -> tuple[Derived, Exhibit] | None:
    """Print the table and ask for one value of it."""
    table, rows = entry.record, table_rows(entry)
    names = [column.name for column in table.columns]
    cases = _cases(table, rows)
    if not cases:
        return None
    given, wanted, row = stream.choose(cases)
    key = _key(table, rows, row, given, wanted, stream)
    unit = _unit_words(table, wanted)
    stem = (
        f"Use the table '{table.title}'. What is the {_lower(names[wanted])}{unit} for "
        f"{_row_words(names[given], rows[row][given])}?"
    )
    kind = "numeric" if isinstance(key, NumericKey) else "choice"
    return Derived(kind, "apply", stem, key), Exhibit(table.title, tuple(names), tuple(rows))


def _cases(table: Table, rows: Sequence[tuple[str, ...]]) -> list[tuple[int, int, int]]:
    """Return column given, column wanted and row of every look-up with one clear answer.

    A table asks for one kind of answer, so that a plan can count on it: numbers where it has any.
    """
    names = [column.name for column in table.columns]
    clear = [
        (names.index(asked.from_column), names.index(asked.to_column), row)
        for asked in table.look_up
        for row in range(len(rows))
    ]
    clear = [case for case in clear if _is_clear(rows, *case)]
    return [case for case in clear if _number(table, rows, *case[1:]) is not None] or clear


def _is_clear(rows: Sequence[tuple[str, ...]], given: int, wanted: int, row: int) -> bool:
    times = sum(other[given] == rows[row][given] for other in rows)
    return times == 1 and len(_neighbours(rows, row, wanted)) == NEIGHBOURS


def _number(
    table: Table, rows: Sequence[tuple[str, ...]], wanted: int, row: int
) -> Fraction | None:
    return None if table.columns[wanted].unit == "text" else read_number(rows[row][wanted])


def _key(
    table: Table,
    rows: Sequence[tuple[str, ...]],
    row: int,
    given: int,
    wanted: int,
    s: SeededRandom,
) -> Key:
    value = _number(table, rows, wanted, row)
    near = _neighbours(rows, row, wanted)
    if value is None:
        others = [(rows[i][wanted], False, _row_says(table, rows[i], given)) for i in near]
        return lettered([(rows[row][wanted], True, "Read straight across the row."), *others], s)
    step = _last_place(rows[row][wanted])
    unit = unit_named(table.columns[wanted].unit)
    slips = tuple(
        SolvedSlip(rows[i][wanted], Band(number, number), _row_says(table, rows[i], given))
        for i in near
        if (number := read_number(rows[i][wanted])) is not None
    )
    shown = number_text(value)
    symbol = f"\u00a0{unit.symbol}" if unit.symbol else ""
    line = f"{table.columns[given].name} {rows[row][given]}: {shown}{symbol}"
    return NumericKey(
        exact=value,
        shown=shown,
        unit=unit,
        step=step,
        band=Band(value, value),
        band_text=f"{shown}{symbol} only",
        working=(line,),
        slips=slips,
        feedback="Read straight across the row.",
    )


def _neighbours(rows: Sequence[tuple[str, ...]], row: int, wanted: int) -> list[int]:
    order = sorted(range(len(rows)), key=lambda i: (abs(i - row), i))
    seen = {rows[row][wanted]}
    near: list[int] = []
    for i in order:
        if rows[i][wanted] not in seen and len(near) < NEIGHBOURS:
            seen.add(rows[i][wanted])
            near.append(i)
    return near


def _row_says(table: Table, row: tuple[str, ...], given: int) -> str:
    return f"That is the row for {_row_words(table.columns[given].name, row[given])}."


def _row_words(column: str, value: str) -> str:
    """Name a row by its cell: a figure with the name of its column, a word as it stands."""
    return f"{_lower(column)} {value}" if value[:1].isdigit() else f"'{value}'"


def _last_place(text: str) -> Fraction:
    _, point, decimals = text.partition(".")
    return Fraction(1, 10 ** len(decimals)) if point else Fraction(1)


def _unit_words(table: Table, column: int) -> str:
    name = table.columns[column].unit
    if name in ("text", "one"):
        return ""
    return f" in {unit_named(name).symbol}"


def _lower(text: str) -> str:
    return text if len(text) > 1 and not text[1].islower() else text[:1].lower() + text[1:]
