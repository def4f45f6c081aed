"""Published tables that ship beside the relations, read once from tab-separated files."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from importlib.resources import files
from types import MappingProxyType


@dataclass(frozen=True, slots=True)
class PublishedTable:
    """A table as printed.

    remarks  what the file says of itself: source (key of sources.yml), table, unit, read
    columns  headings, in order
    rows     cells as text, exactly as printed
    """

    remarks: Mapping[str, str]
    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]

    def pairs(self) -> Mapping[Fraction, Fraction]:
        """Return the first column beside the second as exact numbers, in printed order."""
        return MappingProxyType({Fraction(row[0]): Fraction(row[1]) for row in self.rows})


@cache
def published_table(name: str) -> PublishedTable:
    """Read a table by its file name without the ending; raise FileNotFoundError for none."""
    lines = files("generator.refinishing").joinpath("tables", f"{name}.tsv").read_text("utf-8")
    remarks: dict[str, str] = {}
    cells: list[tuple[str, ...]] = []
    for line in lines.splitlines():
        if line.startswith("# "):
            key, _, text = line[2:].partition(": ")
            remarks[key] = text
        elif line:
            cells.append(tuple(line.split("\t")))
    return PublishedTable(MappingProxyType(remarks), cells[0], tuple(cells[1:]))
