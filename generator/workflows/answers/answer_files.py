"""The files with answers that are taken in: tables, workbooks, files of the page."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from generator.diagnostics import Place, Problem, has_errors
from generator.marking.tables import (
    MOST_BYTES,
    FormAnswers,
    IssuedAnswers,
    Row,
    file_problems,
    form_ids_of,
    named_cells,
    named_text_cells,
    person_meant,
    plain_form_id,
    read_answers_file,
    read_cells,
    read_issued,
    read_workbook,
)
from generator.records import Records
from generator.records.sittings import StoredForm
from generator.workflows.answers.known_papers import known_of
from generator.workflows.files import line_of, text_of

Problems = tuple[Problem, ...]
Forms = dict[str, StoredForm]
_TABLES = (".csv", ".tsv", ".txt")
_WORKBOOKS = (".xlsx", ".xlsm")
_PAGES = (".json",)
_KINDS = (*_TABLES, *_WORKBOOKS, *_PAGES)


@dataclass(slots=True)
class FilesRead:
    """What the files hold together; no answers where any problem is an error.

    forms  that the files name, as they were read
    """

    answers: list[FormAnswers] = field(default_factory=list)
    forms: dict[str, StoredForm] = field(default_factory=dict)
    empty: list[str] = field(default_factory=list)
    problems: list[Problem] = field(default_factory=list)

    def take(self, found: IssuedAnswers, problems: Iterable[Problem]) -> None:
        """Add what one file holds."""
        self.answers += found.filled
        self.empty += found.empty
        self.problems += problems


def read_files(connection: Records, files: Sequence[Path], person: str = "") -> FilesRead:
    """Read every file and return all problems at once.

    person  takes the place of the code that is in a file of the page
    """
    read = FilesRead()
    for file in files:
        read.take(*_one_file(connection, file, person, read.forms))
    read.problems += _in_two_files(read.answers)
    if has_errors(read.problems):
        read.answers.clear()
    return read


def source_line(path: str, line: int) -> str:
    """Return the line that a problem is about, where the file is text."""
    return line_of(path, line) if Path(path).suffix.lower() in (*_TABLES, *_PAGES) else ""


def is_page_file(file: Path) -> bool:
    """Return whether a file is one that the page saved."""
    return file.suffix.lower() in _PAGES


def _one_file(
    connection: Records, file: Path, person: str, forms: Forms
) -> tuple[IssuedAnswers, Problems]:
    path, kind = file.as_posix(), file.suffix.lower()
    start = Place(path, 1, 1)
    if kind not in _KINDS:
        hint = "save the table as .xlsx or as CSV in UTF-8"
        message = f"answers come as {', '.join(_KINDS)}, not as '{file.suffix}'"
        return IssuedAnswers(), (Problem(start, "error", "spreadsheet-file", message, hint),)
    if file.stat().st_size > MOST_BYTES:
        message = f"a file with answers has at most {MOST_BYTES // 10**6} MB"
        return IssuedAnswers(), (Problem(start, "error", "spreadsheet-file", message),)
    if kind in _WORKBOOKS:
        rows, problems = read_workbook(file.read_bytes(), path)
        found, more = _table(connection, rows, problems, path, forms)
        return found, named_cells(more)
    text, problems = text_of(file)
    if text is None:
        return IssuedAnswers(), problems
    if kind in _PAGES:
        return _page_file(connection, text, path, person, forms)
    rows, problems = read_cells(text, path)
    found, more = _table(connection, rows, problems, path, forms)
    return found, named_text_cells(rows, more)


def _table(
    connection: Records, rows: tuple[Row, ...], problems: Problems, path: str, forms: Forms
) -> tuple[IssuedAnswers, Problems]:
    if not rows and problems:
        return IssuedAnswers(), problems
    found, more = read_issued(rows, path, known_of(connection, form_ids_of(rows), forms))
    both = (*problems, *more)
    return (IssuedAnswers() if has_errors(both) else found), both


def _page_file(
    connection: Records, text: str, path: str, person: str, forms: Forms
) -> tuple[IssuedAnswers, Problems]:
    saved, problems = read_answers_file(text, path)
    if saved is None or has_errors(problems):
        return IssuedAnswers(), problems
    form_id = plain_form_id(saved.form_id)
    place = Place(path, 1, 1)
    typed, over = person or saved.person, saved.minutes_over
    answers = FormAnswers(form_id, typed, saved.responses, place, saved.written, over)
    known = known_of(connection, [form_id], forms)
    both = (*problems, *file_problems(answers, known))
    if has_errors(both):
        return IssuedAnswers(), both
    code = person_meant(typed, known.forms[form_id], known)
    return IssuedAnswers((replace(answers, person=code),)), both


def _in_two_files(answers: Iterable[FormAnswers]) -> Iterable[Problem]:
    first: dict[tuple[str, str], Place] = {}
    for paper in answers:
        there = first.setdefault((paper.form_id, paper.person), paper.place)
        if there is not paper.place:
            message = (
                f"form {paper.form_id} is in {there.path} as well; mark one file, then the other"
            )
            yield Problem(paper.place, "error", "form-twice", message)
