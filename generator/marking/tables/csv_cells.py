"""Comma-separated text as cells that know their place (RFC 4180)."""

import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass

from generator.diagnostics import Place, Problem

SEPARATORS = ",;\t"
# a spreadsheet takes a cell that begins so for a formula (OWASP ASVS 1.2.10)
FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r", "\n", "\0")


@dataclass(frozen=True, slots=True)
class Cell:
    """One cell, with the place of its first character."""

    text: str
    place: Place


Row = tuple[Cell, ...]


def read_cells(text: str, path: str) -> tuple[tuple[Row, ...], tuple[Problem, ...]]:
    """Read rows of cells; blank lines, and lines in front that begin with #, are passed over.

    The first row decides whether commas, semicolons or tabs part the cells. Gives the problems of
    stray quotes and control characters with the rows.
    """
    plain = text.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n")
    lines = plain.split("\n")
    notes = 0
    while notes < len(lines) and (lines[notes].startswith("#") or not lines[notes].strip()):
        notes += 1
    header = lines[notes] if notes < len(lines) else ""
    separator = max(SEPARATORS, key=header.count)
    reader = _Reader("\n".join(lines[notes:]), path, separator, notes + 1)
    rows = tuple(row for row in reader.rows() if any(cell.text for cell in row))
    odd = (cell for row in rows for cell in row if _has_controls(cell.text))
    reader.problems += [
        Problem(c.place, "error", "csv-control", "a cell holds a control character") for c in odd
    ]
    return rows, tuple(reader.problems)


def spreadsheet_safe(text: str) -> str:
    """Return a text cell that no spreadsheet runs as a formula: a quote goes in front of it."""
    return f"'{text}" if text.startswith(FORMULA_STARTS) else text


def plain_cell(text: str) -> str:
    """Take off the quote that `spreadsheet_safe` put in front."""
    return text[1:] if text[:1] == "'" and text[1:].startswith(FORMULA_STARTS) else text


def _has_controls(text: str) -> bool:
    return any(unicodedata.category(character) == "Cc" for character in text)


class _Reader:
    """Walks through the text once, counting lines and columns."""

    def __init__(self, text: str, path: str, separator: str, line: int) -> None:
        self.text, self.path, self.separator = text, path, separator
        self.spot, self.line, self.column = 0, line, 1
        self.problems: list[Problem] = []

    def rows(self) -> Iterator[Row]:
        while self.spot < len(self.text):
            row = [self._cell()]
            while self._take(self.separator):
                row.append(self._cell())
            self._take("\n")
            yield tuple(row)

    def _cell(self) -> Cell:
        place = Place(self.path, self.line, self.column)
        quoted = self._take('"')
        text = self._quoted(place) if quoted else ""
        start = self.spot
        while self.spot < len(self.text) and self.text[self.spot] not in (self.separator, "\n"):
            self._step()
        rest = self.text[start : self.spot]
        if '"' in rest or (quoted and rest.strip()):
            message = "a quote stands inside a cell that is not quoted as a whole"
            self.problems.append(Problem(place, "error", "csv-quote", message))
        return Cell(plain_cell((text if quoted else rest).strip()), place)

    def _quoted(self, place: Place) -> str:
        found: list[str] = []
        while self.spot < len(self.text):
            if self._take('"'):
                if not self._take('"'):
                    return "".join(found)
                found.append('"')
            else:
                found.append(self.text[self.spot])
                self._step()
        self.problems.append(
            Problem(place, "error", "csv-quote", "a quoted cell is never closed", 'write " behind')
        )
        return "".join(found)

    def _take(self, character: str) -> bool:
        there = self.text.startswith(character, self.spot)
        if there:
            self._step()
        return there

    def _step(self) -> None:
        ends = self.text[self.spot] == "\n"
        self.line, self.column = (self.line + 1, 1) if ends else (self.line, self.column + 1)
        self.spot += 1
