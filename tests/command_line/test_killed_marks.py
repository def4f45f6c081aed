"""However `guidecoat mark` ends, and however many mark at once, what it said is kept."""

import subprocess
import sys
from pathlib import Path

from generator.records import open_records
from tests.command_line import killed_marks as marks
from tests.command_line.marking_project import kept, marked
from tests.killed_programs import needs_fork, what_it_found
from tests.marking.small_forms import RIGHT_CELLS

ROUNDS = 40
PROGRAM = Path(marks.__file__)


@needs_fork
def test_nothing_that_was_said_is_lost_and_nothing_is_half_marked(tmp_path: Path) -> None:
    found = what_it_found(PROGRAM, tmp_path, ROUNDS)
    assert found["problems"] == []
    assert found["done"] > 0


def test_a_lost_table_and_half_a_table_would_be_seen(tmp_path: Path) -> None:
    marks.prepare(tmp_path / "shop")
    marked(tmp_path / "shop", "10.csv")
    assert marks.problems_of(tmp_path / "shop", ["10"]) == []
    assert marks.problems_of(tmp_path / "shop", ["10", "12"]) == ["lost 12"]
    with open_records(tmp_path / "shop" / "records") as connection:
        connection.execute("UPDATE sittings SET replaced = 1 WHERE id = 2")
    (problem, lost) = marks.problems_of(tmp_path / "shop", ["10"])
    assert problem.startswith("half of table 10")
    assert lost == "lost 10"


WORK = """
import sys
from pathlib import Path
from tests.command_line.running import run
root, names = Path(sys.argv[1]), sys.argv[2:]
sys.stdin.readline()
for name in names:
    done = run(root, "mark", name)
    assert done.exit_code == 0, done.output
    print(name, flush=True)
"""


def at_once(root: Path, *tables: list[str]) -> None:
    """Let a process for each list mark its tables, all at the same time."""
    working = [
        subprocess.Popen(
            [sys.executable, "-c", WORK, str(root), *names],
            cwd=marks.ROOT,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
        )
        for names in tables
    ]
    for process in working:
        assert process.stdin is not None
        process.stdin.write("go\n")
        process.stdin.flush()
    told = [process.communicate(timeout=120) for process in working]
    assert [out.split() for out, _ in told] == list(tables), told


def test_two_processes_that_mark_at_once_lose_nothing(tmp_path: Path) -> None:
    root = tmp_path / "shop"
    marks.prepare(root)
    names = [f"{label}.csv" for label in marks.LABELS[::2]]
    # tables in the middle are marked by both: they are kept once
    at_once(root, names[:25], names[15:])
    assert marks.problems_of(root, [name.removesuffix(".csv") for name in names]) == []
    assert len(kept(root)) == len(marks.LABELS)


def test_the_answers_and_the_marks_of_written_ones_entered_at_once_are_both_kept(
    tmp_path: Path,
) -> None:
    root = tmp_path / "shop"
    marks.prepare(root)
    forms = marks.LABELS[:50]
    # every form is in the records with nothing but wrong answers first
    wrong = [marks.row(label, *marks.WRONG_CELLS[:5]) for label in forms]
    marked(root, marks.table(root, *wrong))
    answers, points = [], []
    for label in forms:
        answers.append(marks.table(root, marks.row(label, *RIGHT_CELLS[:5]), name=f"a{label}.csv"))
        only_points = marks.row(label, "", "", "", "", "", "2 1 1")
        points.append(marks.table(root, only_points, name=f"p{label}.csv"))
    at_once(root, answers, points)
    assert {sitting.marked.points for sitting in kept(root).values()} == {14}
