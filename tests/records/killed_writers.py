"""Forks writers, kills each without warning at a random moment, and looks at what is left.

Run it by `python tests/records/killed_writers.py FOLDER ROUNDS SEED`; it prints what it found.
"""

import json
import os
import random
import shutil
import signal
import sys
import time
from collections import Counter
from collections.abc import Callable, Iterator
from itertools import count
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.records import Person, open_records  # noqa: E402
from generator.records.issues.issues import issue_of  # noqa: E402
from generator.records.people.people import add_people, all_people  # noqa: E402
from generator.records.sittings.sittings import keep_sittings, sittings_of  # noqa: E402
from generator.records.store import database, migrations  # noqa: E402
from generator.records.store.database import integrity_problems  # noqa: E402
from tests.records.small_records import AT, form, issued, marked, sitting  # noqa: E402

FORMS = 400
OLD_PEOPLE = tuple(Person(f"Old {n:03}") for n in range(200))
LONGEST = 0.04
NEW_STEPS = (
    "ALTER TABLE people ADD COLUMN bay TEXT NOT NULL DEFAULT 'none'",
    "CREATE TABLE bays (id INTEGER PRIMARY KEY, bay TEXT NOT NULL) STRICT;"
    "INSERT INTO bays SELECT id, bay FROM people; UPDATE people SET bay = 'bay ' || id",
    "CREATE INDEX people_of_bay ON people (bay)",
)


def prepare(folder: Path) -> None:
    """Make records with people and an issue that waits for its marks."""
    with open_records(folder) as connection:
        add_people(connection, OLD_PEOPLE, AT)
        issued(connection, *(form(f"F{n}") for n in range(FORMS)))


def issue_papers(folder: Path) -> Iterator[str]:
    """Issue papers one after the other; give the number of each when it is done."""
    for n in count():
        with open_records(folder) as connection:
            yield str(issued(connection, form("A", OLD_PEOPLE[n % 200].code, f"Round {n}.")))


def mark_papers(folder: Path) -> Iterator[str]:
    """Keep marks form by form; give the label of each when it is done."""
    for n in range(FORMS):
        with open_records(folder) as connection:
            keep_sittings(connection, 1, [sitting(f"F{n}")], AT)
        yield f"F{n}"


def move_forward(folder: Path) -> Iterator[str]:
    """Open the records with a later program, then add people; give each code when it is done."""
    database.STEPS = (*migrations.STEPS, *NEW_STEPS)
    for n in count():
        with open_records(folder) as connection:
            add_people(connection, [Person(f"New {n:03}")], AT)
        yield f"New {n:03}"


KINDS: dict[str, Callable[[Path], Iterator[str]]] = {
    "issue": issue_papers,
    "mark": mark_papers,
    "migrate": move_forward,
}


def killed(kind: str, folder: Path, seconds: float) -> list[str]:
    """Let a writer work for so long, kill it, and give what it had said was done."""
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        for word in KINDS[kind](folder):
            os.write(writing, f"{word}\n".encode())
        os._exit(0)
    os.close(writing)
    time.sleep(seconds)
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    with os.fdopen(reading) as said:
        return said.read().split("\n")[:-1]


def problems_of(kind: str, folder: Path, said: list[str]) -> list[str]:
    """Return what is lost or half there, after a writer said what it had done."""
    if kind == "migrate":
        database.STEPS = (*migrations.STEPS, *NEW_STEPS)
    try:
        with open_records(folder) as connection:
            found = list(integrity_problems(connection))
            codes = {person.code for person in all_people(connection)}
            wanted = {person.code for person in OLD_PEOPLE}
            if kind == "migrate":
                wanted |= set(said)
                bays = connection.execute("SELECT count(*) FROM bays").fetchone()[0]
                found += [] if bays == len(OLD_PEOPLE) else [f"{bays} bays"]
            found += [f"lost {code}" for code in sorted(wanted - codes)]
            sat = {s.label: s for s in sittings_of(connection, 1)}
            if kind == "mark":
                found += [f"lost {label}" for label in said if label not in sat]
            found += [s.label for s in sat.values() if s.marked != marked(1, 1, 1)]
            numbers = [r["id"] for r in connection.execute("SELECT id FROM issues WHERE id > 1")]
            issues = {str(number): issue_of(connection, number) for number in numbers}
            for number, issue in issues.items():
                whole = len(issue.forms) == 1 and len(issue.forms[0].content["questions"]) == 3
                found += [] if whole else [f"half of issue {number}"]
            if kind == "issue":
                states = {n: i.state for n, i in issues.items()}
                found += [f"lost issue {n}" for n in said if states.get(n) != "issued"]
    finally:
        database.STEPS = migrations.STEPS
    return found


def main(place: Path, rounds: int, seed: int) -> None:
    """Kill writers of each kind in turn and print what was found as JSON."""
    chance = random.Random(seed)
    prepare(place / "start")
    done, problems = Counter[str](), []
    for number in range(rounds):
        kind = tuple(KINDS)[number % len(KINDS)]
        folder = place / f"{number:03}"
        shutil.copytree(place / "start", folder)
        said = killed(kind, folder, chance.uniform(0, LONGEST))
        done[kind] += len(said)
        problems += [f"{kind} {number}: {p}" for p in problems_of(kind, folder, said)]
        shutil.rmtree(folder)
    print(json.dumps({"rounds": rounds, "done": done, "problems": problems}))


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]))
