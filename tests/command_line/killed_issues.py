"""Kills `guidecoat issue` at random moments and looks at the papers and records that are left.

Run it by `python tests/command_line/killed_issues.py FOLDER ROUNDS SEED`; it prints what it found.
"""

import json
import os
import random
import shutil
import signal
import sys
import time
from contextlib import chdir
from itertools import count
from pathlib import Path
from typing import Any

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.records import open_records  # noqa: E402
from generator.records.issues.issues import issue_of  # noqa: E402
from generator.records.store.database import integrity_problems  # noqa: E402
from generator.workflows.papers import new_issue  # noqa: E402
from generator.workflows.papers.paper_files import issue_files  # noqa: E402
from generator.workflows.papers.pending_papers import settings_of  # noqa: E402
from generator.workflows.project import Project  # noqa: E402
from tests.command_line.issue_project import issuing_project  # noqa: E402
from tests.command_line.running import run  # noqa: E402

LONGEST = 1.2
# the papers of an issue are kept and written within about this time
KEEPING = 0.012
KEEPS = "now it is kept"


def issue_on_and_on(root: Path, said: int) -> None:
    """Issue papers one after the other; say when one is kept and when all is done."""
    freeze = new_issue.freeze

    def told(*given: Any, **named: Any) -> int:
        os.write(said, f"{KEEPS}\n".encode())
        return freeze(*given, **named)

    new_issue.freeze = told
    for n in count():
        roster = ("--roster", "people.csv") if n % 2 else ()
        result = run(root, "issue", "quick_check", "--seed", f"seed {n}", *roster)
        if result.exit_code == 0:
            os.write(said, f"seed {n}\n".encode())


def killed(root: Path, seconds: float, once_it_is_kept: bool) -> list[str]:
    """Let papers be issued, kill the program, and give what it had said was done.

    seconds  counted from the start, or from the moment at which the first issue is kept
    """
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        issue_on_and_on(root, writing)
    os.close(writing)
    with os.fdopen(reading) as said:
        first = said.readline() if once_it_is_kept else ""
        time.sleep(seconds)
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        lines = (first + said.read()).split("\n")[:-1]
    return [line for line in lines if line != KEEPS]


def problems_of(root: Path, said: list[str]) -> list[str]:
    """Return what is lost or half there once the next command has run."""
    next_command = run(root, "records", "issues")
    found = [] if next_command.exit_code == 0 else [next_command.output]
    with chdir(root), open_records(root / "records") as connection:
        found += integrity_problems(connection)
        numbers = [row["id"] for row in connection.execute("SELECT id FROM issues")]
        issues = [issue_of(connection, number) for number in numbers]
    found += [f"lost {seed}" for seed in said if seed not in {issue.seed for issue in issues}]
    project, kept = Project(root), set()
    for issue in issues:
        folder = project.issue_folder(issue.number)
        kept.add(folder)
        forms = [form.content for form in issue.forms]
        wanted = issue_files(project, forms, settings_of(issue))
        there = {p.name: p.read_bytes() for p in folder.iterdir()} if folder.is_dir() else {}
        found += [f"issue {issue.number}: {n}" for n in wanted if there.get(n) != wanted[n]]
        found += [] if issue.state == "issued" else [f"issue {issue.number} is {issue.state}"]
    found += [
        f"nobody issued {path.name}" for path in project.printed.glob("issue-*") if path not in kept
    ]
    return found


def apart(root: Path, said: list[str]) -> list[str]:
    """Look for problems in a process of its own: a fork has none of the typesetter's threads."""
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        os.write(writing, json.dumps(problems_of(root, said)).encode())
        os._exit(0)
    os.close(writing)
    with os.fdopen(reading) as found:
        text = found.read()
    os.waitpid(child, 0)
    return json.loads(text) if text else ["the look at what is left has failed"]


def main(place: Path, rounds: int, seed: int) -> None:
    """Kill the command so many times and print what was found as JSON."""
    chance = random.Random(seed)
    start = issuing_project(place / "start")
    done, halfway, problems = 0, 0, []
    for number in range(rounds):
        root = place / f"{number:03}"
        shutil.copytree(start, root)
        kept = number % 2 == 0
        said = killed(root, chance.uniform(0, KEEPING if kept else LONGEST), kept)
        done += len(said)
        if (root / "records").is_dir():
            with open_records(root / "records") as connection:
                row = connection.execute("SELECT count(*) FROM issues WHERE state = 'pending'")
                halfway += row.fetchone()[0]
        problems += [f"round {number}: {problem}" for problem in apart(root, said)]
        shutil.rmtree(root)
    found = {"rounds": rounds, "done": done, "halfway": halfway, "problems": problems}
    print(json.dumps(found))


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]))
