"""Finds and takes out what texts say about a person: their code and their name.

A code of fewer than four characters, or of digits only, is taken only where a field holds nothing
else, since 'A' or '120' in a sentence or in an answer is no trace of anybody.
"""

import json
import re
import sqlite3
from collections.abc import Iterator
from typing import Any

from generator.records.people import Person
from generator.records.store import packed, plain_text, unpacked

ERASED = "(erased)"
FEWEST_CHARACTERS = 4
FREE_TEXTS = (
    ("issues", "void_reason"),
    ("corrections", "reason"),
    ("observations", "job"),
    ("observations", "note"),
    ("dated_facts", "subject"),
    ("amendments", "before"),
    ("amendments", "after"),
    ("amendments", "reason"),
)
CERTIFICATES = ("certificates", "content")
PLAIN_TEXTS = (("issues", "settings"), ("corrections", "change"))


def clean_texts(connection: sqlite3.Connection, person: Person) -> tuple[int, ...]:
    """Take a person out of free texts and frozen data; give the certificates that changed."""
    for table, column in FREE_TEXTS:
        for number, text in _texts(connection, table, column):
            cleaned = without(text, person)
            if cleaned != text:
                _put(connection, table, column, number, cleaned)
    for table, column in PLAIN_TEXTS:
        _clean_plain(connection, table, column, person)
    return _clean_plain(connection, *CERTIFICATES, person)


def clean_answers(connection: sqlite3.Connection, row: int, person: Person) -> bool:
    """Take a person out of what they answered themselves, and of what was found in it.

    Says whether anything had to be changed.
    """
    # the answer 'A' is an answer, whoever has the code 'A'
    person = Person(*(word if _is_telling(word) else "" for word in (person.code, person.name)))
    own = "(SELECT id FROM sittings WHERE person = ?)"
    answers = connection.execute(
        f"SELECT id, responses FROM sittings WHERE id IN {own}", (row,)
    ).fetchall()
    findings = connection.execute(
        f"SELECT id, findings FROM markings WHERE sitting IN {own}", (row,)
    ).fetchall()
    changed = False
    for table, column, rows in (
        ("sittings", "responses", answers),
        ("markings", "findings", findings),
    ):
        for number, data in rows:
            plain = unpacked(data)
            cleaned = without(plain, person)
            if cleaned != plain:
                _put(connection, table, column, number, packed(cleaned))
                changed = True
    return changed


def without(value: Any, person: Person) -> Any:
    """Return plain data with the code and the name of a person taken out of every text."""
    if isinstance(value, str):
        return _cleaned(value, person)
    if isinstance(value, dict):
        return {name: without(inner, person) for name, inner in value.items()}
    if isinstance(value, list):
        return [without(inner, person) for inner in value]
    return value


def _cleaned(text: str, person: Person) -> str:
    words = [word for word in (person.name, person.code) if word]
    if text in words:
        return ERASED
    for word in words:
        if _is_telling(word):
            text = re.sub(rf"(?<!\w){re.escape(word)}(?!\w)", ERASED, text, flags=re.IGNORECASE)
    return text


def _is_telling(word: str) -> bool:
    return len(word) >= FEWEST_CHARACTERS and not word.isdigit()


def _clean_plain(
    connection: sqlite3.Connection, table: str, column: str, person: Person
) -> tuple[int, ...]:
    changed = []
    for number, text in _texts(connection, table, column):
        plain = json.loads(text)
        cleaned = without(plain, person)
        if cleaned != plain:
            _put(connection, table, column, number, plain_text(cleaned))
            changed.append(number)
    return tuple(changed)


def _texts(connection: sqlite3.Connection, table: str, column: str) -> Iterator[tuple[int, str]]:
    rows = connection.execute(f"SELECT id, {column} AS text FROM {table}").fetchall()
    return ((int(row["id"]), row["text"]) for row in rows)


def _put(
    connection: sqlite3.Connection, table: str, column: str, number: int, value: str | bytes
) -> None:
    connection.execute(f"UPDATE {table} SET {column} = ? WHERE id = ?", (value, number))
