"""A name or code that no paper could print is refused before it is kept, with the way out."""

from pathlib import Path

import pytest

from tests.command_line.issue_project import issuing_project, printed
from tests.command_line.running import misuse, run

WEI = "\u738b\u4f1f"


@pytest.fixture
def project(tmp_path: Path) -> Path:
    return issuing_project(tmp_path)


def test_a_roster_with_such_a_name_is_refused_whole_by_both_commands(project: Path) -> None:
    (project / "people.csv").write_text(f"code,name\nA1,Ann\nA2,{WEI}\n", "utf-8")
    for command in (
        ("records", "people", "--roster", "people.csv"),
        ("issue", "quick_check", "--seed", "spring", "--roster", "people.csv"),
    ):
        result = run(project, *command)
        assert result.exit_code == 1
        assert f"people.csv:3:4: error: '{WEI}' cannot be printed" in result.stderr
        assert "write the name in Latin, Greek or Cyrillic letters" in result.stderr
        assert "[person-letters]" in result.stderr
    assert run(project, "records", "people", "--list").stdout == ""
    assert printed(project) == {}


def test_such_a_code_is_refused_too(project: Path) -> None:
    (project / "people.csv").write_text(f"code\n{WEI}\n", "utf-8")
    result = run(project, "records", "people", "--roster", "people.csv")
    assert result.exit_code == 1 and "people.csv:2:1: error: " in result.stderr


@pytest.mark.parametrize(
    "name", ["\u0141ukasz \u0150ry", "\u0391\u03b8\u03b7\u03bd\u03ac", "\u0418\u0432\u0430\u043d"]
)
def test_latin_greek_and_cyrillic_names_are_taken(project: Path, name: str) -> None:
    (project / "people.csv").write_text(f"code,name\nA1,{name}\n", "utf-8")
    assert run(project, "records", "people", "--roster", "people.csv").exit_code == 0


def test_a_table_that_is_no_file_or_too_big_is_not_read(project: Path) -> None:
    (project / "endless.csv").symlink_to("/dev/zero")
    with (project / "huge.csv").open("wb") as file:
        file.truncate(9_000_000)
    for name in ("endless.csv", "huge.csv"):
        for command in (
            ("records", "people", "--roster", name),
            ("issue", "quick_check", "--seed", "spring", "--roster", name),
            ("analyse", name, "--key-file", name),
        ):
            result = run(project, *command)
            assert result.exit_code == 1, command
            assert "a table is a file of at most 8 MB [csv-size]" in result.output


def test_one_person_and_a_corrected_name_are_looked_at_too(project: Path) -> None:
    people = ("records", "people", "--person", "A1")
    assert "cannot be printed" in misuse(project, *people, "--name", WEI)
    assert run(project, *people, "--name", "Ann").exit_code == 0
    assert "cannot be printed" in misuse(project, *people, "--name", WEI, "--reason", "typo")
    assert run(project, *people, "--name", "Anna", "--reason", "typo").exit_code == 0
    assert "Anna" in run(project, "records", "people", "--names").stdout
