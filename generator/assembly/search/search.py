"""The search for a set of papers: fill, swap, start again; the same label, the same papers."""

from collections.abc import Iterator

from generator.assembly.search.candidate_pool import Demand, Pool
from generator.assembly.search.counting_bound import fewest_repeats
from generator.assembly.search.filling import CannotFill, fill
from generator.assembly.search.limits import shortfalls
from generator.assembly.search.papers import Papers
from generator.assembly.search.shared_cells import shared_cells
from generator.assembly.search.swaps import improve
from generator.questions import SeededRandom

# starts to find one that fills every cell, one that meets the bound, one that keeps the limits
STARTS_TO_FILL = 10
PAPERS_TO_MEET_BOUND = 60
STARTS_TO_KEEP_LIMITS = 4


def search(pool: Pool, demand: Demand, *label: str) -> Papers:
    """Return the best papers of some starts; raises CannotFill when no start fills every cell.

    label  of the stream of chance
    """
    bound = fewest_repeats(pool, demand)
    starts = _filled(pool, demand, label)
    best: Papers | None = None
    for _ in range(STARTS_TO_KEEP_LIMITS):
        papers, stream = _nearest_the_bound(starts, demand.forms, bound)
        improve(papers, stream, bound)
        if best is None or _worth(papers) < _worth(best):
            best = papers
        if not shortfalls(best):
            break
    assert best is not None
    return best


def _nearest_the_bound(
    starts: Iterator[tuple[Papers, SeededRandom]], forms: int, bound: int
) -> tuple[Papers, SeededRandom]:
    best, stream = next(starts)
    for _ in range(PAPERS_TO_MEET_BOUND // forms):
        if best.repeats == bound:
            break
        other, its_stream = next(starts)
        if other.repeats < best.repeats:
            best, stream = other, its_stream
    return best, stream


def _filled(
    pool: Pool, demand: Demand, label: tuple[str, ...]
) -> Iterator[tuple[Papers, SeededRandom]]:
    """Return one filled set of papers after another, each with its stream of chance."""
    shared = shared_cells(pool)
    failures = start = 0
    while True:
        papers, stream = Papers(pool, demand), SeededRandom(*label, str(start))
        try:
            for form in range(demand.forms):
                fill(papers, form, stream, shared)
        except CannotFill as error:
            failures += 1
            if error.proven or failures == STARTS_TO_FILL:
                raise
        else:
            yield papers, stream
        start += 1


def _worth(papers: Papers) -> tuple[int, int]:
    return sum(miss.amount for miss in shortfalls(papers)), papers.repeats
