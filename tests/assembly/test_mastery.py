"""What a score shows: Wilson's interval and the marks that show a standard."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.assembly.forms.mastery import (
    ONE_SIDED_95,
    effective_number,
    mastery_marks,
    wilson_interval,
)


@pytest.mark.parametrize(
    ("right", "number", "low", "high"),
    [
        (18, 20, 0.698966, 0.972134),
        (14, 20, 0.481027, 0.854523),
        (9, 10, 0.595850, 0.982124),
        (28, 40, 0.545700, 0.819252),
        (10, 10, 0.722467, 1.0),
    ],
)
def test_wilson_between_two_sides_of_95_percent(right, number, low, high):
    # E. B. Wilson 1927; values as a statistics library gives them
    assert wilson_interval(right / number, number) == pytest.approx((low, high), abs=5e-7)


@pytest.mark.parametrize(
    ("right", "number", "low"),
    [(18, 20, 0.738337), (19, 20, 0.803993), (28, 30, 0.817284), (36, 40, 0.795009)],
)
def test_wilson_on_one_side_of_95_percent(right, number, low):
    found, _ = wilson_interval(right / number, number, ONE_SIDED_95)
    assert found == pytest.approx(low, abs=5e-7)


def test_eighty_percent_is_shown_by_19_of_20_and_not_by_18():
    assert mastery_marks([1] * 20, 80) == 19


def test_a_paper_that_is_too_short_shows_nothing():
    # even 10 of 10 has a lower bound of 0.787
    assert mastery_marks([1] * 10, 80) is None
    assert mastery_marks([1] * 11, 80) == 11


@given(st.integers(1, 60), st.integers(1, 4))
def test_questions_of_equal_marks_count_as_their_number(number, marks):
    assert effective_number([marks] * number) == number


@given(st.lists(st.integers(1, 6), min_size=1, max_size=40))
def test_unequal_marks_tell_no_more_than_the_questions_there_are(marks):
    assert 1 <= effective_number(marks) <= len(marks)


@given(st.lists(st.integers(1, 4), min_size=1, max_size=40), st.integers(1, 100))
def test_the_marks_are_the_fewest_whose_bound_meets_the_standard(marks, percent):
    number, total = float(effective_number(marks)), sum(marks)

    def shows(score):
        return wilson_interval(score / total, number, ONE_SIDED_95)[0] >= percent / 100

    found = mastery_marks(marks, percent)
    if found is None:
        assert not shows(total)
    else:
        assert shows(found)
        assert found == 0 or not shows(found - 1)
