"""A form: the questions of one paper in order, with what its foot and its key repeat."""

from dataclasses import dataclass

from generator.questions import MatchKey, Question, WrittenKey

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
    gate       numbers of the questions that must all be right, whatever the score
    person     code of the person it is for, or empty
    """

    title: str
    blueprint: str
    label: str
    edition: str
    seed: str
    minutes: int
    pass_percent: int
    questions: tuple[FormQuestion, ...]
    gate: tuple[int, ...] = ()
    person: str = ""

    @property
    def marks(self) -> int:
        """Return the marks of the whole paper."""
        return sum(entry.marks for entry in self.questions)

    @property
    def pass_marks(self) -> int:
        """Return the marks at or above which the paper is passed; part marks round up."""
        return -(-self.marks * self.pass_percent // 100)


def marks_of(question: Question) -> int:
    """Return the marks of a question: one a pair or point where it has those."""
    if isinstance(question.key, MatchKey):
        return len(question.key.answers)
    if isinstance(question.key, WrittenKey):
        return sum(marks for _, marks in question.key.points)
    return MARKS[question.kind]
