"""`guidecoat mark --form-id`: one paper typed in question by question."""

from contextlib import chdir
from pathlib import Path

import pytest
from click.testing import CliRunner

from generator.command_line.main import main
from generator.marking import response_as_plain
from generator.workflows.answers import paper_entry
from tests.command_line.marking_project import (
    TRAINER,
    kept,
    marking_project,
)
from tests.marking.small_forms import ANN, BOB, RIGHT, RIGHT_CELLS, small_form
from tests.records.small_disk import small_disk as small_disk

A, B, C = (small_form(label)["form_id"] for label in "ABC")


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    return marking_project(tmp_path / "shop")


def enter(shop: Path, typed: str, *more: str):
    """Enter a paper at the terminal; a line for each thing that is typed."""
    with chdir(shop):
        return CliRunner().invoke(main, ["mark", *more], input=typed)


FULL = "\n".join((*RIGHT_CELLS[:5], "2", "1", "1", "y", ""))


def test_a_paper_is_entered_question_by_question(shop: Path) -> None:
    done = enter(shop, FULL, "--form-id", A.lower(), "--marker", TRAINER)
    assert done.exit_code == 0, done.output
    assert done.stdout == (
        "issue 1, small_check: 1 new\n  form A, Apprentice 01: 14 of 14 marks, passed\n"
    )
    for said in (
        "form A, Small check, Apprentice 01",
        "1 (one letter): B",
        "3 (a number in µm): 60 µm",
        "6, point 1, 0 to 2: point 1: 2",
        "    read: 1C 2A 3B",
        "    read: 2 of 2",
        "Keep these answers? [y/N]: y",
    ):
        assert said in done.stderr
    assert kept(shop)[f"A {ANN}"].responses == {
        str(n): response_as_plain(r) for n, r in RIGHT.items()
    }


def test_going_back_and_typing_again_changes_an_answer(shop: Path) -> None:
    typed = ["A", "back", "back", "E", "AB", "B", "A C", "60", "ABCD", "1C", "back", "1C 2A 3B"]
    typed += ["5", "2", "x", "1", "back", "0", "1", "y"]
    done = enter(shop, "\n".join(typed) + "\n", "--form-id", A)
    assert done.exit_code == 0, done.output
    responses = kept(shop)[f"A {ANN}"].responses
    assert responses["1"] == {"form": "chosen", "letters": ["B"]}
    assert responses["5"]["answers"] == {"1": "C", "2": "A", "3": "B"}
    assert responses["6"] == {"form": "awarded", "marks": [2, 0, 1]}
    for said in ("the question has no 'E'", "takes one letter", "a whole number from 0 to 2"):
        assert said in done.stderr


def test_blank_illegible_and_unmarked_answers_are_shown_as_what_they_are(shop: Path) -> None:
    done = enter(shop, "B\n\n?\nABC\n\n\ny\n", "--form-id", A)
    assert done.exit_code == 0, done.output
    for said in ("blank", "a person must look at it:", "read: A B C (D missing)", "not marked yet"):
        assert f"    {said}" in done.stderr
    assert "give the marks: question 6" in done.stdout
    found = kept(shop)[f"A {ANN}"]
    assert (found.responses["3"], "6" in found.responses) == ({"form": "illegible"}, False)


def test_a_number_that_cannot_be_read_is_said_at_once(shop: Path) -> None:
    done = enter(shop, "B\nA C\nsixty\n", "--form-id", A)
    assert "a person must look at it: This cannot be read as one number." in done.stderr


def test_a_whole_written_answer_may_be_blank_or_illegible(shop: Path) -> None:
    for word, form in (("blank", "blank"), ("?", "illegible")):
        done = enter(shop, "\n".join((*RIGHT_CELLS[:5], "2", word, "y", "")), "--form-id", A)
        assert done.exit_code == 0, done.output
        assert kept(shop)[f"A {ANN}"].responses["6"] == {"form": form}


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        (FULL[:-3] + "\nn\n", "nothing was kept"),
        ("B\nA C\n", "the answers ended too early; nothing was kept"),
        ("", "the answers ended too early; nothing was kept"),
    ],
)
def test_nothing_is_kept_before_it_is_confirmed(shop: Path, typed: str, said: str) -> None:
    done = enter(shop, typed, "--form-id", A)
    assert done.exit_code == 1
    assert done.stderr.endswith(f"Error: {said}\n")
    assert kept(shop) == {}


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (("--form-id", "7KQ2M4ZZ"), "no form '7KQ2M4ZZ' was issued"),
        (("--form-id", ""), "name files with answers"),
        (("--form-id", A, "--person", BOB), f"was made for '{ANN}', not for '{BOB}'"),
        (("--form-id", C, "--person", "Aprentice 01"), f"did you mean '{ANN}'?"),
    ],
)
def test_a_form_or_person_that_cannot_be_meant_is_one_sentence(
    shop: Path, arguments: tuple[str, ...], said: str
) -> None:
    done = enter(shop, FULL, *arguments)
    assert done.exit_code in (1, 2)
    assert said in done.stderr.splitlines()[-1]
    assert kept(shop) == {}


def test_a_form_made_for_nobody_is_marked_for_the_person_that_is_named(shop: Path) -> None:
    for person in (ANN, BOB):
        assert enter(shop, FULL, "--form-id", C, "--person", person).exit_code == 0
    assert set(kept(shop)) == {f"C {ANN}", f"C {BOB}"}


def test_the_word_for_going_back_is_no_answer_to_any_question() -> None:
    assert paper_entry.BACK.upper().isalpha()
    assert len(paper_entry.BACK) > 3
