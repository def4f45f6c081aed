"""Answered papers in the little that an analysis needs, read fast for many thousands of them."""

import json
import sqlite3
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from generator.marking.answers import LEFT_OUT, corrected_form
from generator.records.issues import QUESTION, QUESTIONS, numbers_of, voided_words
from generator.records.sittings.corrected_forms import changes_of
from generator.records.sittings.stored_marks import read_mark
from generator.records.store import RecordsRefused, unpacked

Plain = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class AskedQuestion:
    """A question as printed, one object however many papers asked it.

    content  plain JSON, with the key as corrected in its issue
    """

    item: str
    version: str
    content: Plain


@dataclass(frozen=True, slots=True)
class AnsweredQuestion:
    """One answer with its mark; `letters` are the options that were marked, of any question."""

    asked: AskedQuestion
    marks: int
    share: Fraction
    status: str
    letters: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class AnsweredPaper:
    """One paper; what an appeal left out is not among its answers.

    sheet  plain JSON of the form without its questions' texts
    """

    issue: int
    sheet: Plain
    answers: tuple[AnsweredQuestion, ...]


# a form's sheet and, for each of its places, the question and whether an appeal left it out
_Places = tuple[Plain, tuple[tuple[AskedQuestion, int, bool], ...]]


def answered_papers(
    connection: sqlite3.Connection, issues: Sequence[int]
) -> Iterator[AnsweredPaper]:
    """Return the papers of some issues that were answered, with the marks that stand.

    Raises RecordsRefused for an issue that is not there or was voided.
    """
    known: dict[int, AskedQuestion] = {}
    for issue in issues:
        _refuse_out_of_use(connection, issue)
        changes = changes_of(connection, issue)
        forms: dict[int, _Places] = {}
        for row in connection.execute(_PAPERS, (issue,)):
            form = int(row["id"])
            if form not in forms:
                forms[form] = _places(connection, row, known, changes)
            yield _paper(issue, forms[form], row)


def _refuse_out_of_use(connection: sqlite3.Connection, issue: int) -> None:
    row = connection.execute("SELECT state FROM issues WHERE id = ?", (issue,)).fetchone()
    if row is None:
        raise RecordsRefused(f"there is no issue {issue} in the records")
    if row["state"] == "voided":
        raise RecordsRefused(voided_words(issue))


def _places(
    connection: sqlite3.Connection,
    row: sqlite3.Row,
    known: dict[int, AskedQuestion],
    changes: Sequence[tuple[str, Plain]],
) -> _Places:
    sheet = unpacked(row["content"])
    asked = [_asked(connection, number, known) for number in numbers_of(row["questions"])]
    entries = sheet[QUESTIONS]
    if not changes:
        places = zip(asked, entries, strict=True)
        return sheet, tuple((question, entry["marks"], False) for question, entry in places)
    whole = [{**e, QUESTION: a.content} for e, a in zip(entries, asked, strict=True)]
    corrected = corrected_form({**sheet, QUESTIONS: whole}, changes)[QUESTIONS]
    return sheet, tuple(
        (
            AskedQuestion(question.item, question.version, entry[QUESTION]),
            entry["marks"],
            bool(entry.get(LEFT_OUT)),
        )
        for question, entry in zip(asked, corrected, strict=True)
    )


def _asked(
    connection: sqlite3.Connection, number: int, known: dict[int, AskedQuestion]
) -> AskedQuestion:
    if number not in known:
        row = connection.execute(
            "SELECT item, version, content FROM questions WHERE id = ?", (number,)
        ).fetchone()
        known[number] = AskedQuestion(row["item"], row["version"], json.loads(row["content"]))
    return known[number]


def _paper(issue: int, form: _Places, row: sqlite3.Row) -> AnsweredPaper:
    sheet, places = form
    responses = unpacked(row["responses"])
    marks = row["marks"].split()
    answers = []
    for number, ((question, most, left_out), mark) in enumerate(
        zip(places, marks, strict=True), start=1
    ):
        if not left_out:
            status, share = read_mark(mark)
            letters = _letters(responses, number)
            answers.append(AnsweredQuestion(question, most, share, status, letters))
    return AnsweredPaper(issue, sheet, tuple(answers))


def _letters(responses: Plain, number: int) -> tuple[str, ...]:
    return tuple(responses.get(str(number), {}).get("letters", ()))


_PAPERS = (
    "SELECT f.id, f.content, f.questions, s.responses, m.marks FROM forms f"
    " JOIN sittings s ON s.form = f.id AND s.replaced = 0"
    " JOIN markings m ON m.sitting = s.id AND m.replaced = 0"
    " WHERE f.issue = ? ORDER BY f.id, s.id"
)
