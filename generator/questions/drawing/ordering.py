"""Order questions: from hand-written items and from procedure records."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations

from generator.bank import (
    Pairs,
    StepHazards,
    chain,
    closure,
    count_orders,
    direct,
    is_legal,
    step_hazards,
    unguarded_where,
    within,
    without,
)
from generator.bank.models import OrderItem, OrderPair, OrderStep, Pair, Procedure
from generator.questions.drawing.seeded_random import SeededRandom
from generator.questions.question import LETTERS, OrderKey, ShownPair

MOST_ORDERS = 24
FEWEST_STEPS = 4
MOST_STEPS = 6


@dataclass(frozen=True, slots=True)
class Scored:
    """The steps and scoring pairs that an order question may use.

    steps    texts by name, in a legal order; optional steps are left out
    reasons  what to say about each stated pair
    classes  danger or ruins, for each stated pair
    hazards  what the steps meet, guard and end
    """

    steps: Mapping[str, str]
    reasons: Mapping[tuple[str, str], str]
    classes: Mapping[tuple[str, str], str]
    hazards: StepHazards = StepHazards()


def scored_item(item: OrderItem) -> Scored:
    """Return what a hand-written order item marks."""
    return _scored(item.steps, item.pairs, item.wears)


def scored_procedure(procedure: Procedure) -> Scored:
    """Return what a procedure lets a question mark; habits never score."""
    steps = [step for step in procedure.steps if not step.optional]
    return _scored(steps, procedure.pairs, procedure.wears)


def _scored(
    listed: Sequence[OrderStep], pairs: Sequence[Pair | OrderPair], wears: Sequence[str]
) -> Scored:
    steps = {step.step: step.action for step in listed}
    marked = {(p.first, p.then): p for p in pairs if p.pair_class != "habit"}
    dropped = {name for pair in marked for name in pair if name not in steps}
    kept = without(marked, dropped)
    return Scored(
        steps,
        {pair: marked[pair].reason for pair in sorted(kept)},
        {pair: marked[pair].pair_class for pair in sorted(kept)},
        step_hazards(listed, wears),
    )


def drawable_subsets(scored: Scored) -> tuple[tuple[str, ...], ...]:
    """Return the sets of steps of which few enough orders are right to ask for one.

    Every step of a set is tied to another one, and a step that meets a hazard brings its guard
    along, so that no order of the set that is right is unsafe. Of the sizes from MOST_STEPS down to
    FEWEST_STEPS the largest that has such a set is used.
    """
    names = tuple(scored.steps)
    implied = closure(scored.reasons)
    sizes = range(min(MOST_STEPS, len(names)), FEWEST_STEPS - 1, -1)
    for size in sizes:
        found = tuple(
            s for s in combinations(names, size) if _is_drawable(s, implied, scored.hazards)
        )
        if found:
            return found
    return ()


def _is_drawable(steps: Sequence[str], implied: Pairs, hazards: StepHazards) -> bool:
    shown = set(steps)
    pairs = frozenset(pair for pair in implied if pair[0] in shown and pair[1] in shown)
    tied = {name for pair in pairs for name in pair}
    if tied != shown or unguarded_where(hazards.only(shown), pairs):
        return False
    return count_orders(steps, pairs) <= MOST_ORDERS


def order_key(scored: Scored, steps: Sequence[str], stream: SeededRandom) -> OrderKey:
    """Return the lettered steps in a drawn order, with every pair that scores."""
    shuffled = stream.shuffled(steps)
    pairs = within(scored.reasons, steps)
    if is_legal(shuffled, pairs):
        # a right order turned round breaks every pair, so doing nothing never scores
        shuffled = tuple(reversed(shuffled))
    letters = {name: LETTERS[place] for place, name in enumerate(shuffled)}
    told = direct(pairs) | _stated_dangers(scored, steps)
    shown = sorted(told, key=lambda pair: (letters[pair[0]], letters[pair[1]]))
    return OrderKey(
        steps=tuple((letters[name], scored.steps[name]) for name in shuffled),
        pairs=tuple(_shown_pair(scored, pair, letters) for pair in shown),
        orders=count_orders(steps, pairs),
        one_order=tuple(letters[name] for name in steps),
    )


def _stated_dangers(scored: Scored, steps: Sequence[str]) -> Pairs:
    """Return the dangers among some steps; one is told even where other pairs imply it."""
    dangers = {pair for pair, its_class in scored.classes.items() if its_class == "danger"}
    return frozenset(pair for pair in dangers if set(pair) <= set(steps))


def _shown_pair(scored: Scored, pair: tuple[str, str], letters: Mapping[str, str]) -> ShownPair:
    row = chain(scored.reasons, *pair)
    classes = {scored.classes[link] for link in row}
    reasons = dict.fromkeys(scored.reasons[link] for link in row)
    return ShownPair(
        letters[pair[0]],
        letters[pair[1]],
        "danger" if "danger" in classes else "ruins",
        " ".join(reasons),
    )
