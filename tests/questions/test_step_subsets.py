"""Sets of steps found with whole numbers are those that the definitions give."""

from itertools import combinations

from hypothesis import given, settings
from hypothesis import strategies as st

from generator.bank.checks import MOST_ORDERS
from generator.bank.models import OrderStep
from generator.bank.orders.guarding import StepHazards, step_hazards, unguarded_where
from generator.bank.orders.precedence import count_orders, transitive_closure
from generator.questions.step_subsets import (
    FEWEST_STEPS,
    MOST_STEPS,
    subsets_to_ask,
)

NAMES = "abcdefg"
HAZARDS = ("dust", "mist")
PLACES = st.integers(0, len(NAMES) - 1)
SOME = st.lists(st.sampled_from(HAZARDS), max_size=2, unique=True).map(tuple)


def plainly(pairs: dict[tuple[str, str], str], hazards: StepHazards) -> tuple[tuple[str, ...], ...]:
    """Return the sets as the definitions spell them out."""
    forced = transitive_closure(pairs)

    def fits(steps: tuple[str, ...]) -> bool:
        shown = frozenset(p for p in forced if p[0] in steps and p[1] in steps)
        tied = {name for pair in shown for name in pair}
        if tied != set(steps) or unguarded_where(hazards.only(set(steps)), shown):
            return False
        return count_orders(steps, shown) <= MOST_ORDERS

    for size in range(min(MOST_STEPS, len(NAMES)), FEWEST_STEPS - 1, -1):
        found = tuple(steps for steps in combinations(NAMES, size) if fits(steps))
        if found:
            return found
    return ()


# the oracle takes its time
@settings(deadline=None)
@given(
    st.lists(st.tuples(PLACES, PLACES), max_size=10),
    st.lists(st.tuples(SOME, SOME, SOME), min_size=len(NAMES), max_size=len(NAMES)),
    SOME,
)
def test_the_sets_are_those_of_the_definitions(
    drawn: list[tuple[int, int]],
    rows: list[tuple[tuple[str, ...], tuple[str, ...], tuple[str, ...]]],
    wears: tuple[str, ...],
) -> None:
    pairs = {(NAMES[min(p)], NAMES[max(p)]): "reason" for p in drawn if p[0] != p[1]}
    steps = [
        OrderStep.model_validate(
            {"step": n, "action": n, "meets": m[:1], "guards": list(g), "ends": list(e)[:1]}
        )
        for n, (m, g, e) in zip(NAMES, rows, strict=True)
    ]
    hazards = step_hazards(steps, wears)
    assert subsets_to_ask(tuple(NAMES), pairs, hazards) == plainly(pairs, hazards)
