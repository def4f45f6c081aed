"""Choose type size, way of the paper and forms per page, so that a class has one page if it can."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil
from typing import Any, Final

# Letters of an order or a match on one line of a cell.
LETTERS = 4
# Sizes in points, best first; below the last a key is no longer quick to read.
_SIZES: Final = (10.0, 9.0, 8.0, 7.0)
_SEVERAL_PAGES: Final = 9.0
_LARGE: Final = 18.0
_MM: Final = 25.4 / 72
# Widths of the bold face as shares of its size; a letter counts as the widest from A to H.
_WIDTHS: Final = {"0123456789": 0.567, ".": 0.25, "*": 0.4}
_WIDEST: Final = 0.683
# A sign of the typewriter face, in a head and in small print; the word must in small print.
_HEAD, _FOOT, _MUST = 0.58, 0.58 * 0.75, 1.75
# In mm: margins at both sides; both ends of a row; what a cell adds to its text.
_MARGINS, _ENDS, _PADDING = 20.0, 24.0, 1.1
# In mm: margins with the foot; title, head row, totals and legend.
_ABOVE_BELOW, _AROUND = 38.0, 32.0
# Heights in shares of the size: a letter, a further line, the small print under it, what a row
# and a frame add, and the head row with both rows of totals.
_LETTER, _LINE, _SMALL, _ROW, _FRAME, _TOTALS = 0.72, 1.02, 0.85, 0.74, 0.48, 8.0


@dataclass(frozen=True, slots=True)
class Cell:
    """What a form has at one number.

    lines  of the answer, each a few signs
    must   whether the question must be right
    marks  of the question, where the row does not tell them
    """

    lines: tuple[str, ...]
    must: bool = False
    marks: str = ""


@dataclass(frozen=True, slots=True)
class Sheet:
    """Width and height of upright paper in mm."""

    width: float
    height: float


@dataclass(frozen=True, slots=True)
class Head:
    """What stands above and below the answers of a form: its label, and pass and all marks."""

    label: str
    of: str = ""


Rows = Sequence[Sequence[Cell]]


def layout_of(rows: Rows, forms: Sequence[Head], sheet: Sheet, large_print: bool) -> dict[str, Any]:
    """Return size in points, whether the paper lies on its side, and the forms of each table.

    The largest size that holds the class on one page is taken, upright paper first. Where none
    does, the forms are spread evenly over tables, the way round that needs fewer pages.
    """
    widest, count = _widest(rows, forms), len(forms)
    ways = ((False, sheet), (True, Sheet(sheet.height, sheet.width)))
    for size in (_LARGE,) if large_print else _SIZES:
        for flipped, paper in ways:
            if _across(widest, size, paper) >= count and _height(rows, size) <= paper.height:
                return {"size": size, "flipped": flipped, "tables": [count]}
    size = _LARGE if large_print else _SEVERAL_PAGES
    tables, flipped = min(
        ((ceil(count / max(1, _across(widest, size, paper))), way) for way, paper in ways),
        key=lambda tried: tried[0] * _pages(rows, size, ways[tried[1]][1]),
    )
    even, more = divmod(count, tables)
    return {
        "size": size,
        "flipped": flipped,
        "tables": [even + (table < more) for table in range(tables)],
    }


def lines_of_letters(letters: Sequence[str]) -> tuple[str, ...]:
    """Write letters in one line, or in two of even length."""
    half = len(letters) if len(letters) <= LETTERS else -(-len(letters) // 2)
    lines = [letters[start : start + half] for start in range(0, len(letters), half or 1)]
    return tuple("".join(line) for line in lines) or ("",)


def _pages(rows: Rows, size: float, paper: Sheet) -> int:
    around = _ABOVE_BELOW + _AROUND
    return ceil((_height(rows, size) - around) / (paper.height - around))


def _across(widest: float, size: float, paper: Sheet) -> int:
    return int((paper.width - _MARGINS - _ENDS * size / 10) / (widest * size * _MM + _PADDING))


def _widest(rows: Rows, forms: Sequence[Head]) -> float:
    """Return the width of the widest column as a share of the size of type."""
    cells = [cell for row in rows for cell in row]
    return max(
        *(_width(line) for cell in cells for line in cell.lines),
        *(_MUST for cell in cells if cell.must),
        *(_HEAD * len(form.label) for form in forms),
        *(_FOOT * len(form.of) for form in forms),
    )


def _width(text: str) -> float:
    return sum(next((w for signs, w in _WIDTHS.items() if s in signs), _WIDEST) for s in text)


def _height(rows: Rows, size: float) -> float:
    return _ABOVE_BELOW + _AROUND + (sum(map(_row, rows)) + _TOTALS) * size * _MM


def _row(row: Sequence[Cell]) -> float:
    return _ROW + _LETTER + max(map(_cell, row))


def _cell(cell: Cell) -> float:
    small = _SMALL if cell.must or cell.marks else 0
    return (len(cell.lines) - 1) * _LINE + small + (_FRAME if cell.must else 0)
