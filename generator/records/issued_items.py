"""Which items stand on the forms of an issue, and in which version."""

import sqlite3
from collections.abc import Mapping

from generator.records.kept_questions import items_and_versions, numbers_of

Items = tuple[tuple[str, str], ...]


def items_of_forms(connection: sqlite3.Connection, issue: int) -> Mapping[str, Items]:
    """Give item and version of each question, in the order of the form, by the form's label."""
    known = items_and_versions(connection)
    rows = connection.execute("SELECT label, questions FROM forms WHERE issue = ?", (issue,))
    return {
        row["label"]: tuple(known[number] for number in numbers_of(row["questions"]))
        for row in rows
    }
