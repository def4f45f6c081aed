"""How many questions can share a paper when some are kept apart."""

from collections.abc import Iterable, Mapping


def most_together(names: Iterable[str], apart: Mapping[str, frozenset[str]]) -> int:
    """Give the size of the largest set of names of which no two are kept apart, exactly."""
    left = set(names)
    count = 0
    while left:
        group = _connected(min(left), left, apart)
        left -= group
        count += _largest(group, apart)
    return count


def _connected(start: str, among: set[str], apart: Mapping[str, frozenset[str]]) -> set[str]:
    found, waiting = {start}, [start]
    while waiting:
        near = (apart.get(waiting.pop(), frozenset()) & among) - found
        found |= near
        waiting += sorted(near)
    return found


def _largest(group: set[str], apart: Mapping[str, frozenset[str]]) -> int:
    """Branch on the name with the most conflicts: without it, or with it and none of those."""
    if not group:
        return 0
    busiest = max(sorted(group), key=lambda name: len(apart.get(name, frozenset()) & group))
    conflicts = apart.get(busiest, frozenset()) & group
    if not conflicts:
        return len(group)
    without = _largest(group - {busiest}, apart)
    return max(without, 1 + _largest(group - {busiest} - conflicts, apart))
