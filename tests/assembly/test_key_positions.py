"""Key positions: chance of uneven counts against published values, a library and counting."""

from collections import Counter
from dataclasses import replace
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import chi2

from generator.assembly import build_forms, position_alarms
from generator.assembly.forms.evened_letters import evened
from generator.assembly.forms.key_positions import (
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
    assert words == "A is the right answer 12 times of 20"


def test_forms_whose_keys_pile_up_are_laid_anew_until_none_alarms(tmp_path):
    bank, entry = papers(tmp_path, plan("{module: filler, kinds: [choice], count: 10}"))
    forms = build_forms(bank, entry, "positions", tuple(f"form {n}" for n in range(120)))
    assert [form.label for form in forms if position_alarms(form)] == []


def piled_up(form):
    """Return a form with every right option in the first place."""
    return replace(
        form, questions=tuple(replace(e, question=_first(e.question)) for e in form.questions)
    )


def _first(question):
    options = sorted(question.key.options, key=lambda option: not option.right)
    options = [replace(o, letter="ABCDEFGH"[n]) for n, o in enumerate(options)]
    return replace(question, key=replace(question.key, options=tuple(options)))


def test_evening_keeps_every_question_with_its_options_and_its_right_one(tmp_path):
    bank, entry = papers(tmp_path, plan("{module: filler, kinds: [choice], count: 10}"))
    for form in build_forms(bank, entry, "even", tuple(f"form {n}" for n in range(20))):
        assert evened(form) == form
        uneven = piled_up(form)
        assert position_alarms(uneven)
        laid = evened(uneven)
        assert position_alarms(laid) == ()
        assert laid == evened(uneven)
        for one, other in zip(uneven.questions, laid.questions, strict=True):
            assert one.question.name == other.question.name
            assert _said(one) == _said(other)
            assert [o.letter for o in other.question.key.options] == [
                o.letter for o in one.question.key.options
            ]


def _said(entry):
    return {(option.text, option.right, option.feedback) for option in entry.question.key.options}
