"""`guidecoat issue` that is killed at any moment leaves papers and records that belong together."""

from pathlib import Path

from tests.command_line import killed_issues as killer
from tests.command_line.issue_project import ISSUE, issuing_project
from tests.command_line.running import run
from tests.killed_programs import needs_fork, what_it_found

ROUNDS = 20
PROGRAM = Path(killer.__file__)


@needs_fork
def test_papers_and_records_are_both_there_or_neither_however_the_command_ends(tmp_path):
    found = what_it_found(PROGRAM, tmp_path, ROUNDS)
    assert found["problems"] == []
    assert found["done"] > 0
    # some were stopped between the records and the papers, where it matters
    assert found["halfway"] > 0


def test_what_is_lost_or_half_there_would_be_seen(tmp_path):
    root = issuing_project(tmp_path)
    run(root, *ISSUE)
    assert killer.problems_of(root, ["spring"]) == []
    key = root / "printed" / "issue-1" / "quick_check-A-key.pdf"
    key.write_bytes(key.read_bytes()[:-1])
    (root / "printed" / "issue-9").mkdir()
    assert killer.problems_of(root, ["summer"]) == [
        "lost summer",
        "issue 1: quick_check-A-key.pdf",
        "nobody issued issue-9",
    ]
