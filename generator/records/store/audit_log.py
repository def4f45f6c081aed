"""What was done to the records, without names: the trail an audit follows.

A line says what was done and to which row; it never holds a code, a name or a typed text.
"""

import sqlite3


def note(connection: sqlite3.Connection, at: str, action: str, detail: str) -> None:
    """Add a line inside the writing that is under way."""
    connection.execute(
        "INSERT INTO diary (at, action, detail) VALUES (?, ?, ?)", (at, action, detail)
    )


def lines(connection: sqlite3.Connection) -> tuple[tuple[str, str, str], ...]:
    """Return every line, oldest first."""
    rows = connection.execute("SELECT at, action, detail FROM diary ORDER BY id")
    return tuple((row["at"], row["action"], row["detail"]) for row in rows)
