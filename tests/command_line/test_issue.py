"""`guidecoat issue`: papers for a sound blueprint, and every refusal before anything is written."""

import shutil
from pathlib import Path

import pytest

from generator.command_line.project import Project, bank_hash
from generator.records import open_records
from generator.records.issues.issued_before import all_issues
from generator.records.issues.issues import exposure, issue_of
from tests.bank.small_bank import put
from tests.command_line.issue_project import ISSUE, issuing_project, printed
from tests.command_line.running import misuse, run


def records_of(root: Path):
    """Open the records of a project."""
    return open_records(root / "records")


@pytest.fixture
def root(tmp_path: Path) -> Path:
    return issuing_project(tmp_path)


def test_an_issue_is_papers_keys_and_a_table_for_the_answers(root: Path) -> None:
    result = run(root, *ISSUE, "--forms", "2")
    assert result.exit_code == 0, result.output
    papers = [
        f"quick_check-{form}-{part}.pdf"
        for form in "AB"
        for part in ("questions", "answer-sheet", "key", "feedback")
    ]
    names = [*papers, "class-key.pdf", "answers.csv"]
    assert result.stdout.splitlines() == [f"printed/issue-1/{name}" for name in names]
    files = printed(root)
    assert set(files) == {f"issue-1/{name}" for name in names}
    papers = [data for name, data in files.items() if name.endswith(".pdf")]
    assert all(data.startswith(b"%PDF-") for data in papers)
    assert [path.name for path in root.rglob(".*")] == []


def test_the_table_for_the_answers_has_a_row_for_each_form_with_its_id(root: Path) -> None:
    run(root, *ISSUE, "--forms", "2")
    head, *rows = printed(root)["issue-1/answers.csv"].decode("utf-8").splitlines()
    with records_of(root) as connection:
        forms = issue_of(connection, 1).forms
    assert head.startswith("form,label,person,1,2")
    assert [row.split(",")[0] for row in rows] == [form.form_id for form in forms]


def test_what_was_issued_is_in_the_records_before_anybody_sits_it(root: Path) -> None:
    run(root, *ISSUE, "--forms", "2")
    with records_of(root) as connection:
        issue = issue_of(connection, 1)
        assert set(exposure(connection).values()) <= {1, 2}
    assert (issue.state, issue.seed, [f.label for f in issue.forms]) == (
        "issued",
        "spring",
        ["A", "B"],
    )
    assert all(entry["question"]["key"] for f in issue.forms for entry in f.content["questions"])
    assert issue.bank_hash == bank_hash(Project(root))


def test_records_and_papers_are_for_their_owner_only(root: Path) -> None:
    run(root, *ISSUE)
    for folder in (root / "records", root / "printed" / "issue-1"):
        assert folder.stat().st_mode & 0o077 == 0


def test_the_same_seed_writes_the_same_bytes_and_no_second_issue(root: Path) -> None:
    run(root, *ISSUE)
    first = printed(root)
    again = run(root, *ISSUE)
    assert printed(root) == first
    assert "NO NEW PAPERS: these are the papers of issue 1, made on 20" in again.stderr
    with records_of(root) as connection:
        assert len(all_issues(connection)) == 1


def test_the_same_seed_in_another_shop_gives_the_same_papers(root: Path, tmp_path: Path) -> None:
    other = tmp_path / "other"
    shutil.copytree(root, other)
    run(root, *ISSUE)
    run(other, *ISSUE)
    assert printed(other) == printed(root)


def test_another_seed_is_another_issue_and_leaves_the_first_as_it_was(root: Path) -> None:
    run(root, *ISSUE)
    first = printed(root)
    result = run(root, "issue", "quick_check", "--seed", "summer")
    assert result.exit_code == 0, result.output
    files = printed(root)
    assert first.items() <= files.items()
    assert "issue-2/quick_check-A-questions.pdf" in files


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (
            ("issue", "quick_chek", "--seed", "1"),
            "no paper is called 'quick_chek'; did you mean 'quick_check'?",
        ),
        (("issue", "qqq", "--seed", "1"), "no paper is called 'qqq'. The papers are: quick_check"),
        (
            ("issue", "quick_check"),
            "say --seed with a word of your own, such as spring: the numbers are drawn from it, "
            "and the same word gives the same papers again",
        ),
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


def test_a_roster_gives_each_person_a_form(root: Path) -> None:
    result = run(root, *ISSUE, "--roster", "people.csv")
    assert result.exit_code == 0, result.output
    keys = [line for line in result.stdout.splitlines() if line.endswith("-key.pdf")]
    assert len(keys) == 3 + 1
    with records_of(root) as connection:
        forms = issue_of(connection, 1).forms
    assert [form.person for form in forms] == ["Apprentice 01", "Apprentice 02", "Apprentice 03"]
    assert f"form B, {forms[1].form_id}: Apprentice 02" in result.stderr.splitlines()
    assert "An average apprentice should score about" in result.stderr.splitlines()[-2]
    assert result.stderr.splitlines()[-1] == "issue 1 is in the records"
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
