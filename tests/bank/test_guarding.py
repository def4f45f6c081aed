"""The proof that no accepted order is unsafe agrees with walking along every order."""

from dataclasses import dataclass
from itertools import permutations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.bank.orders.guarding import (
    Unguarded,
    hazards_met,
    step_hazards,
    unguarded,
    unsafe_at,
)
from generator.bank.orders.precedence import has_cycle, is_legal


@dataclass(frozen=True)
class Step:
    step: str
    meets: tuple[str, ...] = ()
    guards: tuple[str, ...] = ()
    ends: tuple[str, ...] = ()


MIX = Step("mix", meets=("peroxide",))
GLOVES = Step("gloves", guards=("peroxide",))
OFF = Step("off", ends=("peroxide",))


def found(steps, pairs=(), wears=()):
    return unguarded(step_hazards(steps, wears), pairs)


def test_a_hazard_without_a_guard_is_found_with_the_shortest_order():
    wash = Step("wash")
    assert found([wash, MIX], [("wash", "mix")]) == (
        Unguarded("mix", "peroxide", "", ("wash", "mix")),
    )


def test_a_guard_that_is_listed_first_and_not_forced_first_does_not_count():
    assert found([GLOVES, MIX]) == (Unguarded("mix", "peroxide", "", ("mix",)),)
    assert found([GLOVES, MIX], [("gloves", "mix")]) == ()


def test_a_guard_forced_through_a_third_step_counts():
    assert found([GLOVES, Step("open"), MIX], [("gloves", "open"), ("open", "mix")]) == ()


def test_a_guard_taken_off_too_early_is_found_with_the_step_that_ends_it():
    steps = [GLOVES, MIX, OFF]
    pairs = [("gloves", "mix"), ("gloves", "off")]
    assert found(steps, pairs) == (Unguarded("mix", "peroxide", "off", ("gloves", "off", "mix")),)
    assert found(steps, [*pairs, ("mix", "off")]) == ()


def test_what_is_worn_from_the_start_guards_until_a_step_ends_it():
    assert found([MIX], wears=("peroxide",)) == ()
    assert found([MIX, OFF], wears=("peroxide",)) == (
        Unguarded("mix", "peroxide", "off", ("off", "mix")),
    )


def test_a_guard_put_on_again_covers_what_follows():
    again = Step("again", guards=("peroxide",))
    steps = [GLOVES, OFF, again, MIX]
    row = [("gloves", "off"), ("off", "again"), ("again", "mix")]
    assert found(steps, row) == ()
    loose = [("gloves", "off"), ("again", "mix"), ("gloves", "mix")]
    assert found(steps, loose)[0].ended == "off"


def test_a_step_does_not_guard_itself():
    both = Step("both", meets=("peroxide",), guards=("peroxide",))
    assert found([both]) == (Unguarded("both", "peroxide", "", ("both",)),)


def test_the_hazards_met_come_once_in_the_order_met():
    @dataclass(frozen=True)
    class Work:
        steps: tuple[Step, ...]

    spray = Step("spray", meets=("mist", "peroxide"))
    assert hazards_met(Work((MIX, GLOVES, spray))) == ("peroxide", "mist")


NAMES = "abcde"
HAZARDS = st.lists(st.sampled_from(["p", "q"]), max_size=2, unique=True).map(tuple)


@st.composite
def work(draw):
    names = NAMES[: draw(st.integers(2, 5))]
    steps = [Step(n, draw(HAZARDS), draw(HAZARDS), draw(HAZARDS)) for n in names]
    one = st.tuples(st.sampled_from(names), st.sampled_from(names)).filter(lambda p: p[0] != p[1])
    pairs = draw(st.lists(one, max_size=6, unique=True))
    return steps, pairs, draw(HAZARDS)


@settings(max_examples=600, deadline=None)
@given(work())
def test_the_proof_agrees_with_every_order_that_keeps_the_pairs(case):
    steps, pairs, wears = case
    if has_cycle(pairs):
        return
    hazards = step_hazards(steps, wears)
    orders = [order for order in permutations([s.step for s in steps]) if is_legal(order, pairs)]
    walked = {spot for order in orders for spot in unsafe_at(hazards, order)}
    proved = unguarded(hazards, pairs)
    assert {(u.step, u.hazard) for u in proved} == walked
    for one in proved:
        rest = [s.step for s in steps if s.step not in one.witness]
        assert any(order[: len(one.witness)] == one.witness for order in orders), (one, rest)
        shortest = min(
            order.index(one.step) + 1
            for order in orders
            if (one.step, one.hazard) in unsafe_at(hazards, order)
        )
        assert len(one.witness) == shortest


@pytest.mark.parametrize("order,expected", [("gm", ()), ("mg", (("m", "p"),))])
def test_walking_along_an_order_sees_the_guard_come(order, expected):
    steps = [Step("g", guards=("p",)), Step("m", meets=("p",))]
    assert unsafe_at(step_hazards(steps, ()), order) == expected
