"""Answers that come in: marked with the key as it stands and kept, all together or not at all.

The lock is taken before anything is read, so that neither an appeal nor a second marker can come
between the reading of a key or of earlier answers and the keeping of the marks.
"""

import sqlite3
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from generator.marking import (
    Blank,
    FormMark,
    Response,
    mark_form,
    response_as_plain,
    response_from_plain,
)
from generator.marking.tables import FormAnswers
from generator.records.people import person_id
from generator.records.sittings.corrected_forms import IssuedForm, issued_forms
from generator.records.sittings.form_marks import as_marked
from generator.records.sittings.sittings import Kept, NewSitting, keep_sittings
from generator.records.store import RecordsRefused, unpacked, writing

Responses = Mapping[int, Response]


@dataclass(frozen=True, slots=True)
class Entered:
    """The answers of one paper, marked.

    responses  as they are kept: with the marks of written answers that were there before
    written    texts of written answers, for the marker to read; they are not kept
    over       minutes past the time of the form; not kept either
    """

    form: IssuedForm
    person: str
    responses: Responses
    mark: FormMark
    written: Mapping[int, str] = field(default_factory=dict)
    over: int = 0

    @property
    def issue(self) -> int:
        """Return the number of the issue."""
        return self.form.issue


@dataclass(frozen=True, slots=True)
class Outcome:
    """What was marked, and how much of each issue was new, replaced or known."""

    entered: tuple[Entered, ...]
    kept: Mapping[int, Kept] = field(default_factory=dict)


def mark_and_keep(
    connection: sqlite3.Connection,
    answers: Sequence[FormAnswers],
    at: str,
    marker: str = "",
    sat: str = "",
) -> Outcome:
    """Mark papers and keep their answers and marks: all of them, or none when one is refused.

    sat  day of the sitting; empty for the day on which they are entered
    Raises RecordsRefused as `keep_sittings` does, and for a form id that is not in use.
    """
    with writing(connection):
        entered = marked_papers(connection, answers)
        kept = {
            issue: keep_sittings(
                connection, issue, [_new(e, sat) for e in entered if e.issue == issue], at, marker
            )
            for issue in sorted({e.issue for e in entered})
        }
    return Outcome(entered, kept)


def marked_papers(
    connection: sqlite3.Connection, answers: Sequence[FormAnswers]
) -> tuple[Entered, ...]:
    """Mark papers with the key as it stands, and keep nothing."""
    forms = issued_forms(connection, (paper.form_id for paper in answers))
    return tuple(_entered(connection, forms, paper) for paper in answers)


def _entered(
    connection: sqlite3.Connection, forms: Mapping[str, IssuedForm], paper: FormAnswers
) -> Entered:
    form = forms.get(paper.form_id)
    if form is None:
        raise RecordsRefused(f"no form '{paper.form_id}' is in use")
    person = paper.person or form.person
    before = earlier_responses(connection, form, person)
    responses = completed(form.content, before, paper.responses)
    mark = mark_form(form.content, responses)
    return Entered(form, person, responses, mark, paper.written, paper.over)


def _new(entered: Entered, sat: str) -> NewSitting:
    responses = {str(n): response_as_plain(r) for n, r in sorted(entered.responses.items())}
    return NewSitting(entered.form.label, responses, as_marked(entered.mark), entered.person, sat)


def earlier_responses(
    connection: sqlite3.Connection, form: IssuedForm, person: str
) -> dict[int, Response]:
    """Return the answers to a form that stand already; None where there are none."""
    row = connection.execute(
        "SELECT responses FROM sittings WHERE form = ? AND person IS ? AND replaced = 0",
        (form.row, person_id(connection, person) if person else None),
    ).fetchone()
    return read_responses(unpacked(row["responses"])) if row is not None else {}


def read_responses(plain: Mapping[str, Any]) -> dict[int, Response]:
    """Return the answers of a sitting from their plain JSON."""
    return {int(number): response_from_plain(response) for number, response in plain.items()}


def completed(form: Mapping[str, Any], before: Responses, new: Responses) -> Responses:
    """Put new answers in the place of earlier ones, without losing a marker's work.

    Marks of written answers that are not given anew stay. Where nothing is given but marks of
    written answers, the other answers stay as well.
    """
    written = {e["number"] for e in form["questions"] if e["question"]["kind"] == "written"}
    if not before:
        return new
    only_marks = all(isinstance(r, Blank) for n, r in new.items() if n not in written)
    if only_marks and written & set(new):
        return {**before, **{n: r for n, r in new.items() if n in written}}
    return {**{n: r for n, r in before.items() if n in written}, **new}
