"""Tables for spreadsheets in which no cell can run as a formula."""

import csv
from collections.abc import Iterable, Sequence
from io import StringIO

from generator.marking import spreadsheet_safe

# wide forms of = + - @ are read as the plain ones by some spreadsheets
WIDE = ("\uff1d", "\uff0b", "\uff0d", "\uff20")


def table_text(header: Sequence[str], rows: Iterable[Sequence[str]]) -> str:
    """Give a comma-separated table (RFC 4180) with every cell quoted and defused."""
    written = StringIO()
    writer = csv.writer(written, quoting=csv.QUOTE_ALL, lineterminator="\r\n")
    writer.writerow([defused(cell) for cell in header])
    writer.writerows([defused(cell) for cell in row] for row in rows)
    return written.getvalue()


def defused(cell: str) -> str:
    """Give a cell on one line that no spreadsheet takes for a formula."""
    flat = " ".join(cell.split()) if not cell.isprintable() else cell
    plain = "".join(character for character in flat if character.isprintable())
    if plain.lstrip().startswith(WIDE):
        return f"'{plain}"
    return plain if spreadsheet_safe(plain.lstrip()) == plain.lstrip() else f"'{plain}"
