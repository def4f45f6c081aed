"""Order questions: few enough right orders, every scoring pair shown, none given away."""

from itertools import permutations

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from generator.bank.orders.precedence import has_cycle, is_legal, transitive_closure
from generator.questions.drawing.ordering import (
    MOST_ORDERS,
    Scored,
    drawable_subsets,
    order_key,
    scored_item,
    scored_procedure,
)
from generator.questions.drawing.seeded_random import SeededRandom
from tests.questions.small_bank import MIX_FILLER, WASH_ORDER, bank_of, items
from tests.some import some


def scored_of(steps, pairs, danger=()):
    return Scored(
        {name: f"do {name}" for name in steps},
        {pair: f"{pair[0]} opens the way for {pair[1]}." for pair in sorted(pairs)},
        {pair: "danger" if pair in danger else "ruins" for pair in sorted(pairs)},
    )


@pytest.fixture(scope="module")
def bank(tmp_path_factory):
    return bank_of(
        tmp_path_factory.mktemp("bank"),
        {
            "items/cleaning/wash.yml": items(order=WASH_ORDER),
            "procedures/mix_filler.yml": MIX_FILLER,
        },
    )


def right_orders(key):
    letters = [letter for letter, _ in key.steps]
    pairs = [(pair.first, pair.then) for pair in key.pairs]
    return [order for order in permutations(letters) if is_legal(order, pairs)]


def test_a_habit_never_scores(bank):
    scored = scored_item(bank.items["cleaning/wash/order"].record)
    assert ("wipe", "tape") not in scored.reasons
    assert len(scored.reasons) == 4
    key = order_key(scored, tuple(scored.steps), SeededRandom("habit"))
    assert key.orders == 2


def test_an_optional_step_and_its_pairs_are_left_out(bank):
    scored = scored_procedure(bank.procedures["mix_filler"].record)
    assert "lamp" not in scored.steps
    assert all("lamp" not in pair for pair in scored.reasons)
    assert scored.classes["goggles", "knead"] == "danger"


def test_the_count_of_orders_is_that_of_a_brute_force_count(bank):
    scored = scored_item(bank.items["cleaning/wash/order"].record)
    key = order_key(scored, tuple(scored.steps), SeededRandom("count"))
    # rinse, wash, dry come in a row; then wipe and tape in either order
    assert key.orders == len(right_orders(key)) == 2
    assert key.one_order in right_orders(key)


def test_every_pair_shown_has_its_class_and_its_reason(bank):
    scored = scored_item(bank.items["cleaning/wash/order"].record)
    key = order_key(scored, tuple(scored.steps), SeededRandom("pairs"))
    texts = dict(key.steps)
    told = {(texts[p.first], texts[p.then]): (p.pair_class, p.reason) for p in key.pairs}
    assert told == {
        ("Rinse the dirt off", "Wash with soap"): ("ruins", "Grit scratches under the sponge."),
        ("Wash with soap", "Dry the panel"): ("ruins", "Soap left to dry stays on."),
        ("Dry the panel", "Wipe with cleaner"): ("danger", "Cleaner on water splashes."),
        ("Dry the panel", "Tape the edge"): ("ruins", "Tape does not stick to water."),
    }


def test_a_pair_through_a_step_not_shown_gives_both_reasons_and_the_graver_class():
    scored = scored_of("abcd", [("a", "b"), ("b", "c"), ("c", "d")], danger=[("a", "b")])
    key = order_key(scored, ("a", "c", "d"), SeededRandom("through"))
    letters = {text: letter for letter, text in key.steps}
    (through,) = [pair for pair in key.pairs if pair.first == letters["do a"]]
    assert through.then == letters["do c"]
    assert through.reason == "a opens the way for b. b opens the way for c."
    assert through.pair_class == "danger"


def test_a_stated_danger_is_shown_though_other_pairs_imply_it():
    scored = scored_of("abc", [("a", "b"), ("b", "c"), ("a", "c")], danger=[("a", "c")])
    key = order_key(scored, ("a", "b", "c"), SeededRandom("danger"))
    texts = dict(key.steps)
    told = {(texts[pair.first], texts[pair.then]): pair.pair_class for pair in key.pairs}
    assert told["do a", "do c"] == "danger"


def test_steps_are_asked_for_only_where_all_are_tied():
    # 'e' is tied to nothing, so no set may hold it
    subsets = drawable_subsets(scored_of("abcde", [("a", "b"), ("b", "c"), ("c", "d")]))
    assert subsets == (("a", "b", "c", "d"),)


def test_sets_with_too_many_orders_are_not_asked_for():
    # one step before five others: 120 orders of six, 24 of five
    scored = scored_of("abcdef", [("a", step) for step in "bcdef"])
    assert {len(subset) for subset in drawable_subsets(scored)} == {5}


def test_nothing_is_drawn_where_no_four_steps_hang_together():
    assert drawable_subsets(scored_of("abcd", [("a", "b"), ("b", "c")])) == ()


def test_long_work_is_asked_for_six_steps_at_a_time():
    row = "abcdefgh"
    scored = scored_of(row, list(zip(row, row[1:], strict=False)))
    subsets = drawable_subsets(scored)
    assert {len(subset) for subset in subsets} == {6}
    assert len(subsets) == 28


steps = st.integers(min_value=4, max_value=7).map(lambda count: "abcdefg"[:count])
orders = steps.flatmap(
    lambda names: st.tuples(
        st.just(names),
        st.sets(
            st.sampled_from([(a, b) for place, a in enumerate(names) for b in names[place + 1 :]]),
            min_size=1,
        ),
        st.text(max_size=6),
    )
)


@given(orders)
def test_what_is_shown_never_is_a_right_order_and_the_key_always_is(drawn):
    names, pairs, label = drawn
    key = order_key(scored_of(names, pairs), tuple(names), SeededRandom(label))
    shown = tuple(letter for letter, _ in key.steps)
    told = [(pair.first, pair.then) for pair in key.pairs]
    assert shown == tuple("ABCDEFG"[: len(names)])
    assert not is_legal(shown, told)
    assert is_legal(key.one_order, told)


@given(orders)
def test_the_pairs_shown_allow_the_same_orders_as_the_pairs_stated(drawn):
    names, pairs, label = drawn
    key = order_key(scored_of(names, pairs), tuple(names), SeededRandom(label))
    texts = dict(key.steps)
    told = {(texts[p.first][3:], texts[p.then][3:]) for p in key.pairs}
    assert transitive_closure(told) == transitive_closure(pairs)
    assert key.orders == len(right_orders(key))


@given(orders)
def test_drawn_sets_keep_to_the_limits(drawn):
    names, pairs, label = drawn
    scored = scored_of(names, pairs)
    subsets = drawable_subsets(scored)[:3]
    assume(subsets)
    for subset in some(subsets):
        key = order_key(scored, subset, SeededRandom(label))
        tied = {letter for pair in key.pairs for letter in (pair.first, pair.then)}
        assert 4 <= len(subset) <= 6
        assert 1 <= key.orders <= MOST_ORDERS
        assert tied == {letter for letter, _ in key.steps}
        assert not has_cycle([(pair.first, pair.then) for pair in key.pairs])
