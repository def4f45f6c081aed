"""The search against every possible choice, and against an integer-programming solver."""

from itertools import combinations

import numpy
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp

from generator.assembly.search.balance import balance_of
from generator.assembly.search.candidate_pool import Candidate, Demand, pool_of
from generator.assembly.search.counting_bound import fewest_repeats
from generator.assembly.search.filling import CannotFill
from generator.assembly.search.limits import shortfalls
from generator.assembly.search.search import search
from tests.assembly.small_pools import (
    ENEMIES,
    TWELVE,
    fewest_repeats_of_all,
    papers_of,
    twelve,
)


def feasible_sixes(most_seconds=450):
    return [
        paper
        for paper in papers_of(twelve(), (2, 2, 2))
        if sum(TWELVE[place][4] for place in paper) <= most_seconds
    ]


def best_sixes(papers):
    top = max(round(sum(TWELVE[place][3] for place in paper), 9) for paper in papers)
    found = [p for p in papers if round(sum(TWELVE[place][3] for place in p), 9) == top]
    return top, [tuple(TWELVE[place][0] for place in paper) for paper in found]


def by_solver(gain, share_band=None):
    """Return the best six of the worked pool by integer programming."""
    rows, low, high = [], [], []
    for category in "abc":
        rows.append([float(item[1] == category) for item in TWELVE])
        low.append(2)
        high.append(2)
    rows.append([float(item[4]) for item in TWELVE])
    low.append(0)
    high.append(450)
    for pair in ENEMIES:
        rows.append([float(str(item[0]) in pair) for item in TWELVE])
        low.append(0)
        high.append(1)
    if share_band:
        rows.append([item[2] for item in TWELVE])
        low.append(share_band[0])
        high.append(share_band[1])
    solved = milp(
        [-item[gain] for item in TWELVE],
        constraints=LinearConstraint(numpy.array(rows), low, high),
        integrality=numpy.ones(len(TWELVE)),
        bounds=Bounds(0, 1),
    )
    chosen = tuple(item[0] for item, x in zip(TWELVE, solved.x, strict=True) if x > 0.5)
    return round(-solved.fun, 9), chosen


def test_the_worked_pool_has_88_papers_and_one_best():
    # published counts and optimum of this pool: trying all, and a solver, agree
    papers = feasible_sixes()
    assert len(papers) == 88
    assert best_sixes(papers) == (2.10, [(3, 4, 5, 6, 10, 11)])
    assert by_solver(3) == (2.10, (3, 4, 5, 6, 10, 11))


def test_a_band_on_the_expected_share_leaves_46_papers_and_one_best():
    papers = [p for p in feasible_sixes() if abs(sum(TWELVE[i][2] for i in p) - 4.2) <= 0.15 + 1e-9]
    assert len(papers) == 46
    assert best_sixes(papers) == (2.02, [(3, 4, 5, 6, 9, 11)])
    assert by_solver(3, (4.05, 4.35)) == (2.02, (3, 4, 5, 6, 9, 11))


def test_the_search_finds_only_papers_that_are_possible_and_many_of_them():
    possible = set(feasible_sixes())
    demand = Demand((2, 2, 2), 1, seconds=450)
    found = set()
    for seed in range(150):
        papers = search(twelve(), demand, "six", str(seed))
        assert shortfalls(papers) == ()
        found.add(tuple(sorted(papers.chosen(0))))
    assert found <= possible
    assert len(found) > 30


def pairs_of_fours():
    """Return the pairs of papers of four without a common question, one or two of each category."""
    counts = ((2, 1, 1), (1, 2, 1), (1, 1, 2))
    fours = [paper for one in counts for paper in papers_of(twelve(), one)]
    return [(a, b) for a, b in combinations(fours, 2) if not set(a) & set(b)]


def differences(pair):
    return tuple(
        round(abs(sum(TWELVE[i][what] for i in pair[0]) - sum(TWELVE[i][what] for i in pair[1])), 9)
        for what in (2, 3, 4)
    )


def test_two_papers_of_four_have_3540_choices_and_one_most_alike():
    # published count and optimum: least difference of shares, then discrimination, then seconds
    pairs = pairs_of_fours()
    assert len(pairs) == 3540
    best = min(pairs, key=differences)
    assert differences(best) == (0, 0, 10)
    assert {tuple(TWELVE[i][0] for i in paper) for paper in best} == {(3, 8, 10, 11), (4, 6, 7, 9)}
    assert sum(differences(pair) == (0, 0, 10) for pair in pairs) == 1


@pytest.mark.parametrize("counts", [(2, 1, 1), (1, 2, 1), (1, 1, 2)])
def test_two_papers_come_out_as_alike_as_any_choice_of_the_same_cells(counts):
    alike = [
        pair
        for pair in combinations(papers_of(twelve(), counts), 2)
        if not set(pair[0]) & set(pair[1])
    ]

    def unlike(pair):
        shares, _, seconds = differences(pair)
        return (1000 * shares / 100) ** 2 + (seconds / 30) ** 2

    best = min(map(unlike, alike))
    found = []
    for seed in range(5):
        papers = search(twelve(), Demand(counts, 2), "four", str(seed))
        assert papers.repeats == 0
        pair = (papers.chosen(0), papers.chosen(1))
        found.append(unlike(pair))
    # within the bands of half a tenth of a mark and half of half a minute, or the best there is
    assert min(found) <= max(best, 2 * (0.5**2 + 0.5**2))


small = st.builds(
    lambda sizes, apart: (sizes, apart),
    st.lists(st.integers(1, 3), min_size=2, max_size=4),
    st.lists(st.tuples(st.integers(0, 8), st.integers(0, 8)), max_size=3),
)


def small_pool(sizes, apart, cells):
    """Return records of so many questions each, spread over the cells in turn."""
    candidates = tuple(
        Candidate(f"{record}/{number}", str(record), ((record + number) % cells,))
        for record, size in enumerate(sizes)
        for number in range(size)
    )
    named = [candidate.name for candidate in candidates]
    sets = tuple((named[a % len(named)], named[b % len(named)]) for a, b in apart)
    return pool_of(candidates, cells, tuple(pair for pair in sets if pair[0] != pair[1]))


@settings(deadline=None, max_examples=60)
@given(small, st.tuples(st.integers(0, 2), st.integers(0, 2)), st.integers(1, 3))
def test_no_choice_of_papers_repeats_fewer_than_the_search(shape, counts, forms):
    pool = small_pool(*shape, 2)
    fewest = fewest_repeats_of_all(pool, counts, forms)
    demand = Demand(counts, forms)
    if fewest is None:
        with pytest.raises(CannotFill):
            search(pool, demand, "small")
        return
    papers = search(pool, demand, "small")
    assert papers.repeats == fewest
    assert fewest_repeats(pool, demand) <= fewest


def repeats_by_solver(pool, demand):
    """Return the fewest repeats by integer programming: a variable for each paper and question."""
    forms, size = demand.forms, len(pool.candidates)
    count = size * forms + size
    rows, low, high = [], [], []

    def rule(places, least, most):
        row = numpy.zeros(count)
        row[places] = 1
        rows.append(row)
        low.append(least)
        high.append(most)
        return row

    for form in range(forms):
        for cell, wanted in enumerate(demand.counts):
            rule([form * size + place for place in pool.cells[cell]], wanted, wanted)
        for place, others in enumerate(pool.apart):
            for other in others:
                rule([form * size + place, form * size + other], 0, 1)
    for place, candidate in enumerate(pool.candidates):
        row = rule([form * size + place for form in range(forms)], -numpy.inf, candidate.variants)
        row[size * forms + place] = -1
    cost = numpy.concatenate([numpy.zeros(size * forms), numpy.ones(size)])
    most = numpy.concatenate([numpy.ones(size * forms), numpy.full(size, forms)])
    solved = milp(
        cost,
        constraints=LinearConstraint(numpy.array(rows), low, high),
        integrality=numpy.ones(count),
        bounds=Bounds(0, most),
    )
    assert solved.status == 0, solved.message
    return round(solved.fun)


@pytest.mark.parametrize("seed", range(6))
def test_the_search_repeats_as_few_as_the_solver_finds_possible(seed):
    chance = numpy.random.Generator(numpy.random.PCG64(seed))
    sizes = [14, 9, 6]
    counts = (4, 3, 2)
    candidates = tuple(
        Candidate(
            f"{cell}-{number}",
            f"{cell}-{number if chance.random() < 0.6 else number // 3}",
            (cell,),
            expected=int(chance.integers(300, 900)),
            seconds=int(chance.integers(30, 150)),
            variants=int(chance.choice([1, 1, 1, 5])),
        )
        for cell, size in enumerate(sizes)
        for number in range(size)
    )
    named = [candidate.name for candidate in candidates]
    apart = tuple(tuple(chance.choice(named, 2, replace=False).tolist()) for _ in range(6))
    pool = pool_of(candidates, 3, apart)
    demand = Demand(counts, 5)
    papers = search(pool, demand, "solver", str(seed))
    assert papers.repeats == repeats_by_solver(pool, demand)
    assert balance_of(papers).bound <= papers.repeats


def big_pool(pairs):
    """Return 400 questions in 8 uneven cells, like the pool of the benchmark."""
    chance = numpy.random.Generator(numpy.random.PCG64(pairs))
    sizes = (90, 80, 64, 54, 42, 34, 24, 12)
    candidates = tuple(
        Candidate(
            f"{cell}-{number}",
            f"{cell}-{number}",
            (cell,),
            objective=f"{cell}-{number % 5}",
            expected=int(chance.integers(300, 900)),
            seconds=int(chance.integers(30, 120)),
        )
        for cell, size in enumerate(sizes)
        for number in range(size)
    )
    named = [candidate.name for candidate in candidates]
    apart = tuple(tuple(chance.choice(named, 2, replace=False).tolist()) for _ in range(pairs))
    return pool_of(candidates, 8, apart)


@pytest.mark.parametrize("pairs", [40, 300])
def test_twelve_papers_of_25_from_400_meet_the_bound_and_are_alike(pairs):
    pool, demand = big_pool(pairs), Demand((5, 4, 4, 3, 3, 2, 2, 2), 12)
    papers = search(pool, demand, "big")
    balance = balance_of(papers)
    # twelve papers take 24 of a cell of 12; every other cell is large enough
    assert balance.repeats == balance.bound == 12
    low, high = balance.expected
    assert high - low < 0.005
    short, long = balance.minutes
    assert long - short <= 1
    for form in range(12):
        chosen = papers.chosen(form)
        assert len(set(chosen)) == 25
        assert not any(other in pool.apart[place] for place in chosen for other in chosen)
        filled = [sum(place in chosen for place in cell) for cell in pool.cells]
        assert filled == list(demand.counts)


def test_the_same_label_gives_the_same_papers_and_another_label_others():
    pool, demand = big_pool(40), Demand((2, 2, 2, 2, 1, 1, 1, 1), 4)
    one, again, other = (
        [search(pool, demand, label).chosen(form) for form in range(4)]
        for label in ("spring", "spring", "autumn")
    )
    assert one == again != other


def test_questions_that_must_be_there_stand_on_every_paper():
    pool = big_pool(40)
    demand = Demand((2, 1, 1, 1, 1, 1, 1, 1), 6, must=((0, 7), (3, pool.cells[3][0])))
    papers = search(pool, demand, "must")
    for form in range(6):
        assert {7, pool.cells[3][0]} <= set(papers.chosen(form))
    # two fixed questions on six papers repeat five times each
    assert papers.repeats == fewest_repeats(pool, demand) == 10


def test_limits_of_time_and_words_hold_where_they_can():
    candidates = tuple(
        Candidate(str(n), str(n), (0,), seconds=30 + 10 * n, words=5 * (n % 7)) for n in range(24)
    )
    pool = pool_of(candidates, 1)
    papers = search(pool, Demand((5,), 4, seconds=720, words=60), "limits")
    assert shortfalls(papers) == ()
    tight = search(pool, Demand((5,), 4, seconds=250), "limits")
    # five questions take 250 s at the least, and only one choice of five does
    assert shortfalls(tight) == ()
    assert {tuple(sorted(tight.chosen(form))) for form in range(4)} == {(0, 1, 2, 3, 4)}
    missed = shortfalls(search(pool, Demand((5,), 1, seconds=249), "limits"))
    assert [(miss.limit, miss.amount) for miss in missed] == [("seconds", 1)]


def test_a_pool_of_exactly_one_use_each_is_used_up_without_a_repeat():
    candidates = tuple(
        Candidate(str(n), str(n), (int(n >= 12),), expected=300 + 40 * n) for n in range(16)
    )
    papers = search(pool_of(candidates, 2), Demand((3, 1), 4), "used up")
    used = sorted(place for form in range(4) for place in papers.chosen(form))
    assert used == list(range(16))


@pytest.mark.parametrize("forms", [1, 3])
def test_a_cell_that_enemies_empty_is_named_with_what_is_short(forms):
    candidates = tuple(Candidate(str(n), str(n), (int(n > 2),)) for n in range(6))
    pool = pool_of(candidates, 2, (("0", "1", "2"),))
    with pytest.raises(CannotFill) as error:
        search(pool, Demand((2, 2), forms), "enemies")
    assert (error.value.cell, error.value.short) == (0, 1)
