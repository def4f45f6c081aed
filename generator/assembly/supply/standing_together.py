"""How many questions can share a paper when some are kept apart."""

from collections.abc import Iterable, Mapping

Apart = Mapping[str, frozenset[str]]
# sets that are tried before the bound stands in for the answer
MOST_TRIES = 2_000


def maximum_independent_set(names: Iterable[str], apart: Apart, wanted: int | None = None) -> int:
    """Return the size of the largest set of names of which no two are kept apart.

    wanted  this many are enough: a size at or above it may be given for a larger one
    Exact, but where the conflicts are too many to try the sets: there it is a bound that no set
    passes, so that what is called short is short.
    """
    left = set(names)
    if wanted is not None and len(_one_by_one(left, apart, wanted)) >= wanted:
        return wanted
    count = 0
    while left:
        group = _connected(min(left), left, apart)
        left -= group
        count += _Group(apart).largest(group)
    return count


def _one_by_one(names: set[str], apart: Apart, wanted: int) -> set[str]:
    """Return so many names that can share a paper, or fewer: those with fewest conflicts first."""
    left: set[str] = set(names)
    chosen: set[str] = set()
    while left and len(chosen) < wanted:
        name = min(left, key=lambda name: (len(apart.get(name, frozenset()) & left), name))
        chosen.add(name)
        left -= apart.get(name, frozenset()) | {name}
    return chosen


def _cliques(names: set[str], apart: Apart) -> int:
    """Return a bound: the number of sets, each all kept apart, that hold all the names."""
    cliques: list[set[str]] = []
    for name in sorted(names, key=lambda name: (-len(apart.get(name, frozenset()) & names), name)):
        conflicts = apart.get(name, frozenset())
        fitting = next((clique for clique in cliques if clique <= conflicts), None)
        if fitting is None:
            cliques.append({name})
        else:
            fitting.add(name)
    return len(cliques)


def _connected(start: str, among: set[str], apart: Apart) -> set[str]:
    found, waiting = {start}, [start]
    while waiting:
        near = (apart.get(waiting.pop(), frozenset()) & among) - found
        found |= near
        waiting += sorted(near)
    return found


class _Group:
    """Tries the sets of a group of names that hang together by their conflicts."""

    def __init__(self, apart: Apart) -> None:
        self.apart = apart
        self.tries = 0

    def largest(self, group: set[str]) -> int:
        bound, found = _cliques(group, self.apart), len(_one_by_one(group, self.apart, len(group)))
        if found == bound:
            return bound
        exact = self._branch(group)
        return bound if exact is None else exact

    def _branch(self, group: set[str]) -> int | None:
        """Branch on the name with the most conflicts: without it, or with it and none of those.

        Returns None where the tries run out.
        """
        self.tries += 1
        if self.tries > MOST_TRIES:
            return None
        if not group:
            return 0
        busiest = max(sorted(group), key=lambda name: len(self._conflicts(name) & group))
        conflicts = self._conflicts(busiest) & group
        if not conflicts:
            return len(group)
        without = self._branch(group - {busiest})
        beside = self._branch(group - {busiest} - conflicts) if without is not None else None
        return None if without is None or beside is None else max(without, 1 + beside)

    def _conflicts(self, name: str) -> frozenset[str]:
        return self.apart.get(name, frozenset())
