"""Questions as they were printed, each kept once, and the numbers by which forms name them."""

import json
import sqlite3
import struct
from collections.abc import Collection, Mapping, Sequence
from hashlib import sha256
from typing import Any

from generator.records.store import plain_text

Plain = dict[str, Any]


def keep_question(connection: sqlite3.Connection, question: Plain, version: str) -> int:
    """Return the number of a question, which is added where it is new.

    version  of the item that it was drawn from
    """
    content = plain_text(question)
    digest = sha256(f"{version}\n{content}".encode()).digest()
    row = connection.execute("SELECT id FROM questions WHERE digest = ?", (digest,)).fetchone()
    if row is not None:
        return int(row["id"])
    added = connection.execute(
        "INSERT INTO questions (digest, item, version, objective, content) VALUES (?, ?, ?, ?, ?)",
        (digest, question["id"], version, question["objective"], content),
    )
    assert added.lastrowid is not None
    return added.lastrowid


def questions_of(connection: sqlite3.Connection, numbers: Collection[int]) -> Mapping[int, Plain]:
    """Return questions by their numbers."""
    found = {}
    for number in numbers:
        row = connection.execute("SELECT content FROM questions WHERE id = ?", (number,)).fetchone()
        found[number] = json.loads(row["content"])
    return found


def items_and_versions(connection: sqlite3.Connection) -> Mapping[int, tuple[str, str]]:
    """Return the item and its version of every question."""
    rows = connection.execute("SELECT id, item, version FROM questions")
    return {int(row["id"]): (str(row["item"]), str(row["version"])) for row in rows}


def numbers_packed(numbers: Sequence[int]) -> bytes:
    """Return the numbers of a form's questions as bytes: four each, lowest first."""
    return struct.pack(f"<{len(numbers)}I", *numbers)


def numbers_of(data: bytes) -> tuple[int, ...]:
    """Return back what `numbers_packed` took."""
    return struct.unpack(f"<{len(data) // 4}I", data)
