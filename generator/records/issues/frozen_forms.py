"""Forms as they were issued: each question is kept once, however many forms print it.

A kept form never holds a person's code or name; the person is a link that can be taken away.
"""

import re
import sqlite3
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from generator.records.issues.stored_questions import (
    keep_question,
    numbers_of,
    numbers_packed,
    questions_of,
)
from generator.records.people import person_of
from generator.records.store import RecordsRefused, packed, unpacked

Plain = dict[str, Any]
PERSON, QUESTIONS, QUESTION = "person", "questions", "question"
FEWEST_CHARACTERS = 4


@dataclass(frozen=True, slots=True)
class FrozenForm:
    """A form as it was issued.

    content  the plain JSON of the form: every question with its key, numbered from 1
    person   the code of the person it was made for, or empty
    """

    label: str
    content: Plain
    person: str = ""

    @property
    def form_id(self) -> str:
        """Return the id that the form's papers carry, or None for a form without one."""
        return str(self.content.get("form_id", ""))


def keep_form(
    connection: sqlite3.Connection,
    issue: int,
    form: FrozenForm,
    versions: Mapping[str, str],
    bank_hash: str,
) -> None:
    """Add a form inside the writing that is under way; raises RecordsRefused as `freeze` does."""
    entries = form.content[QUESTIONS]
    if [entry["number"] for entry in entries] != list(range(1, len(entries) + 1)):
        raise RecordsRefused(f"the questions of form '{form.label}' are not numbered from 1")
    places = [{k: v for k, v in entry.items() if k != QUESTION} for entry in entries]
    sheet = {**form.content, QUESTIONS: places}
    if PERSON in sheet:
        sheet[PERSON] = ""
    owner = None
    if form.person:
        owner, person = person_of(connection, form.person)
        _refuse_names(form.label, sheet, [word for word in (person.code, person.name) if word])
    numbers = [
        keep_question(connection, question, versions.get(question["id"], bank_hash))
        for question in (entry[QUESTION] for entry in entries)
    ]
    connection.execute(
        "INSERT INTO forms (issue, label, form_id, person, content, questions)"
        " VALUES (?, ?, ?, ?, ?, ?)",
        (issue, form.label, form.form_id, owner, packed(sheet), numbers_packed(numbers)),
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


def forms_of(connection: sqlite3.Connection, issue: int) -> tuple[FrozenForm, ...]:
    """Return the forms of an issue as they were frozen, in the order of issuing.

    The form of a person who was erased has an empty `person`.
    """
    rows = connection.execute(
        "SELECT f.label, f.content, f.questions, coalesce(p.code, '') AS person FROM forms f"
        " LEFT JOIN people p ON p.id = f.person WHERE f.issue = ? ORDER BY f.id",
        (issue,),
    ).fetchall()
    return tuple(unfrozen(connection, rows))


def unfrozen(connection: sqlite3.Connection, rows: Iterable[sqlite3.Row]) -> Iterator[FrozenForm]:
    """Put forms together again from rows with label, content, questions and person."""
    rows = tuple(rows)
    known = questions_of(connection, {n for row in rows for n in numbers_of(row["questions"])})
    for row in rows:
        sheet = unpacked(row["content"])
        if PERSON in sheet:
            sheet[PERSON] = row["person"]
        numbers = numbers_of(row["questions"])
        sheet[QUESTIONS] = [
            {**place, QUESTION: known[number]}
            for place, number in zip(sheet[QUESTIONS], numbers, strict=True)
        ]
        yield FrozenForm(row["label"], sheet, row["person"])
