"""How long a hundred thousand answers take to read and analyse, and how much memory they hold.

Run with `python tests/benchmarks/bench_answered.py`; times are of the processor, not of the clock.
"""

import resource
import sqlite3
import sys
import time
from pathlib import Path
from tempfile import TemporaryDirectory

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.records import Records  # noqa: E402
from generator.reports import analyse_pool, pooled  # noqa: E402
from tests.issued.earlier_issue import earlier_records  # noqa: E402

FORMS, ANSWERS, QUESTIONS = 30, 100_000, 9


def crowded(connection: Records) -> None:
    """Copy both forms of the issue, and have very many people answer them."""
    connection.execute("BEGIN")
    for number in range(FORMS):
        connection.execute(
            "INSERT INTO forms (issue, label, content, questions) SELECT issue, ?, content,"
            " questions FROM forms WHERE id = ?",
            (f"N{number}", 1 + number % 2),
        )
    forms = [row[0] for row in connection.execute("SELECT id FROM forms WHERE id > 2 ORDER BY id")]
    for number in range(ANSWERS // QUESTIONS):
        place = number % FORMS
        _sitting(connection, forms[place], 1 + place % 2)
    connection.execute("COMMIT")


def _sitting(connection: sqlite3.Connection, form: int, like: int) -> None:
    made = connection.execute(
        "INSERT INTO sittings (form, responses, entered, sat) SELECT ?, responses, entered, sat"
        " FROM sittings WHERE id = ?",
        (form, like),
    ).lastrowid
    connection.execute(
        "INSERT INTO markings (sitting, marked, points, most, verdict, marks, findings)"
        " SELECT ?, marked, points, most, verdict, marks, findings FROM markings"
        " WHERE sitting = ? AND replaced = 0",
        (made, like),
    )


if __name__ == "__main__":
    with TemporaryDirectory() as folder, earlier_records(Path(folder)) as opened:
        crowded(opened)
        before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
        start = time.process_time()
        pool = pooled(opened, [1])
        read = time.process_time()
        analyse_pool(pool)
        end = time.process_time()
        held = (resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before) // 1024
        answers = sum(len(paper.answers) for paper in pool.papers)
        print(f"{answers:,} answers: read in {read - start:.2f} s, analysed in {end - read:.2f} s")
        print(f"{held} MB more at the most")
