"""Intervals agree with published values and an independent library; few answers say nothing."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import binomtest

from generator.reports.intervals import (
    FEWEST,
    Share,
    marks_text,
    percent,
    share_of_answers,
    share_of_marks,
)
from tests.reports.toy_forms import answer


def share_of_people(some, people):
    """Return the share of people, each weighing the same."""
    return Share(Fraction(some, people), Fraction(people))


# R. G. Newcombe, Statistics in Medicine 17, 1998, table I, method 3
NEWCOMBE = [
    (81, 263, 0.2553, 0.3662),
    (15, 148, 0.0624, 0.1605),
    (0, 20, 0.0000, 0.1611),
    (1, 29, 0.0061, 0.1718),
]


@pytest.mark.parametrize(("some", "people", "low", "high"), NEWCOMBE)
def test_shares_of_people_have_the_published_interval(some, people, low, high):
    interval = share_of_people(some, people).interval
    assert [round(end, 4) for end in interval] == [low, high]


@given(st.integers(1, 400).flatmap(lambda n: st.tuples(st.integers(0, n), st.just(n))))
def test_an_independent_library_gives_the_same_interval_and_bounds(counts):
    some, people = counts
    share = share_of_people(some, people)
    both = binomtest(some, people).proportion_ci(0.95, "wilson")
    assert share.interval == pytest.approx((both.low, both.high), abs=1e-9)
    lower = binomtest(some, people, alternative="greater").proportion_ci(0.95, "wilson")
    upper = binomtest(some, people, alternative="less").proportion_ci(0.95, "wilson")
    assert share.lower_bound == pytest.approx(lower.low, abs=1e-9)
    assert share.upper_bound == pytest.approx(upper.high, abs=1e-9)


@pytest.mark.parametrize(("right", "standing"), [(19, "shown"), (18, "more answers needed")])
def test_eighty_percent_is_shown_by_19_of_20_and_not_by_18(right, standing):
    # Wilson's one-sided lower bounds: 0.804 and 0.738
    assert share_of_people(right, 20).standing(80) == standing


def test_a_share_that_stays_below_the_standard_is_not_yet_there():
    assert share_of_people(8, 20).standing(80) == "not yet"


@given(st.integers(1, FEWEST - 1).flatmap(lambda n: st.tuples(st.integers(0, n), st.just(n))))
def test_fewer_than_ten_questions_get_no_verdict(counts):
    assert share_of_people(*counts).standing(80) == "too few questions to say"


def test_heavy_questions_tell_less_than_as_many_light_ones():
    # (3 + 1 + 1 + 1)² / (9 + 1 + 1 + 1) = 36 / 12
    marks = (3, 1, 1, 1)
    share = share_of_marks([answer(n, int(n < 4), marks=m) for n, m in enumerate(marks, 1)])
    assert share == Share(Fraction(5, 6), Fraction(3))


def test_a_mean_share_counts_part_marks():
    assert share_of_answers([answer(1, 1), answer(2, Fraction(1, 2))]) == Share(
        Fraction(3, 4), Fraction(2)
    )
    assert share_of_answers([]) is None and share_of_marks([]) is None


def test_percents_and_marks_round_half_up():
    assert percent(Fraction(1, 200)) == "1\u00a0%"
    assert percent(Fraction(149, 200)) == "75\u00a0%"
    assert marks_text(Fraction(47, 2)) == "23.5"
    assert marks_text(Fraction(24)) == "24"
    assert marks_text(Fraction(1, 3)) == "0.3"
