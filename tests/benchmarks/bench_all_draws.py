"""Try every numeric template on all that it can draw: no refusal, no ugly number, no slip passes.

A grid of at most 10,000 sets is walked whole; a larger one is drawn from 10,000 times by seeds.
Run it by `python tests/benchmarks/bench_all_draws.py`; it ends with exit code 1 when a set fails.
"""

import sys
import time
from collections.abc import Iterator, Mapping
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from functools import cache
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.bank import load_bank  # noqa: E402
from generator.bank.checks.numbers import numeric_entries  # noqa: E402
from generator.bank.numbers.numeric_item import PreparedItem, Value  # noqa: E402
from generator.bank.numbers.numeric_solution import Refusal, all_sets, set_count, solve  # noqa: E402
from generator.questions.drawing.numeric import drawn_values, prepared  # noqa: E402
from generator.refinishing.catalogue import CATALOGUE  # noqa: E402

DRAWS = 10_000
WORKERS = 2


@dataclass(frozen=True, slots=True)
class Tally:
    """What came of one template.

    walked    true when every set of its grid was solved
    accepted  sets with a key
    left_out  sets that its own requirement leaves out
    failures  sentences for sets that no item may draw
    """

    name: str
    walked: bool
    accepted: int
    left_out: int
    failures: tuple[str, ...]


@cache
def templates() -> Mapping[str, PreparedItem]:
    """Return every numeric template of the bank, ready to draw."""
    bank, _ = load_bank(ROOT / "question_bank")
    if bank is None:
        raise SystemExit("the bank cannot be read")
    return {entry.name: prepared(entry) for entry in numeric_entries(bank)}


def sets_of(item: PreparedItem) -> Iterator[Mapping[str, Value]]:
    """Return all sets of a small grid, or ten thousand seeded draws of a large one."""
    if set_count(item) <= DRAWS:
        yield from all_sets(item)
    else:
        yield from (drawn_values(item, "all draws", f"seed {n}", 0) for n in range(DRAWS))


def tally(name: str) -> Tally:
    """Solve everything that one template can draw."""
    item = templates()[name]
    accepted = left_out = 0
    failures = set()
    for values in sets_of(item):
        outcome = solve(item, values, CATALOGUE)
        if not isinstance(outcome, Refusal):
            accepted += 1
        elif outcome.rule == "not-required":
            left_out += 1
        else:
            failures.add(f"{name}: {outcome.message} [{outcome.rule}]")
    if not accepted:
        failures.add(f"{name}: nothing can be drawn")
    return Tally(name, set_count(item) <= DRAWS, accepted, left_out, tuple(sorted(failures)))


def main() -> None:
    """Print what was tried, what failed, and how long a thousand solved questions take."""
    names = sorted(templates(), key=lambda name: -set_count(templates()[name]))
    start = time.perf_counter()
    with ProcessPoolExecutor(WORKERS) as pool:
        tallies = list(pool.map(tally, names))
    seconds = time.perf_counter() - start
    solved = sum(t.accepted for t in tallies)
    walked = sum(t.walked for t in tallies)
    print(f"{len(tallies)} numeric templates: {walked} walked whole, {len(tallies) - walked} drawn")
    print(f"{solved:,} questions solved, {sum(t.left_out for t in tallies):,} sets left out")
    print(f"{seconds:.1f} s with {WORKERS} workers, {1000 * seconds / solved:.2f} s for 1,000")
    failures = [failure for t in tallies for failure in t.failures]
    print("\n".join(failures) or "no refusal, no ugly number, every slip outside the band")
    raise SystemExit(1 if failures else 0)


if __name__ == "__main__":
    main()
