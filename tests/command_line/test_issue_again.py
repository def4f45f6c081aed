"""Issued papers: printed again unchanged, voided with a reason, whole after any interruption."""

import errno
from pathlib import Path
from shutil import disk_usage

import pytest

from generator.printing import PrintingRefused
from generator.records import open_records
from generator.records.issues.issues import issue_of, pending_issues
from generator.workflows.papers import pending_papers
from tests.command_line.issue_project import ISSUE, issuing_project, printed
from tests.command_line.running import misuse, run
from tests.records.small_disk import small_disk as small_disk


@pytest.fixture
def root(tmp_path: Path) -> Path:
    return issuing_project(tmp_path)


def states(root: Path) -> list[str]:
    with open_records(root / "records") as connection:
        rows = connection.execute("SELECT state FROM issues ORDER BY id")
        return [row["state"] for row in rows]


@pytest.mark.parametrize(
    "options", [(), ("--paper", "letter"), ("--large-print", "--on-screen"), ("--forms", "3")]
)
def test_papers_are_printed_again_byte_by_byte_whatever_they_were_printed_with(
    root: Path, options: tuple[str, ...]
) -> None:
    assert run(root, *ISSUE, *options).exit_code == 0
    first = printed(root)
    for path in (root / "printed" / "issue-1").iterdir():
        path.unlink()
    result = run(root, "records", "print-again", "1")
    assert result.exit_code == 0, result.output
    assert printed(root) == first


@pytest.mark.parametrize("command", [("records", "print-again", "1"), ISSUE])
def test_a_table_that_is_being_filled_in_is_never_written_over(
    root: Path, command: tuple[str, ...]
) -> None:
    run(root, *ISSUE)
    answers = root / "printed" / "issue-1" / "answers.csv"
    answers.write_text(answers.read_text("utf-8").replace(",,", ",B,", 1), "utf-8")
    filled = answers.read_bytes()
    result = run(root, *command)
    assert result.exit_code == 0
    assert answers.read_bytes() == filled
    assert "answers.csv" not in result.stdout


def test_papers_are_printed_again_after_the_bank_has_changed(root: Path) -> None:
    run(root, *ISSUE, "--roster", "people.csv")
    first = printed(root)
    for file in (root / "question_bank" / "items").rglob("*.yml"):
        file.unlink()
    assert run(root, "records", "print-again", "1").exit_code == 0
    assert printed(root) == first


def test_a_voided_issue_stays_and_its_seed_gives_an_issue_again(root: Path) -> None:
    run(root, *ISSUE)
    first = printed(root)
    result = run(root, "records", "void", "1", "--reason", "left in the canteen", "--yes")
    assert result.stdout == "voided: issue 1, quick_check: 1 form\n"
    assert run(root, *ISSUE).exit_code == 0
    # a voided issue does not count as used, so the choice comes out the same
    files = printed(root)
    assert {n[8:]: d for n, d in files.items() if n.startswith("issue-2/")} == {
        n[8:]: d for n, d in first.items()
    }
    lines = run(root, "records", "issues").stdout.splitlines()
    assert lines[0].endswith("1 form, 0 answered; voided: left in the canteen")
    assert lines[1].startswith("issue 2: quick_check, ")


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (("void", "7", "--reason", "x"), "there is no issue 7 in the records"),
        (("void", "1", "--reason", " ", "--yes"), "say why the issue is voided"),
        (("print-again", "7"), "there is no issue 7 in the records"),
    ],
)
def test_what_cannot_be_done_is_one_sentence(
    root: Path, arguments: tuple[str, ...], said: str
) -> None:
    run(root, *ISSUE)
    result = run(root, "records", *arguments)
    assert result.exit_code == 1
    assert result.stderr == f"Error: {said}\n"


@pytest.mark.parametrize("number", ["0", "-1", "one", "99999999999999999999"])
def test_a_number_that_no_issue_can_have_is_misuse(root: Path, number: str) -> None:
    assert "ISSUE" in misuse(root, "records", "print-again", "--", number)


def test_a_voided_issue_needs_its_reason(root: Path) -> None:
    assert misuse(root, "records", "void", "1") == "Missing option '--reason'."


def test_an_issue_that_was_stopped_before_its_papers_is_finished_by_the_next_command(
    root: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    class Killed(BaseException):
        pass

    def killed(*_: object) -> None:
        raise Killed

    with monkeypatch.context() as stopped:
        stopped.setattr(pending_papers, "write_files", killed)
        with pytest.raises(Killed):
            run(root, *ISSUE)
    assert states(root) == ["pending"]
    assert printed(root) == {}
    result = run(root, "records", "issues")
    assert result.stderr == "issue 1 was stopped halfway; its papers are written now\n"
    assert states(root) == ["issued"]
    finished = printed(root)
    other = issuing_project(root.parent / "other")
    run(other, *ISSUE)
    assert finished == printed(other)


def test_a_disk_that_refuses_the_papers_leaves_neither_papers_nor_issue(
    root: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "No space left on device", "printed/issue-1")

    with monkeypatch.context() as disk:
        disk.setattr(pending_papers, "write_files", full)
        result = run(root, *ISSUE)
    assert result.exit_code == 1
    assert result.stderr.splitlines()[-1] == ("Error: printed/issue-1: No space left on device")
    assert states(root) == []
    assert printed(root) == {}
    assert run(root, *ISSUE).exit_code == 0
    assert states(root) == ["issued"]


def test_a_disk_that_is_really_full_leaves_neither(small_disk: Path) -> None:
    root = issuing_project(small_disk)
    (root / "filling").write_bytes(b"x" * (disk_usage(root).free - 150_000))
    result = run(root, *ISSUE, "--roster", "people.csv")
    assert result.exit_code == 1
    assert result.stderr.startswith("Error: ")
    assert "full" in result.stderr or "No space left" in result.stderr
    (root / "filling").unlink()
    assert run(root, "records", "issues").stdout == ""
    assert printed(root) == {}
    assert run(root, *ISSUE, "--roster", "people.csv").exit_code == 0


def test_a_missing_font_keeps_nothing(root: Path) -> None:
    for font in (root / "site_theme" / "fonts_print").iterdir():
        font.unlink()
    result = run(root, *ISSUE)
    assert result.exit_code == 1
    assert "nothing was written" in result.stderr
    assert states(root) == []


@pytest.mark.parametrize("command", [("records", "print-again", "1"), ISSUE])
def test_papers_that_cannot_be_set_again_are_one_sentence_and_stay_as_they_were(
    root: Path, monkeypatch: pytest.MonkeyPatch, command: tuple[str, ...]
) -> None:
    def refuse(*_: object, **__: object) -> dict[str, bytes]:
        raise PrintingRefused("Cannot print the question paper of form A: a font is missing.")

    run(root, *ISSUE)
    first = printed(root)
    monkeypatch.setattr(pending_papers, "issue_files", refuse)
    result = run(root, *command)
    assert result.exit_code == 1
    assert result.stderr == (
        "Error: Cannot print the question paper of form A: a font is missing.\n"
    )
    assert printed(root) == first


def test_a_resit_avoids_what_the_person_has_met(root: Path) -> None:
    roster = ("--roster", "people.csv")
    run(root, *ISSUE, *roster)
    result = run(root, "issue", "quick_check", "--seed", "resit", *roster)
    assert result.exit_code == 0, result.output
    with open_records(root / "records") as connection:
        assert pending_issues(connection) == ()
        first, second = (issue_of(connection, number).forms for number in (1, 2))
    for one, other in zip(first, second, strict=True):
        assert one.person == other.person
        met, asked = (
            {entry["question"]["id"] for entry in form.content["questions"]}
            for form in (one, other)
        )
        assert met != asked
