"""One paper entered at the terminal, question by question; nothing is kept before it is confirmed.

It reads lines, so that a file or another program can answer as well.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

import click

from generator.command_line.asking import confirmed
from generator.command_line.mark_files import known_of
from generator.command_line.mark_words import paper_lines
from generator.diagnostics import Place, Problem
from generator.marking import Awarded, Response, mark_response
from generator.marking.tables import (
    BLANK,
    ILLEGIBLE,
    Cell,
    CellRefused,
    FormAnswers,
    Known,
    answer_cell,
    doubts_about,
    person_meant,
    person_problems,
    plain_form_id,
    read_answer,
    unknown_form,
)
from generator.records import Records
from generator.records.sittings import marked_papers

Plain = Mapping[str, Any]
BACK = "back"
_HERE = Place("terminal", 1, 1)
_ASKS = {
    "choice": "one letter",
    "multiple_response": "letters",
    "numeric": "a number",
    "order": "letters in order",
    "match": "pairs such as 1C 2A",
}


def entered_by_hand(connection: Records, form_id: str, person: str) -> list[FormAnswers]:
    """Ask for the answers of one paper, show what they come to, and give them when confirmed."""
    plain_id = plain_form_id(form_id)
    known = known_of(connection, [plain_id])
    form = known.forms.get(plain_id)
    if form is None:
        raise _refusal(unknown_form(Cell(form_id, _HERE), known))
    code = _person(person, form, known)
    click.echo(f"form {form['form']}, {form['title']}{f', {code}' if code else ''}", err=True)
    ways = f"Enter = no answer, {ILLEGIBLE} = cannot read it, {BACK} = previous question"
    click.echo(ways, err=True)
    try:
        answers = FormAnswers(plain_id, code, _Entry(form).ask(), _HERE)
        for line in paper_lines(marked_papers(connection, [answers])[0]):
            click.echo(line, err=True)
        sure = confirmed("Keep these answers?")
    except click.Abort as end:
        raise click.ClickException("the answers ended too early; nothing was kept") from end
    if not sure:
        raise click.ClickException("nothing was kept")
    return [answers]


def _person(person: str, form: Plain, known: Known) -> str:
    for problem in person_problems(Cell(person, _HERE), form, known):
        raise _refusal(problem)
    return person_meant(person, form, known)


def _refusal(problem: Problem) -> click.ClickException:
    return click.ClickException("; ".join(filter(None, (problem.message, problem.hint))))


@dataclass(slots=True)
class _Entry:
    """Goes through the prompts of a form, forwards and back.

    A written question has a prompt for each marking point, any other has one.
    """

    form: Plain
    responses: dict[int, Response] = field(default_factory=dict)
    points: dict[int, list[int]] = field(default_factory=dict)

    def ask(self) -> dict[int, Response]:
        """Ask everything and give the answers."""
        prompts = [
            (entry, point)
            for entry in self.form["questions"]
            for point in range(len(entry["question"]["key"].get("points", ".")))
        ]
        been: list[int] = []
        place = 0
        while place < len(prompts):
            typed = click.prompt(_prompt(*prompts[place]), "", show_default=False, err=True)
            if typed.strip().casefold() == BACK:
                place = been.pop() if been else 0
                continue
            try:
                said, onward = self._take(*prompts[place], typed.strip())
            except CellRefused as refused:
                click.echo(f"    {'; '.join(filter(None, (str(refused), refused.hint)))}", err=True)
                continue
            click.echo(f"    {said}", err=True)
            been.append(place)
            place += onward
        return self.responses

    def _take(self, entry: Plain, point: int, typed: str) -> tuple[str, int]:
        """Keep what was typed; give what was read, and how many prompts to go on."""
        question, number = entry["question"], entry["number"]
        if question["kind"] == "written" and typed not in (ILLEGIBLE, BLANK):
            return self._take_point(entry, point, typed)
        response = read_answer(question, typed)
        assert response is not None
        self.responses[number] = response
        left = len(question["key"].get("points", ".")) - point
        return _said(question, response), left

    def _take_point(self, entry: Plain, point: int, typed: str) -> tuple[str, int]:
        number, points = entry["number"], entry["question"]["key"]["points"]
        if not typed and point == 0:
            self.responses.pop(number, None)
            return "not marked yet", len(points)
        most = points[point]["marks"]
        if not (typed.isascii() and typed.isdigit() and int(typed) <= most):
            raise CellRefused("answer-marks", f"a whole number from 0 to {most}")
        given = [*self.points.get(number, [])[:point], int(typed)]
        self.points[number] = given
        if len(given) == len(points):
            self.responses[number] = Awarded(tuple(given))
        return f"read: {int(typed)} of {most}", 1


def _prompt(entry: Plain, point: int) -> str:
    question = entry["question"]
    if question["kind"] != "written":
        unit = question["key"].get("unit_symbol")
        asks = f"{_ASKS[question['kind']]}{f' in {unit}' if unit else ''}"
        return f"{entry['number']} ({asks})"
    says = question["key"]["points"][point]
    return f"{entry['number']}, point {point + 1}, 0 to {says['marks']}: {says['text']}"


def _said(question: Plain, response: Response) -> str:
    cell = answer_cell(question["kind"], response)
    if cell in ("", BLANK):
        return "blank"
    mark = mark_response(question, response)
    if mark.needs_a_person:
        return " ".join(["a person must look at it:", *(note.text for note in mark.notes)])
    doubts = doubts_about(question, response)
    return f"read: {cell}{f' ({doubts})' if doubts else ''}"
