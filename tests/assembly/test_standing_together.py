"""How many questions can share a paper, against trying every set; large conflicts stay quick."""

from itertools import combinations
from random import Random
from time import process_time

from hypothesis import given
from hypothesis import strategies as st

from generator.assembly.supply.standing_together import maximum_independent_set

NAMES = "abcdefgh"
conflicts = st.sets(st.sampled_from(list(combinations(NAMES, 2))))


def parted(pairs):
    apart = {name: set() for pair in pairs for name in pair}
    for one, other in pairs:
        apart[one].add(other)
        apart[other].add(one)
    return {name: frozenset(others) for name, others in apart.items()}


def by_trying(names, pairs):
    sizes = range(len(names), 0, -1)
    return next(
        (n for n in sizes for s in combinations(names, n) if not set(combinations(s, 2)) & pairs), 0
    )


@given(conflicts)
def test_a_small_group_is_counted_exactly(pairs):
    assert maximum_independent_set(NAMES, parted(pairs)) == by_trying(NAMES, pairs)


@given(conflicts, st.integers(0, len(NAMES)))
def test_what_is_wanted_is_found_wherever_it_can_be(pairs, wanted):
    exact = by_trying(NAMES, pairs)
    assert (maximum_independent_set(NAMES, parted(pairs), wanted) >= wanted) == (exact >= wanted)


def test_a_large_tangle_is_bounded_quickly_and_never_below_what_stands_together():
    chance = Random(10)
    names = [f"{n:03}" for n in range(200)]
    held = set(names[:40])
    pairs = {
        pair for pair in combinations(names, 2) if not set(pair) <= held and chance.random() < 0.25
    }
    start = process_time()
    assert maximum_independent_set(names, parted(pairs)) >= len(held)
    assert process_time() - start < 5
