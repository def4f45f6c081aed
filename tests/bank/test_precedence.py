"""Orders of steps, each count held against every permutation."""

from itertools import combinations, permutations
from math import factorial

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from generator.bank.orders.precedence import (
    Pairs,
    chain,
    count_orders,
    has_cycle,
    is_legal,
    transitive_closure,
    transitive_reduction,
    within,
    without,
)
from tests.some import some

# five steps of which S and T have one place each, and Q and R may change places
STEPS = "PQRST"
STATED = [("P", "Q"), ("P", "R"), ("Q", "S"), ("R", "S"), ("S", "T")]


@st.composite
def orders(draw: st.DrawFn) -> tuple[str, list[tuple[str, str]]]:
    """Return up to seven steps and pairs that never run in a circle."""
    steps = draw(st.permutations("abcdefg"[: draw(st.integers(1, 7))]))
    possible = list(combinations(steps, 2))
    pairs = draw(st.lists(st.sampled_from(possible), max_size=12)) if possible else []
    return "".join(sorted(steps)), pairs


def by_trying(steps: str, pairs: list[tuple[str, str]]) -> int:
    """Count the orders that keep every pair, by looking at all orders."""
    return sum(
        all(order.index(a) < order.index(b) for a, b in pairs) for order in permutations(steps)
    )


def test_five_stated_pairs_of_five_steps_lead_to_nine_pairs_and_two_orders_of_120() -> None:
    follows = transitive_closure(STATED)
    assert len(follows) == 9
    assert follows - set(STATED) == {("P", "S"), ("P", "T"), ("Q", "T"), ("R", "T")}
    assert count_orders(STEPS, STATED) == 2
    assert by_trying(STEPS, STATED) == 2
    assert count_orders(STEPS, []) == factorial(5) == 120
    legal = ["".join(order) for order in permutations(STEPS) if is_legal(order, STATED)]
    assert legal == ["PQRST", "PRQST"]


@given(orders())
def test_the_count_of_orders_agrees_with_trying_all(
    given_order: tuple[str, list[tuple[str, str]]],
) -> None:
    steps, pairs = given_order
    assert count_orders(steps, pairs) == by_trying(steps, pairs)


@given(orders())
def test_what_follows_from_pairs_changes_no_order(
    given_order: tuple[str, list[tuple[str, str]]],
) -> None:
    steps, pairs = given_order
    assert count_orders(steps, transitive_closure(pairs)) == count_orders(steps, pairs)
    assert count_orders(steps, transitive_reduction(transitive_closure(pairs))) == count_orders(
        steps, pairs
    )


@given(orders())
def test_a_pair_follows_exactly_when_every_legal_order_keeps_it(
    given_order: tuple[str, list[tuple[str, str]]],
) -> None:
    steps, pairs = given_order
    legal = [order for order in permutations(steps) if is_legal(order, pairs)]
    kept = {
        (a, b)
        for a, b in permutations(steps, 2)
        if all(order.index(a) < order.index(b) for order in legal)
    }
    assert transitive_closure(pairs) == kept


@given(orders())
def test_the_direct_pairs_are_the_fewest_that_say_the_same(
    given_order: tuple[str, list[tuple[str, str]]],
) -> None:
    follows = transitive_closure(given_order[1])
    fewest = transitive_reduction(follows)
    assert transitive_closure(fewest) == follows
    for pair in fewest:
        assert transitive_closure(fewest - {pair}) != follows


@given(orders(), st.sets(st.sampled_from("abcdefg")))
def test_some_steps_keep_what_is_said_through_steps_not_shown(
    given_order: tuple[str, list[tuple[str, str]]], kept: set[str]
) -> None:
    _, pairs = given_order
    assert within(pairs, kept) == {(a, b) for a, b in transitive_closure(pairs) if {a, b} <= kept}


@given(orders(), st.sets(st.sampled_from("abcdefg")))
def test_dropping_a_step_infers_nothing_through_it(
    given_order: tuple[str, list[tuple[str, str]]], dropped: set[str]
) -> None:
    _, pairs = given_order
    assert without(pairs, dropped) == {(a, b) for a, b in pairs if not {a, b} & dropped}


@given(orders())
def test_a_chain_leads_from_pair_to_pair_and_exists_where_the_pair_follows(
    given_order: tuple[str, list[tuple[str, str]]],
) -> None:
    steps, pairs = given_order
    assume(len(steps) > 1)
    follows = transitive_closure(pairs)
    for first, then in some(permutations(steps, 2)):
        row = chain(pairs, first, then)
        assert bool(row) == ((first, then) in follows)
        if row:
            assert (row[0][0], row[-1][1]) == (first, then)
            assert all(one[1] == two[0] for one, two in zip(row, row[1:], strict=False))
            assert set(row) <= set(pairs)


def test_a_chain_is_the_shortest() -> None:
    pairs = [("a", "b"), ("b", "c"), ("c", "d"), ("a", "c")]
    assert chain(pairs, "a", "d") == (("a", "c"), ("c", "d"))


@pytest.mark.parametrize(
    "pairs", [[("a", "a")], [("a", "b"), ("b", "a")], [("a", "b"), ("b", "c"), ("c", "a")]]
)
def test_a_circle_is_seen_and_leaves_no_order(pairs: list[tuple[str, str]]) -> None:
    assert has_cycle(pairs)
    assert count_orders("abc", pairs) == 0
    assert chain(pairs, "a", "z") == ()


@given(orders())
def test_pairs_that_come_from_one_order_never_run_in_a_circle(
    given_order: tuple[str, list[tuple[str, str]]],
) -> None:
    assert not has_cycle(given_order[1])


def test_pairs_about_steps_that_are_not_there_change_nothing() -> None:
    pairs: Pairs = frozenset({("a", "z"), ("y", "b")})
    assert count_orders("ab", pairs) == 2
    assert is_legal("ab", pairs)
