"""Which steps of a piece of work make an order question, found with whole numbers as sets of steps.

`guarding.unguarded_where` and `precedence.count_orders` say the same at length, and are the oracle.
"""

from collections.abc import Mapping, Sequence
from functools import lru_cache
from itertools import combinations

from generator.bank import StepHazards, closure

MOST_ORDERS = 24
FEWEST_STEPS = 4
MOST_STEPS = 6


def subsets_to_ask(
    names: Sequence[str], pairs: Mapping[tuple[str, str], object], hazards: StepHazards
) -> tuple[tuple[str, ...], ...]:
    """Return the sets of steps of which few enough orders are right to ask for one.

    Every step of a set is tied to another one, and a step that meets a hazard brings its guard
    along, so that no order of the set that is right is unsafe. Of the sizes from MOST_STEPS down to
    FEWEST_STEPS the largest that has such a set is used.
    """
    work = _Work(names, pairs, hazards)
    for size in range(min(MOST_STEPS, len(names)), FEWEST_STEPS - 1, -1):
        found = tuple(
            tuple(names[place] for place in places)
            for places in combinations(range(len(names)), size)
            if work.is_drawable(places)
        )
        if found:
            return found
    return ()


class _Work:
    """The steps by their place; a set of steps is a number with a bit for each."""

    def __init__(
        self, names: Sequence[str], pairs: Mapping[tuple[str, str], object], hazards: StepHazards
    ) -> None:
        spot = {name: place for place, name in enumerate(names)}
        self.before = [0] * len(names)
        self.after = [0] * len(names)
        for first, then in closure(pairs):
            if first in spot and then in spot:
                self.before[spot[then]] |= 1 << spot[first]
                self.after[spot[first]] |= 1 << spot[then]
        self.tied = [b | a for b, a in zip(self.before, self.after, strict=True)]
        self.worn = hazards.wears
        self.meets: list[tuple[str, ...]] = [() for _ in names]
        self.guards: dict[str, int] = {}
        self.ends: dict[str, int] = {}
        for name, step in hazards.steps.items():
            if name in spot:
                self.meets[spot[name]] = step.meets
                for hazard in step.guards:
                    self.guards[hazard] = self.guards.get(hazard, 0) | 1 << spot[name]
                for hazard in step.ends:
                    self.ends[hazard] = self.ends.get(hazard, 0) | 1 << spot[name]

    def is_drawable(self, places: Sequence[int]) -> bool:
        """Say whether some steps make a question."""
        shown = 0
        for place in places:
            shown |= 1 << place
        for place in places:
            if not self.tied[place] & shown:
                return False
        for place in places:
            for hazard in self.meets[place]:
                if not self._is_guarded(place, hazard, shown):
                    return False
        return _orders(tuple(self._within(self.before[p], places) for p in places)) <= MOST_ORDERS

    def _is_guarded(self, place: int, hazard: str, shown: int) -> bool:
        """Say whether every right order has the guard on when it comes to a step."""
        before = self.before[place] & shown
        guards = self.guards.get(hazard, 0) & shown
        if hazard not in self.worn and not before & guards:
            return False
        ends = self.ends.get(hazard, 0) & shown & ~guards & ~(1 << place)
        return all(
            self.before[end] >> place & 1 or self.after[end] & guards & before
            for end in range(ends.bit_length())
            if ends >> end & 1
        )

    @staticmethod
    def _within(steps: int, places: Sequence[int]) -> int:
        """Return a set of steps with its bits counted along the places of the question."""
        return sum((steps >> place & 1) << at for at, place in enumerate(places))


@lru_cache(maxsize=4096)
def _orders(before: tuple[int, ...]) -> int:
    """Count the right orders of steps of which each has some that must come before it."""
    ways = {0: 1}
    for _ in before:
        after: dict[int, int] = {}
        for done, count in ways.items():
            for place, needed in enumerate(before):
                if not done >> place & 1 and needed & ~done == 0:
                    both = done | 1 << place
                    after[both] = after.get(both, 0) + count
        ways = after
    return sum(ways.values())
