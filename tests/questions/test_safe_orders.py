"""Whatever order is marked right, nobody meets a hazard before its guard: walked, not proved.

The proof itself stands in `generator.bank.orders.guarding`; here accepted orders are drawn at
random and
walked along step by step, apart from it.
"""

import random
from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import cache
from itertools import permutations

import pytest

from generator.bank.orders.guarding import StepHazards, step_hazards, unsafe_at
from generator.questions.drawing.ordering import Scored, scored_item, scored_procedure
from generator.questions.question import OrderKey
from tests.real import real_askables, real_bank

ORDERS = 200
PAPERS = 12
MOST_WALKED = 6


@cache
def works() -> dict[str, tuple[StepHazards, list[tuple[str, str]], Scored]]:
    """Return of every procedure and order item hazards, scoring pairs and what a question marks."""
    bank = real_bank()
    entries = [(f"procedures/{n}", e.record, scored_procedure) for n, e in bank.procedures.items()]
    entries += [
        (name, entry.record, scored_item)
        for name, entry in bank.items.items()
        if getattr(entry.record, "kind", "") == "order"
    ]
    return {
        name: (
            step_hazards(record.steps, record.wears),
            [(p.first, p.then) for p in record.pairs if p.pair_class != "habit"],
            scored(record),
        )
        for name, record, scored in entries
    }


def random_orders(
    steps: Sequence[str], pairs: Iterable[tuple[str, str]], label: str
) -> Iterator[tuple[str, ...]]:
    """Draw orders that keep the pairs: again and again one of the steps that may come next."""
    chance = random.Random(label)
    before: Mapping[str, set[str]] = {s: {a for a, b in pairs if b == s} for s in steps}
    for _ in range(ORDERS):
        left, order = set(steps), []
        while left:
            step = chance.choice(sorted(s for s in left if not before[s] & left))
            left.discard(step)
            order.append(step)
        yield tuple(order)


@pytest.mark.parametrize("name", works())
def test_two_hundred_accepted_orders_hold_every_guard_before_its_hazard(name: str) -> None:
    hazards, pairs, _ = works()[name]
    for order in random_orders(list(hazards.steps), pairs, name):
        assert unsafe_at(hazards, order) == (), order


@pytest.mark.parametrize("name", works())
def test_so_do_the_orders_of_what_a_question_marks_and_the_order_as_listed(name: str) -> None:
    hazards, _, scored = works()[name]
    kept = hazards.only(set(scored.steps))
    for order in random_orders(list(scored.steps), list(scored.reasons), name):
        assert unsafe_at(kept, order) == (), order
    assert unsafe_at(hazards, list(hazards.steps)) == ()


def accepted(
    letters: Sequence[str], pairs: Sequence[tuple[str, str]], label: str
) -> Iterator[tuple[str, ...]]:
    """Return every order that keeps the pairs, or some drawn at random if there are many lines."""
    if len(letters) > MOST_WALKED:
        yield from random_orders(letters, pairs, label)
        return
    for order in permutations(letters):
        spot = {letter: place for place, letter in enumerate(order)}
        if all(spot[a] < spot[b] for a, b in pairs):
            yield order


def order_questions() -> list[str]:
    return [a.name for a in real_askables() if a.kind == "order"]


@pytest.mark.parametrize("name", order_questions())
def test_every_order_that_a_drawn_question_takes_is_safe(name: str) -> None:
    known = {a.name: a for a in real_askables()}
    record = name.removesuffix("/order") if name.startswith("procedures/") else name
    hazards, _, scored = works()[record]
    step_of = {text: step for step, text in scored.steps.items()}
    for paper in range(PAPERS):
        question = known[name].make(f"paper {paper}", ())
        assert question is not None and isinstance(question.key, OrderKey)
        shown = {letter: step_of[text] for letter, text in question.key.steps}
        kept = hazards.only(set(shown.values()))
        pairs = [(p.first, p.then) for p in question.key.pairs]
        orders = list(accepted(list(shown), pairs, f"{name} {paper}"))
        assert len(shown) > MOST_WALKED or len(orders) == question.key.orders
        for order in orders:
            assert unsafe_at(kept, [shown[letter] for letter in order]) == (), order
        assert unsafe_at(kept, [shown[letter] for letter in question.key.one_order]) == ()


def test_the_bank_has_hazards_on_the_work_that_hurts() -> None:
    met = {
        hazard for h, _, _ in works().values() for step in h.steps.values() for hazard in step.meets
    }
    wanted = {"isocyanate_mist", "isocyanate_skin", "peroxide", "acid", "stripper", "sanding_dust"}
    assert wanted <= met
    assert len(works()) >= 50
