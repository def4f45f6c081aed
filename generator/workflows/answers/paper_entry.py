"""The answers of one paper taken in question by question, forwards and back; nothing is kept."""

from dataclasses import dataclass, field

from generator.diagnostics import Place, Problem
from generator.issued import (
    FACTS,
    IssuedEntry,
    IssuedForm,
    IssuedQuestion,
    asked_unit,
    points_of,
)
from generator.marking import Awarded, Response
from generator.marking.answers import needs_a_person
from generator.marking.tables import (
    BLANK,
    ILLEGIBLE,
    Cell,
    CellRefused,
    FormAnswers,
    answer_cell,
    doubts_about,
    person_meant,
    person_problems,
    plain_form_id,
    read_answer,
    unknown_form,
)
from generator.records import Records
from generator.workflows.answers.known_papers import known_of
from generator.workflows.refusals import Refused

BACK = "back"
WAYS = f"Enter = no answer, {ILLEGIBLE} = cannot read it, {BACK} = previous question"
_HERE = Place("terminal", 1, 1)


@dataclass(slots=True)
class PaperEntry:
    """Goes through the prompts of a form: ask what it `asks`, and let it `take` what was typed.

    A written question has a prompt for each marking point, any other has one.
    """

    form_id: str
    person: str
    form: IssuedForm
    responses: dict[int, Response] = field(default_factory=dict)
    points: dict[int, list[int]] = field(default_factory=dict)
    _been: list[int] = field(default_factory=list)
    _index: int = 0

    @property
    def heading(self) -> str:
        """Return which paper this is, and whose."""
        who = f", {self.person}" if self.person else ""
        return f"form {self.form['form']}, {self.form['title']}{who}"

    @property
    def asks(self) -> str | None:
        """Return the next prompt; None once everything was asked."""
        prompts = self._prompts()
        return _prompt(*prompts[self._index]) if self._index < len(prompts) else None

    @property
    def answers(self) -> FormAnswers:
        """Return what was taken so far, as the answers of the paper."""
        return FormAnswers(self.form_id, self.person, self.responses, _HERE)

    def take(self, typed: str) -> str:
        """Keep what was typed for the present prompt, and return what was read or why not.

        The word `back` goes to the previous prompt, with nothing to say.
        """
        if typed.strip().casefold() == BACK:
            self._index = self._been.pop() if self._been else 0
            return ""
        try:
            said, onward = self._taken(*self._prompts()[self._index], typed.strip())
        except CellRefused as refused:
            return "; ".join(filter(None, (str(refused), refused.hint)))
        self._been.append(self._index)
        self._index += onward
        return said

    def _prompts(self) -> list[tuple[IssuedEntry, int]]:
        return [
            (entry, point)
            for entry in self.form["questions"]
            for point in range(len(points_of(entry["question"])) or 1)
        ]

    def _taken(self, entry: IssuedEntry, point: int, typed: str) -> tuple[str, int]:
        """Keep what was typed; return what was read, and how many prompts to go on."""
        question, number = entry["question"], entry["number"]
        if question["kind"] == "written" and typed not in (ILLEGIBLE, BLANK):
            return self._taken_point(entry, point, typed)
        response = read_answer(question, typed)
        assert response is not None
        self.responses[number] = response
        left = (len(points_of(question)) or 1) - point
        return _said(question, response), left

    def _taken_point(self, entry: IssuedEntry, point: int, typed: str) -> tuple[str, int]:
        number, points = entry["number"], points_of(entry["question"])
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


def open_entry(connection: Records, form_id: str, person: str) -> PaperEntry | Refused:
    """Return the entry of one paper, or why its answers cannot be taken in.

    person  whose paper it is, where the form names nobody
    """
    plain_id = plain_form_id(form_id)
    known = known_of(connection, [plain_id])
    form = known.forms.get(plain_id)
    if form is None:
        return _refusal(unknown_form(Cell(form_id, _HERE), known))
    for problem in person_problems(Cell(person, _HERE), form, known):
        return _refusal(problem)
    return PaperEntry(plain_id, person_meant(person, form, known), form)


def _refusal(problem: Problem) -> Refused:
    return Refused("; ".join(filter(None, (problem.message, problem.hint))))


def _prompt(entry: IssuedEntry, point: int) -> str:
    question = entry["question"]
    if question["kind"] != "written":
        unit = asked_unit(question)
        asks = f"{FACTS.of(question['kind']).at_terminal}{f' in {unit}' if unit else ''}"
        return f"{entry['number']} ({asks})"
    says = question["key"]["points"][point]
    return f"{entry['number']}, point {point + 1}, 0 to {says['marks']}: {says['text']}"


def _said(question: IssuedQuestion, response: Response) -> str:
    cell = answer_cell(question["kind"], response)
    if cell in ("", BLANK):
        return "blank"
    if cell == ILLEGIBLE:
        return "a person must look at it: nobody could read it"
    if why := needs_a_person(question, response):
        return f"a person must look at it: {why}"
    doubts = doubts_about(question, response)
    return f"read: {cell}{f' ({doubts})' if doubts else ''}"
