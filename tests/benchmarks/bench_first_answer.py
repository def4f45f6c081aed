"""Times to a first answer, of this machine's processor, beside the bare reading of the same files.

Run it by `python tests/benchmarks/bench_first_answer.py [ITEMS]`; with a number it also makes a
bank of so many items and checks that. It reports and never fails: a loaded machine is no fault.
Times are user and system time of the whole command, start of Python and end of it included.
"""

import os
import resource
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import yaml

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from tests.benchmarks.many_records import many_records  # noqa: E402

ITEM = "film_build/dry_from_wet/wet_film_for_target"
ROUNDS = 3
# command, seconds of an idle core that were set as the goal
FIRST_WORDS = (
    (("--help",), 0.3),
    (("--version",), 0.3),
    (("drow",), 0.3),
    (("draw", "--help"), 0.3),
    (("issue", "--help"), 0.3),
    (("records", "--help"), 0.3),
    (("mark", "--help"), 0.3),
    (("issue", "filler_chek", "--seed", "a"), 0.5),
    (("calculate", "--list"), 0.5),
    (("draw", ITEM), 0.5),
)


def spent(project: Path, cache: Path, *arguments: str) -> tuple[float, float]:
    """Return processor seconds and most megabytes of a command."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run(
        [sys.executable, "-m", "generator", *arguments],
        cwd=project,
        env={**os.environ, "XDG_CACHE_HOME": str(cache), "PYTHONPATH": str(ROOT)},
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        check=False,
    )
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    seconds = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
    return seconds, after.ru_maxrss / 1024


def bare_reading(bank: Path) -> float:
    """Return processor seconds for going through the events of every file of a bank."""
    texts = [path.read_text("utf-8") for path in sorted(bank.rglob("*.yml"))]
    loader = getattr(yaml, "CLoader", yaml.Loader)
    start = time.process_time()
    for text in texts:
        for _ in yaml.parse(text, Loader=loader):
            pass
    return time.process_time() - start


def report_check(
    project: Path, cache: Path, name: str, rounds: int, goals: tuple[str, ...]
) -> None:
    """Print cold, warm and one-edit times of a check."""
    bare = min(bare_reading(project / "question_bank") for _ in range(rounds))
    cold, memory = min(spent(project, cache, "check", "--no-cache") for _ in range(rounds))
    spent(project, cache, "check")
    warm, _ = min(spent(project, cache, "check") for _ in range(rounds))
    edited = project / "question_bank" / "items" / "filler" / "mix.yml"
    old = edited.read_text("utf-8")
    try:
        edited.write_text(old.replace("stem: ", "stem:  ", 1), "utf-8")
        one_edit, _ = spent(project, cache, "check")
    finally:
        edited.write_text(old, "utf-8")
    for what, seconds, goal in zip(
        ("cold", "warm", "one item edited"), (cold, warm, one_edit), goals, strict=True
    ):
        shown = f"check of {name}, {what}"
        print(f"{shown:44} {seconds:6.2f} s  {seconds / bare:5.1f} x bare reading  {goal}")
    print(f"{'  most memory of any command so far':44} {memory:6.0f} MB")


def main() -> None:
    """Print every time."""
    with tempfile.TemporaryDirectory() as folder:
        cache = Path(folder) / "cache"
        for arguments, goal in FIRST_WORDS:
            seconds, _ = min(spent(ROOT, cache, *arguments) for _ in range(ROUNDS))
            print(f"{' '.join(arguments):44} {seconds:6.2f} s  goal {goal} s of an idle core")
        shipped = Path(folder) / "shipped"
        shipped.mkdir()
        count = many_records(ROOT, shipped, 1)
        report_check(
            shipped, cache, f"the {count} items", ROUNDS, ("goal 1.2 s", "goal 0.4 s", "no goal")
        )
        if len(sys.argv) > 1:
            many = Path(folder) / "many"
            many.mkdir()
            count = many_records(ROOT, many, int(sys.argv[1]))
            goals = ("goal 8 x, 400 MB", "goal 2 x", "no goal")
            report_check(many, cache, f"{count} items", 1, goals)


if __name__ == "__main__":
    main()
