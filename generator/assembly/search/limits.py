"""What each paper must keep whatever else it is: new questions, time, words."""

from collections.abc import Sequence
from dataclasses import dataclass

from generator.assembly.search.candidate_pool import Demand
from generator.assembly.search.papers import NEW, SECONDS, WORDS, Papers

# how much of each limit weighs as much as one question that is missing
UNITS = {"new": 1, "seconds": 60, "words": 50}


@dataclass(frozen=True, slots=True)
class Shortfall:
    """By how much a paper misses a limit: questions, seconds or words."""

    form: int
    limit: str
    amount: int


def shortfalls(papers: Papers) -> tuple[Shortfall, ...]:
    """Return every limit that a paper misses."""
    return tuple(
        Shortfall(form, limit, amount)
        for form, sums in enumerate(papers.sums)
        for limit, amount in _missed(papers.demand, sums)
        if amount > 0
    )


def weight_of_misses(demand: Demand, sums: Sequence[int]) -> float:
    """Weigh what a paper of these sums misses; 0 where it keeps every limit."""
    return sum(amount / UNITS[limit] for limit, amount in _missed(demand, sums) if amount > 0)


def _missed(demand: Demand, sums: Sequence[int]) -> tuple[tuple[str, int], ...]:
    return (
        ("new", demand.new - sums[NEW]),
        ("seconds", sums[SECONDS] - demand.seconds if demand.seconds is not None else 0),
        ("words", sums[WORDS] - demand.words if demand.words is not None else 0),
    )
