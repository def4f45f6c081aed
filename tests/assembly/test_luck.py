"""Guessing: published tail chances, and every outcome of a question counted by marking it."""

from collections import Counter
from fractions import Fraction
from itertools import combinations, permutations, product
from math import factorial

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.assembly import build_forms
from generator.assembly.forms.guessing import guesser_passes, outcomes_of
from generator.assembly.forms.luck import (
    NEVER,
    all_or_nothing,
    chance_to_reach,
    one_of,
    orders,
    pairs,
    ticks,
)
from generator.marking import Chosen, Matched, Ordered, mark_response
from generator.questions import as_plain
from tests.assembly.small_papers import papers, plan


@pytest.mark.parametrize(
    ("questions", "options", "cut", "chance"),
    [
        (10, 4, 6, 1.9728e-2),
        (10, 4, 7, 3.5057e-3),
        (20, 4, 12, 9.3539e-4),
        (20, 4, 14, 2.9512e-5),
        (20, 3, 12, 1.2973e-2),
        (20, 3, 14, 8.7881e-4),
        (20, 2, 14, 5.7659e-2),
        (30, 4, 18, 5.0083e-5),
    ],
)
def test_the_tail_of_equal_questions_is_binomial(questions, options, cut, chance):
    # binomial tails, by exact fractions and by a statistics library, to five figures
    found = chance_to_reach([(1, one_of(options))] * questions, cut)
    assert float(found) == pytest.approx(chance, rel=5e-5)


@pytest.mark.parametrize(("cut", "chance"), [(10, 0.04460266), (12, 0.00399133), (14, 0.00015009)])
def test_a_mixed_form_is_convolved(cut, chance):
    form = [(1, one_of(4))] * 8 + [(1, one_of(3))] * 6 + [(1, one_of(2))] * 4
    form += [(1, all_or_nothing(1, 24)), (1, all_or_nothing(1, 31))]
    assert float(chance_to_reach(form, cut)) == pytest.approx(chance, abs=5e-9)


@pytest.mark.parametrize(
    ("questions", "cuts"),
    [
        (10, {2: (10, 10), 3: (8, 9), 4: (7, 8)}),
        (20, {2: (16, 18), 3: (13, 14), 4: (11, 12)}),
        (30, {2: (22, 24), 3: (17, 19), 4: (14, 16)}),
        (40, {2: (28, 31), 3: (21, 24), 4: (18, 20)}),
        (50, {2: (34, 37), 3: (26, 28), 4: (21, 24)}),
    ],
)
def test_the_smallest_cut_that_keeps_luck_out(questions, cuts):
    # smallest cut with a guesser's chance of at most 1 % and 0.1 %
    for options, expected in cuts.items():
        form = [(1, one_of(options))] * questions
        found = tuple(
            next(cut for cut in range(questions + 1) if chance_to_reach(form, cut) <= limit)
            for limit in (Fraction(1, 100), Fraction(1, 1000))
        )
        assert found == expected


@pytest.mark.parametrize(
    ("questions", "options", "cut", "gate", "chance"),
    [(20, 4, 14, 3, 9.7663e-6), (20, 3, 12, 2, 4.8165e-3)],
)
def test_a_gate_multiplies_its_own_chance_with_the_tail_of_the_rest(
    questions, options, cut, gate, chance
):
    one = one_of(options)
    found = chance_to_reach([(1, one)] * (questions - gate), cut - gate, [one] * gate)
    assert float(found) == pytest.approx(chance, rel=5e-5)


def brute_force(form, needed):
    """Add up the chances of all combinations of outcomes that reach the marks."""
    total = Fraction(0)
    for way in product(*[list(outcomes.items()) for _, outcomes in form]):
        score = sum(marks * share for (marks, _), (share, _) in zip(form, way, strict=True))
        if score >= needed:
            chance = Fraction(1)
            for (_, outcomes), (_, weight) in zip(form, way, strict=True):
                chance *= Fraction(weight, sum(outcomes.values()))
            total += chance
    return total


kinds = st.sampled_from([one_of(3), one_of(4), ticks(2, 2), pairs(3, 4), NEVER, ticks(3, 2)])


@settings(deadline=None)
@given(
    st.lists(st.tuples(st.integers(1, 4), kinds), max_size=5),
    st.fractions(-2, 20, max_denominator=6),
)
def test_the_tail_is_that_of_every_combination(form, needed):
    assert chance_to_reach(form, needed) == brute_force(form, needed)


def test_what_cannot_be_reached_has_no_chance_and_nothing_needed_is_certain():
    assert chance_to_reach([(2, NEVER)] * 3, 1) == 0
    assert chance_to_reach([(2, NEVER)] * 3, 0) == 1
    assert chance_to_reach([], 0) == 1


def shares_of(outcomes):
    total = sum(outcomes.values())
    return {share: Fraction(weight, total) for share, weight in outcomes.items() if weight}


def every_guess(plain):
    """Return every answer that a guesser may give, each as likely as the others."""
    key = plain["key"]
    if plain["kind"] == "choice":
        return [Chosen((option["letter"],)) for option in key["options"]]
    if plain["kind"] == "multiple_response":
        letters = [option["letter"] for option in key["options"]]
        sizes = range(1, len(letters) + 1)
        return [Chosen(ticked) for size in sizes for ticked in combinations(letters, size)]
    if plain["kind"] == "order":
        return [Ordered(way) for way in permutations([step["letter"] for step in key["steps"]])]
    numbers = [row["number"] for row in key["left"]]
    letters = [row["letter"] for row in key["right"]]
    return [
        Matched(tuple(zip(numbers, way, strict=True)))
        for way in permutations(letters, len(numbers))
    ]


def test_outcomes_are_those_of_marking_every_answer(tmp_path):
    # the luck of a question is counted by its shape; marking is the independent way
    bank, entry = papers(
        tmp_path,
        plan(
            "{module: filler, kinds: [choice, multiple_response, order, match], count: 5}",
            "{module: cleaning, kinds: [order], count: 1}",
        ),
    )
    seen = set()
    for seed in range(12):
        (form,) = build_forms(bank, entry, f"seed {seed}", ("A",))
        for one in form.questions:
            plain = as_plain(one.question)
            marked = Counter(mark_response(plain, guess).share for guess in every_guess(plain))
            assert shares_of(outcomes_of(one)) == shares_of(marked), plain["id"]
            seen.add(plain["kind"])
    assert {"choice", "order"} <= seen


@given(st.integers(1, 5), st.integers(0, 3))
def test_joining_rows_counts_every_way(rows, spare):
    letters = range(rows + spare)
    found = Counter(
        Fraction(sum(row == letter for row, letter in enumerate(way)), rows)
        for way in permutations(letters, rows)
    )
    assert shares_of(pairs(rows, rows + spare)) == shares_of(found)


@given(st.integers(1, 4), st.integers(1, 5))
def test_joining_rows_where_letters_may_come_twice_counts_every_way(rows, letters):
    found = Counter(
        Fraction(sum(letter == 0 for letter in way), rows)
        for way in product(range(letters), repeat=rows)
    )
    assert shares_of(pairs(rows, letters, each_once=False)) == shares_of(found)


def test_an_order_of_one_chain_is_right_once_in_all_orders():
    steps = "ABCD"
    chain = [("A", "B"), ("B", "C"), ("C", "D")]
    outcomes = orders(steps, chain)
    assert outcomes[Fraction(1)] == 1
    assert sum(outcomes.values()) == factorial(4)


def test_a_form_of_typed_numbers_is_never_passed_by_guessing(tmp_path):
    bank, entry = papers(tmp_path, plan("{module: film_build, kinds: [numeric], count: 2}"))
    (form,) = build_forms(bank, entry, "seed", ("A",))
    assert guesser_passes(form) == 0
