"""A form: the questions of one paper in order, with what its foot and its key repeat."""

from dataclasses import dataclass
from typing import Any

from generator.questions import Plain, Question, as_plain
from generator.questions.question import MatchKey, WrittenKey

MARKS = {"choice": 1, "multiple_response": 2, "numeric": 2, "order": 2}


@dataclass(frozen=True, slots=True)
class FormQuestion:
    """A question with its number and marks."""

    number: int
    marks: int
    question: Question


@dataclass(frozen=True, slots=True)
class Form:
    """One paper.

    blueprint  file name of its plan
    label      the form's letter or number
    edition    of the bank
    seed       as given to the command
    """

    title: str
    blueprint: str
    label: str
    edition: str
    seed: str
    minutes: int
    pass_percent: int
    questions: tuple[FormQuestion, ...]

    @property
    def marks(self) -> int:
        """Give the marks of the whole paper."""
        return sum(entry.marks for entry in self.questions)

    @property
    def pass_marks(self) -> int:
        """Give the marks at or above which the paper is passed; part marks round up."""
        return -(-self.marks * self.pass_percent // 100)


def marks_of(question: Question) -> int:
    """Give the marks of a question: one a pair or point where it has those."""
    if isinstance(question.key, MatchKey):
        return len(question.key.answers)
    if isinstance(question.key, WrittenKey):
        return sum(marks for _, marks in question.key.points)
    return MARKS[question.kind]


def form_as_plain(form: Form) -> dict[str, Any]:
    """Give a form as JSON-ready data for paper and key."""
    cautions = dict.fromkeys(q.question.caution for q in form.questions if q.question.caution)
    return {
        "title": form.title,
        "blueprint": form.blueprint,
        "form": form.label,
        "edition": form.edition,
        "seed": form.seed,
        "minutes": form.minutes,
        "marks": form.marks,
        "pass_percent": form.pass_percent,
        "pass_marks": form.pass_marks,
        "questions": [_entry(entry) for entry in form.questions],
        "constants": list(CONSTANTS),
        "cautions": list(cautions),
    }


def _entry(entry: FormQuestion) -> Plain:
    return {
        "number": entry.number,
        "marks": entry.marks,
        "question": as_plain(entry.question),
    }


CONSTANTS = (
    "1 mil = 0.001 inch = 25.4 µm",
    "1 US gallon = 3.785 L = 231 cubic inches; 1 Imperial gallon = 4.546 L",
    "1 L spread over 1 m² is 1,000 µm wet",
    "1 US gallon of solids covers 1,604 square feet at 1 mil dry",
    "1 mL of a liquid of density 1 g/mL weighs 1 g",
)
