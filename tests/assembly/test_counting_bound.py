"""The counting bound: the plain sum where cells share nothing, a flow where they do."""

from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.assembly.search.candidate_pool import Candidate, Demand, pool_of
from generator.assembly.search.counting_bound import fewest_repeats
from generator.assembly.search.maximum_flow import largest_flow


def cells_of(*sizes, variants=1):
    return tuple(
        Candidate(f"{cell}-{n}", f"{cell}-{n}", (cell,), variants=variants)
        for cell, size in enumerate(sizes)
        for n in range(size)
    )


@given(
    st.lists(st.tuples(st.integers(0, 5), st.integers(0, 12)), min_size=1, max_size=5),
    st.integers(1, 12),
)
def test_separate_cells_add_up_what_each_is_short(cells, forms):
    counts = tuple(count for count, _ in cells)
    pool = pool_of(cells_of(*(size for _, size in cells)), len(cells))
    expected = sum(max(0, forms * count - size) for count, size in cells)
    assert fewest_repeats(pool, Demand(counts, forms)) == expected


def test_the_trial_pool_of_400_is_short_of_twelve_for_twelve_papers():
    sizes, counts = (90, 80, 64, 54, 42, 34, 24, 12), (5, 4, 4, 3, 3, 2, 2, 2)
    assert fewest_repeats(pool_of(cells_of(*sizes), 8), Demand(counts, 12)) == 12
    assert fewest_repeats(pool_of(cells_of(*sizes), 8), Demand(counts, 6)) == 0


def test_a_question_with_values_to_draw_counts_once_for_each():
    pool = pool_of(cells_of(2, variants=5), 1)
    assert fewest_repeats(pool, Demand((2,), 5)) == 0
    assert fewest_repeats(pool, Demand((2,), 7)) == 4


def test_a_record_serves_a_paper_once_however_many_questions_it_gives():
    candidates = tuple(Candidate(f"r/{n}", "r", (0,)) for n in range(9)) + cells_of(1)
    # the record fills one seat on each of three papers, the single question one of the others
    assert fewest_repeats(pool_of(candidates, 1), Demand((2,), 3)) == 2


def test_what_fits_two_cells_is_counted_once():
    both = tuple(Candidate(str(n), str(n), (0, 1)) for n in range(6))
    assert fewest_repeats(pool_of(both, 2), Demand((2, 1), 2)) == 0
    assert fewest_repeats(pool_of(both, 2), Demand((2, 2), 2)) == 2


@pytest.mark.parametrize("forms", [1, 4])
def test_a_fixed_question_repeats_on_every_paper_but_the_first(forms):
    pool = pool_of(cells_of(40), 1)
    assert fewest_repeats(pool, Demand((3,), forms, must=((0, 5),))) == forms - 1


def least_cut(capacity, nodes):
    """Try every way to part source and sink, and give the least that crosses."""
    inner = [node for node in nodes if node not in ("from", "to")]
    cuts = []
    for sides in product((True, False), repeat=len(inner)):
        near = {"from"} | {node for node, side in zip(inner, sides, strict=True) if side}
        cuts.append(sum(c for (a, b), c in capacity.items() if a in near and b not in near))
    return min(cuts)


nodes = ("from", 1, 2, 3, "to")
networks = st.dictionaries(
    st.tuples(st.sampled_from(nodes), st.sampled_from(nodes)).filter(lambda e: e[0] != e[1]),
    st.integers(0, 6),
    max_size=12,
)


@given(networks)
def test_the_largest_flow_is_the_least_cut(capacity):
    # max-flow min-cut, Ford and Fulkerson 1956
    assert largest_flow(capacity, "from", "to") == least_cut(capacity, nodes)
