"""Forms as they were issued: each question is kept once, however many forms print it.

A kept form never holds a person's code or name; the person is a link that can be taken away.
"""

import json
import re
import sqlite3
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from hashlib import sha256
from itertools import groupby
from typing import Any

from generator.records.database import RecordsRefused
from generator.records.people import person_of
from generator.records.plain_text import plain_text

Plain = dict[str, Any]
PERSON, QUESTIONS = "person", "questions"
FEWEST_CHARACTERS = 4


@dataclass(frozen=True, slots=True)
class FrozenForm:
    """A form as it was issued.

    content  the plain JSON of the form: every question with its key
    person   the code of the person it was made for, or empty
    """

    label: str
    content: Plain
    person: str = ""


def keep_form(
    connection: sqlite3.Connection,
    issue: int,
    form: FrozenForm,
    versions: Mapping[str, str],
    bank_hash: str,
) -> None:
    """Add a form inside the writing that is under way; raises RecordsRefused as `freeze` does."""
    sheet = {name: value for name, value in form.content.items() if name != QUESTIONS}
    if PERSON in sheet:
        sheet[PERSON] = ""
    owner = None
    if form.person:
        owner, person = person_of(connection, form.person)
        _refuse_names(form.label, sheet, [word for word in (person.code, person.name) if word])
    number = connection.execute(
        "INSERT INTO forms (issue, label, person, content) VALUES (?, ?, ?, ?)",
        (issue, form.label, owner, plain_text(sheet)),
    ).lastrowid
    for entry in form.content[QUESTIONS]:
        further = {k: v for k, v in entry.items() if k not in ("number", "marks", "question")}
        question = entry["question"]
        version = versions.get(question["id"], bank_hash)
        connection.execute(
            "INSERT INTO form_questions (form, number, marks, question, further)"
            " VALUES (?, ?, ?, ?, ?)",
            (number, entry["number"], entry["marks"])
            + (_question_row(connection, question, version), plain_text(further)),
        )


def _refuse_names(label: str, sheet: Plain, words: Sequence[str]) -> None:
    typed = (label, str(sheet.get("seed", "")))
    for word in words:
        # a short code may well be a form's letter
        if len(word) < FEWEST_CHARACTERS:
            continue
        inside = re.compile(rf"(?<!\w){re.escape(word)}(?!\w)")
        if word in _texts(sheet) or any(map(inside.search, typed)):
            raise RecordsRefused(
                f"form '{label}' names its person outside the field for it; nothing was kept"
            )


def _texts(value: Any) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for inner in value.values():
            yield from _texts(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from _texts(inner)


def _question_row(connection: sqlite3.Connection, question: Plain, version: str) -> int:
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


def forms_of(connection: sqlite3.Connection, issue: int) -> tuple[FrozenForm, ...]:
    """Give the forms of an issue as they were frozen, in the order of issuing.

    The form of a person who was erased has an empty `person`.
    """
    sheets = connection.execute(
        "SELECT f.id, f.label, f.content, coalesce(p.code, '') AS person FROM forms f"
        " LEFT JOIN people p ON p.id = f.person WHERE f.issue = ? ORDER BY f.id",
        (issue,),
    ).fetchall()
    places = connection.execute(
        "SELECT p.form, p.number, p.marks, p.further, q.content FROM forms f"
        " JOIN form_questions p ON p.form = f.id JOIN questions q ON q.id = p.question"
        " WHERE f.issue = ? ORDER BY p.form, p.number",
        (issue,),
    )
    entries = {
        form: [_entry(row) for row in rows]
        for form, rows in groupby(places, key=lambda row: int(row["form"]))
    }
    return tuple(
        FrozenForm(
            row["label"],
            _content(json.loads(row["content"]), row["person"], entries.get(row["id"], [])),
            row["person"],
        )
        for row in sheets
    )


def _content(sheet: Plain, person: str, entries: list[Plain]) -> Plain:
    if PERSON in sheet:
        sheet[PERSON] = person
    return {**sheet, QUESTIONS: entries}


def _entry(row: sqlite3.Row) -> Plain:
    return {
        "number": int(row["number"]),
        "marks": int(row["marks"]),
        **json.loads(row["further"]),
        "question": json.loads(row["content"]),
    }
