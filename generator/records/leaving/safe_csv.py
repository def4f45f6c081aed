"""Tables for spreadsheets in which no cell can run as a formula."""

import csv
from collections.abc import Iterable, Sequence
from functools import lru_cache
from io import StringIO

from generator.marking import spreadsheet_safe

# wide forms of = + - @ are read as the plain ones by some spreadsheets
WIDE = ("\uff1d", "\uff0b", "\uff0d", "\uff20")


def table_text(header: Sequence[str], rows: Iterable[Sequence[str]]) -> str:
    """Return a comma-separated table (RFC 4180) with every cell quoted and defused."""
    written = StringIO()
    writer = csv.writer(written, quoting=csv.QUOTE_ALL, lineterminator="\r\n")
    writer.writerow([defused(cell) for cell in header])
    writer.writerows([defused(cell) for cell in row] for row in rows)
    return written.getvalue()


# a pack may hold a million cells, and most say what the ones near them say
@lru_cache(maxsize=1000)
def defused(cell: str) -> str:
    """Return a cell on one line that no spreadsheet takes for a formula."""
    if cell[:1].isalnum() and cell.isprintable():
        return cell
    flat = " ".join(cell.split()) if not cell.isprintable() else cell
    plain = "".join(character for character in flat if character.isprintable())
    if plain.lstrip().startswith(WIDE):
        return f"'{plain}"
    return plain if spreadsheet_safe(plain.lstrip()) == plain.lstrip() else f"'{plain}"
