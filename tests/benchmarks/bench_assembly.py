"""Time the search for 12 forms of 25 questions from 400 with quotas and questions kept apart.

Run it by `python tests/benchmarks/bench_assembly.py`. It prints for each of five pools the seconds,
the repeats beside the fewest that counting allows, and how far the forms differ.
"""

import sys
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.assembly.search.balance import balance_of  # noqa: E402
from generator.assembly.search.candidate_pool import Candidate, Demand, Pool, pool_of  # noqa: E402
from generator.assembly.search.search import search  # noqa: E402
from generator.questions import SeededRandom  # noqa: E402

TOPICS = (90, 80, 64, 54, 42, 34, 24, 12)
QUOTAS = (5, 4, 4, 3, 3, 2, 2, 2)
FORMS = 12
POOLS = 5


def random_pool(name: str, pairs: int) -> Pool:
    """Return 400 questions in 8 uneven topics, some pairs of them kept apart."""
    stream = SeededRandom("bench", name)
    candidates = tuple(
        Candidate(
            name=f"{topic}-{number}",
            record=f"{topic}-{number}",
            cells=(topic,),
            objective=f"{topic}-{number % 6}",
            expected=300 + stream.below(600),
            seconds=30 + 5 * stream.below(19),
        )
        for topic, size in enumerate(TOPICS)
        for number in range(size)
    )
    apart = tuple(
        tuple(candidate.name for candidate in stream.sample(candidates, 2)) for _ in range(pairs)
    )
    return pool_of(candidates, len(TOPICS), apart)


def main() -> None:
    """Print one line per pool."""
    for pairs in (40, 300):
        print(f"{FORMS} forms of {sum(QUOTAS)} from {sum(TOPICS)}, {pairs} pairs kept apart")
        for number in range(POOLS):
            pool = random_pool(f"pool {number}", pairs)
            start = time.perf_counter()
            papers = search(pool, Demand(QUOTAS, FORMS), "bench", str(number))
            seconds = time.perf_counter() - start
            balance = balance_of(papers)
            easy = [float(share) for share in balance.expected]
            times = [float(minutes) for minutes in balance.minutes]
            print(
                f"  {seconds:6.2f} s  repeats {balance.repeats} (bound {balance.bound})"
                f"  expected {easy[0]:.4f} to {easy[1]:.4f}"
                f"  minutes {times[0]:.2f} to {times[1]:.2f}"
            )


if __name__ == "__main__":
    main()
