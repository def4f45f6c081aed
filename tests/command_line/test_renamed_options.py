"""An old spelling of an option is refused, and the refusal names the new one."""

import re
from pathlib import Path

import pytest

from tests.command_line.running import run

FORMER = [
    (("mark", "--form", "7KQ2M4ZZ"), "--form is now --form-id; write --form-id '7KQ2M4ZZ'"),
    (("analyse", "--key", "key.csv"), "--key is now --key-file; write --key-file 'key.csv'"),
    (
        ("correct", "1", "--reason", "both are sold so", "--by", "Trainer 1"),
        "--by is now --decided-by; write --decided-by 'Trainer 1'",
    ),
    (("report", "1", "--on", "2026-03-01"), "--on is now --as-of; write --as-of '2026-03-01'"),
    (
        ("records", "due", "--on", "2026-03-01"),
        "--on is now --as-of; write --as-of '2026-03-01'",
    ),
    (
        ("records", "export", "Apprentice 01", "--to", "mine.json"),
        "--to is now --output; write --output 'mine.json'",
    ),
    (
        ("records", "people", "--add", "roster.csv"),
        "--add is now --roster; write --roster 'roster.csv'",
    ),
    (
        ("records", "pack", "inspection"),
        "where it goes is now --output; write --output 'inspection'",
    ),
    (
        ("records", "backup", "copy.sqlite"),
        "where it goes is now --output; write --output 'copy.sqlite'",
    ),
]


@pytest.mark.parametrize(("typed", "told"), FORMER)
def test_an_old_spelling_is_misuse_and_names_the_new_one(
    typed: tuple[str, ...], told: str, tmp_path: Path
) -> None:
    done = run(tmp_path, *typed)
    assert done.exit_code == 2
    assert told in " ".join(done.stderr.split())
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(("typed", "told"), FORMER)
def test_the_help_shows_the_new_spelling_and_not_the_old_one(
    typed: tuple[str, ...], told: str, tmp_path: Path
) -> None:
    name = typed[:2] if typed[0] == "records" else typed[:1]
    options = re.findall(r"^ +(--[\w-]+)", run(tmp_path, *name, "--help").stdout, re.MULTILINE)
    old, new = re.findall(r"--[\w-]+", f"bare {told}" if told[0] == "w" else told)[0:2]
    assert new in options
    assert old == new or old not in options
