"""Marks as they are written; how many it takes to pass, `issued.pass_marks` says."""

from fractions import Fraction

from generator.issued import IssuedForm
from generator.quantities import number_text, round_to_step
from generator.wording.counting import counted

_TENTH = Fraction(1, 10)


def points_text(points: Fraction) -> str:
    """Return points as a number, with one decimal where they are not whole, half up."""
    return number_text(round_to_step(points, _TENTH, "half"))


def points_of_marks(points: Fraction, most: int) -> str:
    """Return what was gained of the marks of a form, such as '6.3 of 31 marks'."""
    return f"{points_text(points)} of {most} marks"


def marks_text(marks: int) -> str:
    """Return a number of marks with its word."""
    return counted(marks, "mark")


def total_marks(form: IssuedForm) -> int:
    """Return the marks of all questions of a form as issued."""
    return sum(int(entry["marks"]) for entry in form["questions"])
