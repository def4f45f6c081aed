"""One mark is one text everywhere, and marks needed to pass are worked out once."""

from fractions import Fraction
from math import ceil
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.command_line.marking.mark_words import mark_words
from generator.issued import marks_needed, pass_marks
from generator.marking import FormMark
from generator.records.sittings import AnsweredPaper, Result
from generator.reports.classes.class_people import person_row
from generator.wording import marks_text, points_of_marks, points_text

QUARTERS = [
    (Fraction(25, 4), "6.3"),
    (Fraction(85, 4), "21.3"),
    (Fraction(43, 7), "6.1"),
    (Fraction(47, 2), "23.5"),
    (Fraction(24), "24"),
    (Fraction(1, 3), "0.3"),
]


@pytest.mark.parametrize(("points", "told"), QUARTERS)
def test_one_mark_is_one_text_on_terminal_certificate_records_and_report(
    points: Fraction, told: str
) -> None:
    whole = f"{told} of 31 marks"
    assert points_text(points) == told
    assert points_of_marks(points, 31) == whole
    mark = FormMark("not_passed", points, 31, 25, ())
    assert mark_words(mark) == f"{whole}, not passed yet"
    result = Result("A", 1, "b", "t", "1", "A", "2026-01-01", points, 31, "not_passed", "")
    assert result.in_words == f"not passed yet, {whole}"
    paper = AnsweredPaper(
        *(1, "b", "t", "A", "id", "1", "A", "2026-01-01", "not_passed", points, 31, 25, 80, ())
    )
    assert person_row(paper)["marks"] == f"{told} of 31"


def test_marks_have_their_word() -> None:
    assert (marks_text(1), marks_text(2)) == ("1 mark", "2 marks")


def form(marks: int, percent: int) -> dict[str, Any]:
    """Return what of a form decides how many marks pass it."""
    return {"marks": marks, "pass_percent": percent, "pass_marks": marks_needed(marks, percent)}


def test_a_form_as_issued_says_itself_how_many_marks_pass_it() -> None:
    assert pass_marks({"marks": 30, "pass_percent": 80, "pass_marks": 25}, 30) == 25


def test_without_a_question_fewer_marks_pass() -> None:
    assert pass_marks(form(30, 80), 28) == 23


@given(st.integers(1, 200), st.integers(1, 100))
def test_the_marks_that_pass_are_the_fewest_at_or_above_the_percent(
    marks: int, percent: int
) -> None:
    needed = marks_needed(marks, percent)
    assert needed == ceil(Fraction(marks * percent, 100))
    assert pass_marks(form(marks + 1, percent), marks) == needed
