"""Which orders of steps are legal, given the pairs that must keep their order."""

from collections.abc import Iterable, Mapping, Sequence
from functools import cache

Pairs = frozenset[tuple[str, str]]


def transitive_closure(pairs: Iterable[tuple[str, str]]) -> Pairs:
    """Return every 'first before then' that follows from the pairs."""
    after: dict[str, set[str]] = {}
    for first, then in pairs:
        after.setdefault(first, set()).add(then)
    return frozenset((first, then) for first in after for then in _all_after(first, after))


def _all_after(first: str, after: Mapping[str, set[str]]) -> set[str]:
    found: set[str] = set()
    waiting = [first]
    while waiting:
        more = after.get(waiting.pop(), set()) - found
        found |= more
        waiting += more
    return found


def has_cycle(pairs: Iterable[tuple[str, str]]) -> bool:
    """Return whether the pairs ask for a step to come before itself."""
    return any(first == then for first, then in transitive_closure(pairs))


def without(pairs: Iterable[tuple[str, str]], dropped: Iterable[str]) -> Pairs:
    """Return the pairs left when steps are dropped; nothing is inferred through a dropped step."""
    gone = set(dropped)
    return frozenset((a, b) for a, b in pairs if a not in gone and b not in gone)


def within(pairs: Iterable[tuple[str, str]], kept: Iterable[str]) -> Pairs:
    """Return what the pairs say about some of the steps, also through steps not shown."""
    shown = set(kept)
    return frozenset((a, b) for a, b in transitive_closure(pairs) if a in shown and b in shown)


def transitive_reduction(pairs: Pairs) -> Pairs:
    """Return the pairs from which all the others follow."""
    return frozenset(
        (a, c)
        for a, c in pairs
        if not any((a, b) in pairs and (b, c) in pairs for b in {first for first, _ in pairs})
    )


def is_legal(order: Sequence[str], pairs: Iterable[tuple[str, str]]) -> bool:
    """Return whether an order keeps every pair."""
    spot = {step: place for place, step in enumerate(order)}
    return all(spot[a] < spot[b] for a, b in pairs if a in spot and b in spot)


def count_orders(steps: Sequence[str], pairs: Iterable[tuple[str, str]]) -> int:
    """Count the legal orders of the steps."""
    before = _predecessors(steps, pairs)
    whole = (1 << len(steps)) - 1

    @cache
    def from_here(done: int) -> int:
        if done == whole:
            return 1
        free = (
            place
            for place in range(len(steps))
            if not done >> place & 1 and before[place] & ~done == 0
        )
        return sum(from_here(done | 1 << place) for place in free)

    return from_here(0)


def _predecessors(steps: Sequence[str], pairs: Iterable[tuple[str, str]]) -> Mapping[int, int]:
    spot = {step: place for place, step in enumerate(steps)}
    before = dict.fromkeys(range(len(steps)), 0)
    for first, then in pairs:
        if first in spot and then in spot:
            before[spot[then]] |= 1 << spot[first]
    return before


def chain(pairs: Iterable[tuple[str, str]], first: str, then: str) -> tuple[tuple[str, str], ...]:
    """Return the shortest row of stated pairs that leads from one step to another."""
    stated = sorted(pairs)
    rows: list[tuple[tuple[str, str], ...]] = [(pair,) for pair in stated if pair[0] == first]
    seen = {first}
    while rows:
        row = rows.pop(0)
        end = row[-1][1]
        if end == then:
            return row
        if end not in seen:
            seen.add(end)
            rows += [(*row, pair) for pair in stated if pair[0] == end]
    return ()
