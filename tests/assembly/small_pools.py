"""Pools of a dozen questions, and every set of papers that can be made of them."""

from collections.abc import Iterator
from itertools import combinations, product

from generator.assembly.search.candidate_pool import Candidate, Pool, pool_of

# id, category, share right, discrimination, seconds; a worked pool whose optima were found by
# trying every subset and, apart from that, by integer programming
TWELVE = (
    (1, "a", 0.90, 0.10, 40),
    (2, "a", 0.75, 0.31, 60),
    (3, "a", 0.60, 0.42, 90),
    (4, "a", 0.55, 0.38, 80),
    (5, "b", 0.85, 0.22, 50),
    (6, "b", 0.70, 0.35, 70),
    (7, "b", 0.50, 0.45, 100),
    (8, "b", 0.65, 0.28, 60),
    (9, "c", 0.80, 0.25, 50),
    (10, "c", 0.72, 0.33, 65),
    (11, "c", 0.58, 0.40, 95),
    (12, "c", 0.66, 0.36, 75),
)
ENEMIES = (("2", "6"), ("3", "7"), ("10", "12"))


def twelve() -> Pool:
    """Return the worked pool with a cell for each category."""
    candidates = tuple(
        Candidate(
            name=str(number),
            record=str(number),
            cells=("abc".index(category),),
            expected=round(1000 * share),
            seconds=seconds,
        )
        for number, category, share, _, seconds in TWELVE
    )
    return pool_of(candidates, 3, ENEMIES)


def papers_of(pool: Pool, counts: tuple[int, ...]) -> Iterator[tuple[int, ...]]:
    """Return every paper with the counts of each cell and no two kept apart, by trying all."""
    cells = [combinations(pool.cells[cell], count) for cell, count in enumerate(counts)]
    for parts in product(*map(tuple, cells)):
        paper = tuple(sorted(place for part in parts for place in part))
        if len(set(paper)) == len(paper) and not any(
            other in pool.apart[place] for place in paper for other in paper
        ):
            yield paper


def fewest_repeats_of_all(pool: Pool, counts: tuple[int, ...], forms: int) -> int | None:
    """Return the fewest repeats of any choice of papers, by trying all; None where there is none.

    Papers are added one at a time; only the uses of each question matter for the next one.
    """
    papers = list(papers_of(pool, counts))
    states = {(0,) * len(pool.candidates)}
    for _ in range(forms):
        states = {
            tuple(uses + (place in paper) for place, uses in enumerate(state))
            for state in states
            for paper in papers
        }
    repeats = [
        sum(max(0, u - c.variants) for u, c in zip(state, pool.candidates, strict=True))
        for state in states
    ]
    return min(repeats, default=None)
