"""Marks: how they are written, and how many it takes to pass."""

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from generator.assembly.forms import passing_marks
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


def total_marks(form: Mapping[str, Any]) -> int:
    """Return the marks of all questions of a form as issued."""
    return sum(int(entry["marks"]) for entry in form["questions"])


def marks_needed(form: Mapping[str, Any], most: int) -> int:
    """Return the marks from which a form is passed; fewer where questions were left out.

    form  as issued: what it says counts as long as every question does
    most  marks of the questions that count
    """
    if most == form["marks"]:
        return int(form["pass_marks"])
    return passing_marks(most, int(form["pass_percent"]))
