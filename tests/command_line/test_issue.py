"""`guidecoat issue`: papers for a sound blueprint, and every refusal before anything is written."""

import shutil
from pathlib import Path

import pytest

from tests.bank.small_bank import REPOSITORY, put, small_project
from tests.command_line.running import misuse, run

FONTS = Path("site_theme") / "fonts_print"
ISSUE = ("issue", "quick_check", "--seed", "spring")


@pytest.fixture
def root(tmp_path: Path) -> Path:
    root = small_project(tmp_path)
    shutil.copytree(REPOSITORY / FONTS, root / FONTS)
    return root


def printed(root: Path) -> dict[str, bytes]:
    folder = root / "printed"
    return {p.name: p.read_bytes() for p in folder.iterdir()} if folder.is_dir() else {}


def test_a_form_is_a_paper_a_sheet_and_a_key(root: Path) -> None:
    result = run(root, *ISSUE, "--forms", "2")
    assert result.exit_code == 0, result.output
    names = [
        f"quick_check-{form}-{part}.pdf"
        for form in "AB"
        for part in ("questions", "answer-sheet", "key")
    ]
    assert result.stdout.splitlines() == [f"printed/{name}" for name in names]
    files = printed(root)
    assert set(files) == set(names)
    assert all(data.startswith(b"%PDF-") for data in files.values())
    assert [path.name for path in root.iterdir() if path.name.startswith(".")] == []


def test_the_same_seed_writes_the_same_bytes(root: Path) -> None:
    run(root, *ISSUE)
    first = printed(root)
    run(root, *ISSUE)
    assert printed(root) == first


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (
            ("issue", "quick_chek", "--seed", "1"),
            "there is no blueprint 'quick_chek'; did you mean 'quick_check'?",
        ),
        (("issue", "qqq", "--seed", "1"), "there is no blueprint 'qqq'; quick_check"),
        (("issue", "quick_check"), "Missing option '--seed'."),
        (("issue", "--seed", "1"), "Missing argument 'BLUEPRINT'."),
    ],
)
def test_a_request_that_names_nothing_is_one_sentence(
    root: Path, arguments: tuple[str, ...], said: str
) -> None:
    assert misuse(root, *arguments) == said
    assert printed(root) == {}


@pytest.mark.parametrize(
    ("option", "value"),
    [
        ("--forms", "0"),
        ("--forms", "-1"),
        ("--forms", "201"),
        ("--forms", "two"),
        ("--paper", "A3"),
    ],
)
def test_a_number_or_size_outside_its_range_is_misuse(root: Path, option: str, value: str) -> None:
    assert option in misuse(root, *ISSUE, option, value)
    assert printed(root) == {}


def test_a_blueprint_that_cannot_be_filled_writes_nothing(root: Path) -> None:
    put(
        root,
        "blueprints/long.yml",
        "title: Long\nminutes: 9\npass_percent: 80\ncells: [{module: filler, count: 99}]\n",
    )
    result = run(root, "issue", "long", "--seed", "1")
    assert result.exit_code == 1
    assert "[blueprint-cannot-be-filled]" in result.stderr
    assert "nothing was written" in result.stderr
    assert printed(root) == {}


def test_a_bank_with_errors_writes_no_paper(root: Path) -> None:
    put(root, "glossary.yml", "gel_time: {term: gel time}\n")
    result = run(root, *ISSUE)
    assert result.exit_code == 1
    assert "[missing-key]" in result.stderr
    assert printed(root) == {}


def test_a_file_in_the_place_of_the_folder_is_one_sentence(root: Path) -> None:
    (root / "printed").write_text("in the way", "utf-8")
    result = run(root, *ISSUE)
    assert result.exit_code == 1
    assert result.stderr.startswith("Error: ")
    assert result.stderr.count("\n") == 1


ROSTER = "code,name\nApprentice 01,Ann\nApprentice 02,\nApprentice 03,Cat\n"


def test_a_roster_gives_each_person_a_form(root: Path) -> None:
    (root / "people.csv").write_text(ROSTER, "utf-8")
    result = run(root, *ISSUE, "--roster", "people.csv")
    assert result.exit_code == 0, result.output
    assert len(result.stdout.splitlines()) == 9
    assert "form B: Apprentice 02" in result.stderr.splitlines()
    assert "repeat" in result.stderr.splitlines()[-1]
    # no name and no code of a person stands in a file name
    assert all("pprentice" not in name and "Ann" not in name for name in printed(root))


def test_a_broken_roster_is_refused_at_its_place_and_nothing_is_written(root: Path) -> None:
    (root / "people.csv").write_text("code\nA1\na1\n=2\n", "utf-8")
    result = run(root, *ISSUE, "--roster", "people.csv")
    assert result.exit_code == 1
    assert "people.csv:3:1: error: 'a1' is there already, in line 2" in result.stderr
    assert "people.csv:4:1: error: '=2' would run as a formula" in result.stderr
    assert result.stderr.splitlines()[-1] == "2 errors; nothing was written"
    assert printed(root) == {}


@pytest.mark.parametrize(
    ("data", "said"),
    [
        (b"", "this roster is empty"),
        (b"code\nA\xff1\n", "people.csv:2:2: error: this is not UTF-8"),
    ],
)
def test_an_empty_or_unreadable_roster_writes_nothing(root: Path, data: bytes, said: str) -> None:
    (root / "people.csv").write_bytes(data)
    result = run(root, *ISSUE, "--roster", "people.csv")
    assert result.exit_code == 1
    assert said in result.stderr
    assert printed(root) == {}


def test_forms_and_roster_together_are_misuse(root: Path) -> None:
    (root / "people.csv").write_text(ROSTER, "utf-8")
    said = misuse(root, *ISSUE, "--forms", "2", "--roster", "people.csv")
    assert said == "give --forms or --roster, not both; a roster has a form a person"
    assert printed(root) == {}


def test_a_missing_roster_is_misuse(root: Path) -> None:
    assert "nobody.csv" in misuse(root, *ISSUE, "--roster", "nobody.csv")


def test_papers_that_cannot_be_made_are_one_sentence(root: Path) -> None:
    put(
        root,
        "blueprints/short.yml",
        "title: Short\nminutes: 30\npass_percent: 80\nwords: 3\n"
        "cells: [{module: filler, count: 2}]\n",
    )
    result = run(root, "issue", "short", "--seed", "1")
    assert result.exit_code == 1
    assert result.stderr.startswith("these papers cannot be made: form A stays ")
    assert result.stderr.strip().endswith("nothing was written")
    assert printed(root) == {}
