"""A filled-in table of an issue as answers; one refused row, and nothing of it is taken."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from generator.diagnostics import Place, Problem, has_errors
from generator.marking.answers import CannotMark, Response, mark_form
from generator.marking.tables.csv_cells import Cell, Row
from generator.marking.tables.issued_cells import CellRefused, doubts_about, read_answer
from generator.marking.tables.issued_header import header_problems
from generator.marking.tables.issued_table import COLUMNS, plain_form_id
from generator.marking.tables.paper_identity import (
    Known,
    label_problems,
    person_meant,
    person_problems,
    unknown_form,
)
from generator.marking.tables.table_problems import error, width_problems

Problems = tuple[Problem, ...]


@dataclass(frozen=True, slots=True)
class FormAnswers:
    """The answers of one paper.

    person     code as it was given; empty for the person of the form
    responses  by the number of the question; a written answer nobody marked yet is not there
    place      where they were read
    written    texts of written answers by the number of the question, for the marker to read
    over       minutes past the time of the form, where that was counted
    """

    form_id: str
    person: str
    responses: Mapping[int, Response]
    place: Place
    written: Mapping[int, str] = field(default_factory=dict)
    over: int = 0


@dataclass(frozen=True, slots=True)
class IssuedAnswers:
    """What a table holds: answers, and the ids of the forms whose row has no answer yet."""

    filled: tuple[FormAnswers, ...] = ()
    empty: tuple[str, ...] = ()


def form_ids_of(rows: Sequence[Row]) -> tuple[str, ...]:
    """Return the ids that the rows of a table name, as they are kept."""
    return tuple(plain_form_id(row[0].text) for row in rows[1:] if row and row[0].text)


def read_issued(rows: Sequence[Row], path: str, known: Known) -> tuple[IssuedAnswers, Problems]:
    """Read the rows of a table as it was issued.

    Gives every problem of every row at once; with any error among them no answer is given.
    """
    problems = list(_shape_problems(rows, path, known))
    if has_errors(problems):
        return IssuedAnswers(), tuple(problems)
    columns = sum(bool(cell.text) for cell in rows[0]) - len(COLUMNS)
    reading = _Reading(known, columns)
    for row in rows[1:]:
        problems += reading.row(row)
    found = IssuedAnswers(tuple(reading.filled), tuple(reading.empty))
    if not found.filled and not has_errors(problems):
        problems.append(error(Place(path, 1, 1), "no-answers", "no form has an answer yet"))
    return (IssuedAnswers() if has_errors(problems) else found), tuple(problems)


def _shape_problems(rows: Sequence[Row], path: str, known: Known) -> Iterator[Problem]:
    named = (known.forms[form_id] for form_id in form_ids_of(rows) if form_id in known.forms)
    yield from header_problems(rows, path, max((len(f["questions"]) for f in named), default=0))
    if rows:
        yield from width_problems(rows)


@dataclass(slots=True)
class _Reading:
    """Goes through the rows and remembers which forms were there."""

    known: Known
    columns: int
    seen: dict[tuple[str, str], int] = field(default_factory=dict)
    filled: list[FormAnswers] = field(default_factory=list)
    empty: list[str] = field(default_factory=list)

    def row(self, row: Row) -> list[Problem]:
        """Take one row and give its problems."""
        form_cell, label, person, *answers = row
        form_id = plain_form_id(form_cell.text)
        form = self.known.forms.get(form_id)
        if form is None:
            return [unknown_form(form_cell, self.known)]
        code = person_meant(person.text, form, self.known)
        problems = [*label_problems(label, form), *person_problems(person, form, self.known)]
        problems += self._twice(form_cell, form_id, code)
        if any(cell.text for cell in answers):
            responses, more = _responses(form, answers, self.columns)
            problems += more
            self.filled.append(FormAnswers(form_id, code, responses, form_cell.place))
        else:
            self.empty.append(form_id)
        return problems

    def _twice(self, cell: Cell, form_id: str, person: str) -> Iterator[Problem]:
        line = self.seen.setdefault((form_id, person), cell.place.line)
        if line != cell.place.line:
            whose = f" for '{person}'" if person else ""
            message = f"form {form_id}{whose} is there already, in line {line}"
            yield error(cell.place, "form-twice", message)


def file_problems(answers: FormAnswers, known: Known) -> Iterator[Problem]:
    """Return what keeps the answers of a saved file from being those of its form."""
    form = known.forms.get(answers.form_id)
    if form is None:
        yield unknown_form(Cell(answers.form_id, answers.place), known)
        return
    yield from person_problems(Cell(answers.person, answers.place), form, known)
    for number, response in sorted(answers.responses.items()):
        try:
            mark_form(form, {number: response})
        except CannotMark as wrong:
            message = f"question {number} of form {form['form']}: {wrong}"
            yield error(answers.place, "answers-file", message)


def _responses(
    form: Mapping[str, Any], cells: Sequence[Cell], columns: int
) -> tuple[dict[int, Response], list[Problem]]:
    label, entries = form["form"], form["questions"]
    found: dict[int, Response] = {}
    problems: list[Problem] = []
    if len(entries) > columns:
        message = f"form {label} has {len(entries)} questions, the table has columns for {columns}"
        return found, [error(cells[0].place, "issued-header", message)]
    for entry, cell in zip(entries, cells, strict=False):
        where = f"question {entry['number']} of form {label}"
        try:
            response = read_answer(entry["question"], cell.text)
        except CellRefused as refused:
            problems.append(error(cell.place, refused.rule, f"{where}: {refused}", refused.hint))
            continue
        if response is not None:
            found[entry["number"]] = response
            if doubts := doubts_about(entry["question"], response):
                message = f"{where}: {doubts}"
                problems.append(Problem(cell.place, "warning", "order-not-whole", message))
    for cell in cells[len(entries) :]:
        if cell.text:
            message = f"form {label} ends with question {len(entries)}"
            hint = "a number with a comma stands in quotes where commas part the cells"
            problems.append(error(cell.place, "answer-beyond", message, hint))
    return found, problems
