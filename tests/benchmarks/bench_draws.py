"""Time a thousand numeric questions: drawn, solved, with key, band, slips and working.

Run it by `python tests/benchmarks/bench_draws.py`.
"""

import sys
import time
from itertools import cycle, islice
from pathlib import Path
from statistics import median

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.bank import load_bank  # noqa: E402
from generator.questions import Askable, as_plain, askables  # noqa: E402

QUESTIONS = 1000
ROUNDS = 5


def numeric_askables() -> list[Askable]:
    """Return every hand-written numeric item of the bank."""
    bank, _ = load_bank(ROOT / "question_bank")
    if bank is None:
        raise SystemExit("the bank cannot be read")
    return [a for a in askables(bank) if a.kind == "numeric" and not a.is_derived]


def seconds(asked: list[Askable], label: str) -> float:
    """Time the questions of one round, each for a form of its own, in seconds."""
    turns = list(islice(cycle(asked), QUESTIONS))
    start = time.perf_counter()
    for number, askable in enumerate(turns):
        question = askable.make(f"{label}|{number}", ())
        if question is None:
            raise SystemExit(f"{askable.name} gave no question")
        as_plain(question)
    return time.perf_counter() - start


def main() -> None:
    """Print the seconds for a thousand questions."""
    asked = numeric_askables()
    times = [seconds(asked, f"round {number}") for number in range(ROUNDS)]
    print(f"{len(asked)} numeric items, median of {ROUNDS} rounds")
    print(f"{median(times):.2f} s for {QUESTIONS:,} questions, least {min(times):.2f} s")


if __name__ == "__main__":
    main()
