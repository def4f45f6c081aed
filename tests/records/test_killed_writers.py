"""A writer that is killed at any moment leaves whole records with everything it had said."""

import subprocess
import sys
from pathlib import Path

import pytest

from generator.records import open_records
from tests.killed_programs import needs_fork, what_it_found
from tests.records import killed_writers as writers
from tests.records.small_records import sitting

ROUNDS = 60
PROGRAM = Path(writers.__file__)


@needs_fork
def test_nothing_that_was_said_is_lost_however_a_writer_ends(tmp_path):
    found = what_it_found(PROGRAM, tmp_path, ROUNDS)
    assert found["problems"] == []
    assert all(found["done"].get(kind, 0) > 0 for kind in writers.KINDS)


@pytest.mark.parametrize(
    ("kind", "said", "problem"),
    [
        ("mark", ["F0", "F1"], "lost F1"),
        ("issue", ["2"], "lost issue 2"),
        ("migrate", ["New 000"], "lost New 000"),
    ],
)
def test_what_is_lost_would_be_seen(tmp_path, kind, said, problem):
    writers.prepare(tmp_path / "records")
    with open_records(tmp_path / "records") as connection:
        writers.keep_sittings(connection, 1, [sitting("F0")], "")
    assert writers.problems_of(kind, tmp_path / "records", said) == [problem]


def test_half_a_marking_would_be_seen(tmp_path):
    writers.prepare(tmp_path / "records")
    with open_records(tmp_path / "records") as connection:
        writers.keep_sittings(connection, 1, [sitting("F0")], "")
        connection.execute("UPDATE markings SET marks = 'r1 r1'")
    assert writers.problems_of("mark", tmp_path / "records", ["F0"]) == ["F0"]


WORK = """
import sys
from pathlib import Path
from tests.records.killed_writers import add_people, keep_sittings, open_records
from tests.records.killed_writers import AT, Person, sitting
folder, first = Path(sys.argv[1]), int(sys.argv[2])
sys.stdin.readline()
for n in range(first, first + 40):
    with open_records(folder) as connection:
        keep_sittings(connection, 1, [sitting(f"F{n}")], AT)
        add_people(connection, [Person(f"New {n:03}")], AT)
    print(n, flush=True)
"""


def test_two_programs_that_write_at_once_lose_nothing(tmp_path):
    folder = tmp_path / "records"
    writers.prepare(folder)
    # 20 forms are marked by both: they are kept once
    both = [
        subprocess.Popen(
            [sys.executable, "-c", WORK, str(folder), str(first)],
            cwd=writers.ROOT,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
        )
        for first in (0, 20)
    ]
    for writer in both:
        writer.stdin.write("go\n")
        writer.stdin.flush()
    told = [writer.communicate(timeout=120) for writer in both]
    assert [len(out.split()) for out, _ in told] == [40, 40], told
    said = [f"F{n}" for n in range(60)]
    assert writers.problems_of("mark", folder, said) == []
    with open_records(folder) as connection:
        assert len(writers.sittings_of(connection, 1)) == 60
        codes = {person.code for person in writers.all_people(connection)}
    assert {f"New {n:03}" for n in range(60)} <= codes
