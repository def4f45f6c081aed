"""Key positions: chance of uneven counts against published values, a library and counting."""

from collections import Counter
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import chi2

from generator.assembly import build_forms, position_alarms
from generator.assembly.key_positions import (
    IMPROBABLE,
    PositionAlarm,
    chance_of_counts,
    chi_square_tail,
    exact_chance,
)
from tests.assembly.small_papers import papers, plan


@pytest.mark.parametrize(
    ("counts", "chance", "alarms"),
    [
        ((5, 5, 5, 5), 1.0, False),
        ((9, 4, 4, 3), 0.2214, False),
        ((12, 3, 3, 2), 0.004223, True),
        ((18, 7, 5), 0.007447, True),
    ],
)
def test_the_chance_of_counts_at_five_or_more_a_position(counts, chance, alarms):
    found = chance_of_counts(counts)
    assert found == pytest.approx(chance, rel=2e-4)
    assert (found < IMPROBABLE) is alarms


@given(st.floats(0, 60), st.integers(1, 7))
def test_the_chi_square_tail_is_that_of_a_statistics_library(statistic, freedom):
    assert chi_square_tail(statistic, freedom) == pytest.approx(
        chi2.sf(statistic, freedom), rel=1e-9, abs=1e-15
    )


@given(st.lists(st.integers(0, 2), min_size=2, max_size=3))
def test_the_exact_chance_is_that_of_counting_every_paper(counts):
    total, places = sum(counts), len(counts)
    ways = Counter(
        tuple(way.count(place) for place in range(places))
        for way in product(range(places), repeat=total)
    )
    unlikely = sum(number for number in ways.values() if number <= ways[tuple(counts)])
    assert exact_chance(counts) == pytest.approx(unlikely / places**total)


def test_below_five_a_position_the_exact_chance_is_used():
    # 19 keys at 4 positions; chi-square would give another figure
    counts = (12, 3, 2, 2)
    assert chance_of_counts(counts) == exact_chance(counts) != chi_square_tail(14.79, 3)
    assert chance_of_counts((5, 5, 5, 5)) == 1.0


def test_no_keys_and_one_position_are_no_cause_for_alarm():
    assert chance_of_counts((0, 0, 0)) == 1.0
    assert chance_of_counts((7,)) == 1.0


def test_an_alarm_says_where_the_keys_stand():
    words = PositionAlarm((12, 3, 3, 2), 0.004223).in_words()
    assert "A 12, B 3, C 3, D 2" in words
    assert "0.42%" in words


def test_shuffled_forms_alarm_about_as_seldom_as_chance_says(tmp_path):
    bank, entry = papers(tmp_path, plan("{module: filler, kinds: [choice], count: 10}"))
    forms = build_forms(bank, entry, "positions", tuple(f"form {n}" for n in range(120)))
    alarms = sum(len(position_alarms(form)) for form in forms)
    # at one alarm in a hundred, 8 or more of 120 have a chance of 2 in 10,000
    assert alarms < 8
