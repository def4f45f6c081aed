"""A whole form marked: must-pass questions decide first, then the marks."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any, Literal

from generator.marking.answers.mark_answer import mark_response
from generator.marking.answers.marks import Finding, Mark, not_marked
from generator.marking.answers.response import Blank, CannotMark, Response

Verdict = Literal["passed", "must_pass_missed", "not_passed", "unfinished"]
Waits = Literal["", "illegible", "written"]
LEFT_OUT = "left_out"
_TO_MARK = Finding("point", "", "A person still has to give the marks for this answer.")


@dataclass(frozen=True, slots=True)
class QuestionMark:
    """The mark of one question of a form.

    marks     what the question is worth
    waits     why a person must look before the mark stands: it cannot be read, or it is a written
              answer that nobody marked yet; empty where the mark stands
    left_out  taken out of the form after a correction: it gives no marks and asks for none
    """

    number: int
    marks: int
    must_pass: bool
    mark: Mark
    waits: Waits = ""
    left_out: bool = False

    @property
    def points(self) -> Fraction:
        """Return the marks gained, exact."""
        return Fraction(0) if self.left_out else self.mark.share * self.marks

    @property
    def misses_the_gate(self) -> bool:
        """Say whether a must-pass question is surely not right; part marks do not open the gate."""
        return self.must_pass and not self.left_out and not self.waits and self.mark.share < 1


@dataclass(frozen=True, slots=True)
class FormMark:
    """A form marked.

    points      marks gained, exact
    most        marks of the form without what is left out
    pass_marks  marks from which it is passed
    """

    verdict: Verdict
    points: Fraction
    most: int
    pass_marks: int
    questions: tuple[QuestionMark, ...]

    @property
    def gate_missed(self) -> tuple[int, ...]:
        """Return the numbers of the must-pass questions that are not right."""
        return tuple(entry.number for entry in self.questions if entry.misses_the_gate)

    def waiting(self, why: Waits) -> tuple[int, ...]:
        """Return the numbers of the questions that wait for a person for one reason."""
        return tuple(e.number for e in self.questions if e.waits == why and not e.left_out)


def mark_form(form: Mapping[str, Any], responses: Mapping[int, Response]) -> FormMark:
    """Mark the answers to a form.

    form       its plain JSON as issued, or as `corrected_form` gives it
    responses  by the question's number; a written answer that is missing waits for its marker,
               any other that is missing is blank
    A must-pass question that is not fully right decides, whatever else waits or was gained. Then
    anything that waits leaves the form unfinished. Raises CannotMark for an answer to a question
    that the form does not have, or in a form that the question does not take.
    """
    entries = form["questions"]
    numbers = {entry["number"] for entry in entries}
    for number in sorted(set(responses) - numbers):
        raise CannotMark(f"form {form['form']} has no question {number}")
    marks = tuple(_marked(entry, responses.get(entry["number"])) for entry in entries)
    points = sum((entry.points for entry in marks), Fraction(0))
    most = sum(entry.marks for entry in marks if not entry.left_out)
    cut = _pass_marks(form, most)
    return FormMark(_verdict(marks, points, cut), points, most, cut, marks)


def _marked(entry: Mapping[str, Any], response: Response | None) -> QuestionMark:
    question = entry["question"]
    waits: Waits = ""
    if response is None and question["kind"] == "written":
        mark, waits = not_marked("illegible", _TO_MARK), "written"
    else:
        mark = mark_response(question, Blank() if response is None else response)
        waits = "illegible" if mark.needs_a_person else ""
    left_out = bool(entry.get(LEFT_OUT))
    must_pass = bool(entry["must_pass"])
    return QuestionMark(entry["number"], entry["marks"], must_pass, mark, waits, left_out)


def _pass_marks(form: Mapping[str, Any], most: int) -> int:
    if most == form["marks"]:
        return int(form["pass_marks"])
    return -(-most * int(form["pass_percent"]) // 100)


def _verdict(marks: tuple[QuestionMark, ...], points: Fraction, cut: int) -> Verdict:
    if any(entry.misses_the_gate for entry in marks):
        return "must_pass_missed"
    if any(entry.waits and not entry.left_out for entry in marks):
        return "unfinished"
    return "passed" if points >= cut else "not_passed"
