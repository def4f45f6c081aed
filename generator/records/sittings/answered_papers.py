"""Answered papers for a person, a class and an analysis, read fast for many thousands of them."""

import json
import sqlite3
from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from functools import cache
from typing import Any

from generator.issued import FormHead, IssuedQuestion, pass_marks
from generator.marking import Response, response_from_plain
from generator.marking.answers import corrected_form
from generator.records.issues import QUESTION, QUESTIONS, numbers_of, refuse_out_of_use
from generator.records.sittings.answered_paper import (
    AnsweredPaper,
    AnsweredQuestion,
    PaperFindings,
    PrintedQuestion,
)
from generator.records.sittings.corrected_forms import Changes, changes_of
from generator.records.sittings.stored_marks import read_mark
from generator.records.store import unpacked

# a form without its questions, and the questions where it prints them
_Printed = tuple[FormHead, tuple[PrintedQuestion, ...]]
# plain JSON of an answer, and each answer once, by its form and letters or its text
_Plain = Mapping[str, Any]
_Given = dict[tuple[str, ...], Response]
# item, version and question by the question's number: one object for all forms that print it
_Known = dict[int, tuple[str, str, IssuedQuestion]]


def answered_papers(
    connection: sqlite3.Connection, issues: Sequence[int]
) -> Iterator[AnsweredPaper]:
    """Return the papers of some issues that were answered, with the marks that count.

    Forms come in the order of issuing, the papers of a form in the order in which answers came in.
    Raises RecordsRefused for an issue that is not there or was voided.
    """
    known: _Known = {}
    given: _Given = {}
    for issue in issues:
        refuse_out_of_use(connection, issue)
        changes = changes_of(connection, issue)
        forms: dict[int, _Printed] = {}
        for row in connection.execute(_PAPERS, (issue,)):
            form = int(row["id"])
            if form not in forms:
                forms[form] = _printed(connection, row, known, changes)
            yield _paper(issue, forms[form], row, given)


def _printed(
    connection: sqlite3.Connection, row: sqlite3.Row, known: _Known, changes: Changes
) -> _Printed:
    outline = unpacked(row["content"])
    asked = [_asked(connection, number, known) for number in numbers_of(row["questions"])]
    entries = outline[QUESTIONS]
    whole = [{**e, QUESTION: a[2]} for e, a in zip(entries, asked, strict=True)]
    corrected = corrected_form(outline | {QUESTIONS: whole}, changes)["questions"]
    return outline, tuple(
        PrintedQuestion(
            entry["number"],
            entry["marks"],
            bool(entry["must_pass"]),
            bool(entry.get("left_out")),
            item,
            version,
            entry["question"],
        )
        for (item, version, _), entry in zip(asked, corrected, strict=True)
    )


def _asked(
    connection: sqlite3.Connection, number: int, known: _Known
) -> tuple[str, str, IssuedQuestion]:
    if number not in known:
        row = connection.execute(
            "SELECT item, version, content FROM questions WHERE id = ?", (number,)
        ).fetchone()
        known[number] = (row["item"], row["version"], json.loads(row["content"]))
    return known[number]


def _paper(issue: int, form: _Printed, row: sqlite3.Row, given: _Given) -> AnsweredPaper:
    outline, questions = form
    responses: Mapping[str, _Plain] = unpacked(row["responses"])
    findings = PaperFindings(row["findings"])
    answers = []
    for printed, written in zip(questions, row["marks"].split(), strict=True):
        status, share = read_mark(written)
        plain = responses.get(str(printed.number))
        response = None if plain is None else _response(plain, given)
        answers.append(AnsweredQuestion(printed, response, share, status, findings))
    return AnsweredPaper(
        issue=issue,
        blueprint=row["blueprint"],
        title=row["title"],
        label=row["label"],
        form_id=row["form_id"],
        edition=row["edition"],
        person=row["person"],
        sat=row["sat"],
        verdict=row["verdict"],
        points=_points(row["points"]),
        most=row["most"],
        pass_marks=pass_marks(outline, row["most"]),
        pass_percent=int(outline["pass_percent"]),
        answers=tuple(answers),
    )


def _response(plain: _Plain, given: _Given) -> Response:
    # a hundred thousand answers are some hundred different ones, and letters most of them
    same = (plain["form"], *plain["letters"]) if "letters" in plain else (str(plain),)
    found = given.get(same)
    if found is None:
        found = given[same] = response_from_plain(plain)
    return found


@cache
def _points(written: str) -> Fraction:
    return Fraction(written)


_PAPERS = (
    "SELECT f.id, f.label, f.form_id, f.content, f.questions, i.blueprint, i.title, i.edition,"
    " coalesce(p.code, '') AS person, coalesce(nullif(s.sat, ''), s.entered) AS sat, s.responses,"
    " m.points, m.most, m.verdict, m.marks, m.findings FROM forms f"
    " JOIN issues i ON i.id = f.issue JOIN sittings s ON s.form = f.id AND s.replaced = 0"
    " JOIN markings m ON m.sitting = s.id AND m.replaced = 0 LEFT JOIN people p ON p.id = s.person"
    " WHERE f.issue = ? ORDER BY f.id, s.id"
)
