"""The table that goes out with an issue: a row for each form, a column for each question."""

import csv
import re
from collections.abc import Mapping, Sequence
from io import StringIO
from typing import Any

from generator.marking.tables.csv_cells import spreadsheet_safe

COLUMNS = ("form", "label", "person")
# all figures, figures around one E, or a day and a month: a spreadsheet would change these
_TAKEN_FOR_A_NUMBER = re.compile(r"[0-9]+(?:E[0-9]+)?|[0-9]{1,2}[A-Z]{3}[0-9]+")
_GAPS = re.compile(r"[\s\-]+")


def answer_table(forms: Sequence[Mapping[str, Any]]) -> str:
    """Return the table of an issue as comma-separated text, for the answers to be typed in.

    forms  the plain JSON of each form, with its form_id
    The columns are form, label, person, then the numbers of the questions up to the longest form.
    """
    longest = max((len(form["questions"]) for form in forms), default=0)
    written = StringIO()
    writer = csv.writer(written, lineterminator="\r\n")
    writer.writerow(header(longest))
    for form in forms:
        cells = (shown_form_id(form["form_id"]), form["form"], form.get("person", ""))
        writer.writerow([*map(spreadsheet_safe, cells), *[""] * longest])
    return written.getvalue()


def header(questions: int) -> tuple[str, ...]:
    """Return the header of a table with so many questions."""
    return (*COLUMNS, *(str(number) for number in range(1, questions + 1)))


def shown_form_id(form_id: str) -> str:
    """Return an id that a spreadsheet leaves alone: a dash parts what would look like a number."""
    if _TAKEN_FOR_A_NUMBER.fullmatch(form_id) is None:
        return form_id
    return f"{form_id[:4]}-{form_id[4:]}"


def plain_form_id(text: str) -> str:
    """Return a typed id as it is kept: capitals, no spaces or dashes, and O, I and L as figures."""
    plain = _GAPS.sub("", text).upper()
    return plain.replace("O", "0").replace("I", "1").replace("L", "1")
