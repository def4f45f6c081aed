"""Kills `guidecoat mark` at random moments and looks at the records that are left.

Run it by `python tests/command_line/killed_marks.py FOLDER ROUNDS SEED`; it prints what it found.
"""

import json
import os
import random
import shutil
import signal
import sys
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.records import open_records  # noqa: E402
from generator.records.store.database import integrity_problems  # noqa: E402
from tests.command_line.marking_project import (  # noqa: E402
    WRONG_CELLS,
    kept,
    marking_project,
    row,
    table,
)
from tests.command_line.running import run  # noqa: E402
from tests.marking.small_forms import small_form  # noqa: E402

LABELS = [str(number) for number in range(10, 90)]
LONGEST = 0.6


def prepare(root: Path) -> None:
    """Make a project with many forms and a table for every two of them."""
    marking_project(root, *(small_form(label) for label in LABELS))
    for first, second in zip(LABELS[::2], LABELS[1::2], strict=True):
        table(root, row(first), row(second, *WRONG_CELLS), name=f"{first}.csv")


def mark_on_and_on(root: Path, said: int) -> None:
    """Mark table after table; say the name of each when it is done."""
    for label in LABELS[::2]:
        if run(root, "mark", f"{label}.csv").exit_code == 0:
            os.write(said, f"{label}\n".encode())
    os._exit(0)


def killed(root: Path, seconds: float) -> list[str]:
    """Let tables be marked for so long, kill the program, and give what it had said was done."""
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        mark_on_and_on(root, writing)
    os.close(writing)
    time.sleep(seconds)
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    with os.fdopen(reading) as said:
        return said.read().split("\n")[:-1]


def problems_of(root: Path, said: list[str]) -> list[str]:
    """Return what is lost or half there after tables were said to be marked."""
    with open_records(root / "records") as connection:
        found = list(integrity_problems(connection))
    sat = {sitting.label: sitting.marked.points for sitting in kept(root).values()}
    for first, second in zip(LABELS[::2], LABELS[1::2], strict=True):
        there = (sat.get(first), sat.get(second))
        if there not in ((14, 0), (None, None)):
            found.append(f"half of table {first}: {there}")
        if first in said and there != (14, 0):
            found.append(f"lost {first}")
    return found


def main(place: Path, rounds: int, seed: int) -> None:
    """Kill the command so many times and print what was found as JSON."""
    chance = random.Random(seed)
    prepare(place / "start")
    done, problems = 0, []
    for number in range(rounds):
        root = place / f"{number:03}"
        shutil.copytree(place / "start", root)
        said = killed(root, chance.uniform(0, LONGEST))
        done += len(said)
        problems += [f"round {number}: {problem}" for problem in problems_of(root, said)]
        # what was cut off is marked when the table is given once more
        for label in LABELS[:6:2]:
            if run(root, "mark", f"{label}.csv").exit_code:
                problems.append(f"round {number}: {label} cannot be marked again")
        shutil.rmtree(root)
    print(json.dumps({"rounds": rounds, "done": done, "problems": problems}))


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]))
