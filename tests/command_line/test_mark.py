"""`guidecoat mark`: answers are marked and kept whole, or refused with every place."""

import json
import os
import re
import shutil
import stat
from contextlib import chdir
from fractions import Fraction
from pathlib import Path

import openpyxl
import pytest
from click.testing import CliRunner

from generator.command_line import mark_entry
from generator.command_line.main import main
from generator.marking import response_as_plain
from generator.records import open_records
from generator.records.database import FILE_NAME
from generator.records.diary import lines
from generator.records.issues import void
from tests.command_line.marking_project import (
    AT,
    HEADER,
    TRAINER,
    WRONG_CELLS,
    kept,
    marked,
    marking_project,
    row,
    table,
    verdicts,
)
from tests.command_line.running import misuse, run
from tests.marking.small_forms import ANN, BOB, RIGHT, RIGHT_CELLS, small_form
from tests.records.small_disk import small_disk as small_disk

A, B, C = (small_form(label)["form_id"] for label in "ABC")


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    return marking_project(tmp_path / "shop")


def refused(shop: Path, *arguments: str) -> str:
    """Run `guidecoat mark` that must refuse and keep nothing; give what it says."""
    before = kept(shop)
    result = run(shop, "mark", *arguments)
    assert result.exit_code == 1, result.output
    assert result.stdout == ""
    assert kept(shop) == before
    return result.stderr


def test_a_class_is_marked_and_each_paper_is_told(shop: Path) -> None:
    missed = ("A", *RIGHT_CELLS[1:])
    name = table(shop, row("A"), row("B", *missed), row("C", "", "", ""))
    said = marked(shop, name, "--marker", TRAINER)
    assert said.stdout == (
        "issue 1, small_check: 2 new\n"
        "  form A, Apprentice 01: 14 of 14 marks, passed\n"
        "  form B, Apprentice 02: 13 of 14 marks, not passed: a must-pass question was missed"
        " (question 1)\n"
        f"no answers yet, not marked: {C}\n"
    )
    assert said.stderr == ""
    found = kept(shop)
    assert set(found) == {f"A {ANN}", f"B {BOB}"}
    ann = found[f"A {ANN}"]
    assert ann.marker == TRAINER
    assert ann.responses == {str(n): response_as_plain(r) for n, r in RIGHT.items()}
    assert (ann.marked.verdict, ann.marked.points, ann.marked.most) == ("passed", 14, 14)
    wrong = found[f"B {BOB}"].marked.marks[0]
    assert wrong.findings["went_wrong"][0]["text"] == "about A"


def test_json_has_exact_points_and_what_waits(shop: Path) -> None:
    cells = ("B", "A C", "?", "BACD", "1C 2A", "")
    name = table(shop, row("A", *cells), row("B", *WRONG_CELLS))
    document = json.loads(marked(shop, name, "--format", "json").stdout)
    (issue,) = document["issues"]
    assert (issue["new"], issue["replaced"], issue["known"]) == (2, 0, 0)
    first, second = issue["forms"]
    assert (first["form"], first["person"], first["verdict"]) == (A, ANN, "unfinished")
    assert Fraction(first["points"]) == 1 + 2 + 2 * Fraction(5, 6) + 2
    assert (first["illegible"], first["written_to_mark"]) == ([3], [6])
    assert [mark["status"] for mark in first["marks"]] == [
        *("right", "right", "illegible", "part", "part", "written")
    ]
    assert second["must_pass_missed"] == [1]
    assert document["without_answers"] == []


def test_the_same_table_twice_is_known_and_other_answers_replace(shop: Path) -> None:
    name = table(shop, row("A"), row("B"))
    marked(shop, name)
    assert "issue 1, small_check: 0 new, 2 there already\n" in marked(shop, name).stdout
    table(shop, row("A"), row("B", *WRONG_CELLS))
    assert "0 new, 1 in place of earlier answers, 1 there already" in marked(shop, name).stdout
    assert verdicts(shop) == {f"A {ANN}": "passed", f"B {BOB}": "must_pass_missed"}


@pytest.mark.parametrize(
    ("changed", "place", "said"),
    [
        (row("B", "B", "A E"), "3:29", "question 2 of form B: the question has no 'E'"),
        (("7KQ2M4ZZ", "B", "", *RIGHT_CELLS), "3:1", "no form '7KQ2M4ZZ' was issued"),
        (row("A"), "3:1", f"form {A} for 'Apprentice 01' is there already, in line 2"),
        (row("B", person=ANN), "3:12", f"was made for '{BOB}', not for '{ANN}'"),
        (row("B", "AB"), "3:13", "this question takes one letter, not 'AB'"),
        (row("C", person="Aprentice 01"), "3:12", "'Aprentice 01' is not in the records"),
    ],
)
def test_one_row_that_does_not_match_and_nothing_is_marked(
    shop: Path, changed: tuple[str, ...], place: str, said: str
) -> None:
    error = refused(shop, table(shop, row("A"), changed))
    place = place.replace("3:29", "3:15")
    assert f"answers.csv:{place}: error: " in error
    assert said in error
    assert "^" in error
    assert error.endswith("1 error; nothing was marked\n")


def test_every_problem_of_two_files_is_told_at_once(shop: Path) -> None:
    first = table(shop, row("A", "E"), row("B", "AB"))
    second = table(shop, row("C", "B", "Z"), name="more.csv")
    error = refused(shop, first, second)
    for place in ("answers.csv:2:13", "answers.csv:3:13", "more.csv:2:15"):
        assert f"{place}: error: " in error
    assert error.endswith("3 errors; nothing was marked\n")


def test_one_form_in_two_files_is_refused(shop: Path) -> None:
    first, second = table(shop, row("A")), table(shop, row("A"), name="more.csv")
    assert "is in answers.csv as well" in refused(shop, first, second)


def test_an_odd_order_is_told_and_still_marked(shop: Path) -> None:
    said = marked(shop, table(shop, row("A", "B", "", "", "ABC")))
    assert "warning: question 4 of form A: D missing [order-not-whole]" in said.stderr
    assert list(kept(shop)) == [f"A {ANN}"]


def test_a_filled_workbook_is_marked_and_its_problems_name_the_cell(shop: Path) -> None:
    book = openpyxl.Workbook()
    book.active.append(HEADER)
    book.active.append([A, "A", ANN, *RIGHT_CELLS[:2], 60, *RIGHT_CELLS[3:]])
    book.active.append([B, "B", "", "b"])
    book.save(shop / "answers.xlsx")
    assert "14 of 14 marks, passed" in marked(shop, "answers.xlsx").stdout
    assert kept(shop)[f"A {ANN}"].responses["3"] == {"form": "typed", "text": "60"}
    book.active["E3"], book.active["F3"] = "=A1", "x" * 300
    book.save(shop / "answers.xlsx")
    error = refused(shop, "answers.xlsx")
    assert "answers.xlsx:3:5: error: cell E3: this cell holds a formula" in error
    assert "cell F3: question 3 of form B: an answer has at most 200" in error


@pytest.mark.parametrize(
    ("name", "data", "said"),
    [
        ("answers.ods", b"PK", "answers come as .csv"),
        ("answers.xlsx", b"not a workbook", "this is no workbook, or it is locked or damaged"),
        ("answers.csv", b"form\xff", "this is not UTF-8 text"),
        ("answers.csv", b"", "this table is empty"),
        ("answers.csv", b"form,label,person,1\n", "no form has an answer yet"),
        ("answers.csv", b'form,label,person,1\n"7KQ', "a quoted cell is never closed"),
        ("answers.csv", b"x" * 8_000_001, "has at most 8 MB"),
        ("answers.json", b"{}", "answers.json:1:"),
        ("answers.json", b"[", "answers.json:1:"),
    ],
)
def test_a_file_that_cannot_be_read_is_one_clear_problem(
    shop: Path, name: str, data: bytes, said: str
) -> None:
    (shop / name).write_bytes(data)
    error = refused(shop, name)
    assert said in error
    assert error.endswith("nothing was marked\n")


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (("mark",), "name files with answers, or one paper with --form"),
        (("mark", "roster.csv", "--form", A), "name files with answers, or one paper"),
        (("mark", "roster.csv", "--person", ANN), "--person goes with --form or one .json"),
        (("mark", "nothing.csv"), "'nothing.csv' does not exist"),
        (("mark", "roster.csv", "--format", "xml"), "'xml' is not one of"),
    ],
)
def test_a_request_that_cannot_be_meant_is_one_sentence(
    shop: Path, arguments: tuple[str, ...], said: str
) -> None:
    (shop / "roster.csv").write_text("code\nA1\n", "utf-8")
    assert said in misuse(shop, *arguments)


def test_without_records_it_says_how_they_come_to_be_and_makes_none(shop: Path) -> None:
    name = table(shop, row("A"))
    shutil.rmtree(shop / "records")
    result = run(shop, "mark", name)
    assert result.exit_code == 1
    assert result.stderr == (
        "Error: there are no records here yet; `guidecoat issue` keeps each paper that it writes\n"
    )
    assert not (shop / "records").exists()


def test_an_unknown_marker_keeps_nothing(shop: Path) -> None:
    error = refused(shop, table(shop, row("A")), "--marker", "Trainer 9")
    assert error == ("Error: 'Trainer 9' is not in the records; did you mean 'Trainer 1'?\n")


def test_a_voided_issue_takes_no_answers(shop: Path) -> None:
    with open_records(shop / "records") as connection:
        void(connection, 1, "the key got out", AT)
    result = run(shop, "mark", table(shop, row("A")))
    assert result.exit_code == 1
    assert f"form {A} is of issue 1, which was voided" in result.stderr


def test_marks_of_a_written_answer_may_come_later_and_complete_the_paper(shop: Path) -> None:
    marked(shop, table(shop, row("A", *RIGHT_CELLS[:5])))
    assert verdicts(shop) == {f"A {ANN}": "unfinished"}
    said = marked(shop, table(shop, row("A", "", "", "", "", "", "2 1 1")))
    assert "14 of 14 marks, passed" in said.stdout
    assert kept(shop)[f"A {ANN}"].responses == {
        str(n): response_as_plain(r) for n, r in RIGHT.items()
    }
    # the rest typed once more, without the marks, does not take the marks away
    assert "1 there already" in marked(shop, table(shop, row("A", *RIGHT_CELLS[:5]))).stdout
    assert verdicts(shop) == {f"A {ANN}": "passed"}
    blank = table(shop, row("A", "", "", "", "", "", "blank"))
    assert "10 of 14 marks, not passed yet" in marked(shop, blank).stdout


def page_file(shop: Path, name: str = "ann.json", **changes: object) -> str:
    """Write what a page saves and give its name."""
    saved = {
        "kind": "guidecoat answers",
        "version": 1,
        "form_id": A,
        "label": "A",
        "edition": "1",
        "person": ANN,
        "responses": {str(n): response_as_plain(r) for n, r in RIGHT.items() if n != 6},
        "written": {"6": "First mask\nthen paint"},
        "minutes_used": 12,
        "minutes_over": 0,
    }
    (shop / name).write_text(json.dumps(saved | changes), "utf-8")
    return name


def test_a_file_of_the_page_is_marked_and_its_written_answer_shown_to_the_marker(
    shop: Path,
) -> None:
    said = marked(shop, page_file(shop)).stdout
    assert "10 of 14 marks, not finished" in said
    assert "    give the marks: question 6 written, not marked yet\n" in said
    assert "      6: First mask\n" in said
    assert "      6: then paint\n" in said
    marked(shop, table(shop, row("A", "", "", "", "", "", "2 1 1")))
    assert verdicts(shop) == {f"A {ANN}": "passed"}


def test_time_that_was_overrun_is_told_and_a_mistyped_code_is_put_right(shop: Path) -> None:
    name = page_file(shop, form_id=C, label="C", person="Ann", minutes_over=3, minutes_used=43)
    assert "'Ann' is not in the records" in refused(shop, name)
    said = marked(shop, name, "--person", ANN).stdout
    assert "    answered 3 minutes past its time\n" in said
    assert list(kept(shop)) == [f"C {ANN}"]


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"form_id": "7KQ2M4ZZ", "label": "Z"}, "no form '7KQ2M4ZZ' was issued"),
        ({"person": BOB}, f"was made for '{ANN}', not for '{BOB}'"),
        (
            {"responses": {"1": {"form": "chosen", "letters": ["E"]}}},
            "question 1 of form A: the question has no 'E'",
        ),
        (
            {"responses": {"9": {"form": "chosen", "letters": ["A"]}}},
            "form A has no question 9",
        ),
        ({"responses": {"1": {"form": "typed", "text": "5"}}}, "takes marked options"),
    ],
)
def test_a_file_of_the_page_that_is_not_of_its_form_is_refused(
    shop: Path, changes: dict[str, object], said: str
) -> None:
    error = refused(shop, page_file(shop, **changes))
    assert "ann.json:1:1: error: " in error
    assert said in error


def enter(shop: Path, typed: str, *more: str):
    """Enter a paper at the terminal; a line for each thing that is typed."""
    with chdir(shop):
        return CliRunner().invoke(main, ["mark", *more], input=typed)


FULL = "\n".join((*RIGHT_CELLS[:5], "2", "1", "1", "y", ""))


def test_a_paper_is_entered_question_by_question(shop: Path) -> None:
    done = enter(shop, FULL, "--form", A.lower(), "--marker", TRAINER)
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
    done = enter(shop, "\n".join(typed) + "\n", "--form", A)
    assert done.exit_code == 0, done.output
    responses = kept(shop)[f"A {ANN}"].responses
    assert responses["1"] == {"form": "chosen", "letters": ["B"]}
    assert responses["5"]["answers"] == {"1": "C", "2": "A", "3": "B"}
    assert responses["6"] == {"form": "awarded", "marks": [2, 0, 1]}
    for said in ("the question has no 'E'", "takes one letter", "a whole number from 0 to 2"):
        assert said in done.stderr


def test_blank_illegible_and_unmarked_answers_are_shown_as_what_they_are(shop: Path) -> None:
    done = enter(shop, "B\n\n?\nABC\n\n\ny\n", "--form", A)
    assert done.exit_code == 0, done.output
    for said in ("blank", "a person must look at it:", "read: A B C (D missing)", "not marked yet"):
        assert f"    {said}" in done.stderr
    assert "give the marks: question 6" in done.stdout
    found = kept(shop)[f"A {ANN}"]
    assert (found.responses["3"], "6" in found.responses) == ({"form": "illegible"}, False)


def test_a_number_that_cannot_be_read_is_said_at_once(shop: Path) -> None:
    done = enter(shop, "B\nA C\nsixty\n", "--form", A)
    assert "a person must look at it: This cannot be read as one number." in done.stderr


def test_a_whole_written_answer_may_be_blank_or_illegible(shop: Path) -> None:
    for word, form in (("blank", "blank"), ("?", "illegible")):
        done = enter(shop, "\n".join((*RIGHT_CELLS[:5], "2", word, "y", "")), "--form", A)
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
    done = enter(shop, typed, "--form", A)
    assert done.exit_code == 1
    assert done.stderr.endswith(f"Error: {said}\n")
    assert kept(shop) == {}


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (("--form", "7KQ2M4ZZ"), "no form '7KQ2M4ZZ' was issued"),
        (("--form", ""), "name files with answers"),
        (("--form", A, "--person", BOB), f"was made for '{ANN}', not for '{BOB}'"),
        (("--form", C, "--person", "Aprentice 01"), f"did you mean '{ANN}'?"),
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
        assert enter(shop, FULL, "--form", C, "--person", person).exit_code == 0
    assert set(kept(shop)) == {f"C {ANN}", f"C {BOB}"}


def test_what_the_diary_and_the_file_names_hold_is_nobodys_name(shop: Path) -> None:
    marked(shop, table(shop, row("A"), row("B")))
    with open_records(shop / "records") as connection:
        told = json.dumps(lines(connection))
    assert "2 sittings" in told
    assert ANN not in told
    assert "Ann Example" not in told
    names = [path.name for path in shop.rglob("*")]
    assert not any(re.search("Ann|pprentice", name) for name in names)
    modes = [stat.S_IMODE(path.stat().st_mode) for path in (shop / "records").iterdir()]
    assert set(modes) == {0o600}


@pytest.mark.skipif(os.geteuid() == 0, reason="permissions do not bind the superuser")
def test_records_that_cannot_be_written_are_one_sentence(shop: Path) -> None:
    name = table(shop, row("A"))
    (shop / "records" / FILE_NAME).chmod(0o400)
    (shop / "records").chmod(0o500)
    result = run(shop, "mark", name)
    (shop / "records").chmod(0o700)
    assert result.exit_code == 1
    assert result.stderr == ("Error: the folder 'records' cannot be written; check who owns it\n")


def test_a_full_disk_is_one_sentence_and_nothing_is_lost(small_disk: Path) -> None:
    shop = marking_project(small_disk / "shop")
    marked(shop, table(shop, row("A")))
    name = table(shop, row("B"))
    filler = small_disk / "filler"
    writing = os.open(filler, os.O_CREAT | os.O_WRONLY)
    with pytest.raises(OSError, match="No space left"):
        while True:
            os.write(writing, b"\0" * 4096)
    os.close(writing)
    result = run(shop, "mark", name)
    assert result.exit_code == 1
    assert result.stderr.endswith("the disk that holds 'records' is full; nothing was changed\n")
    filler.unlink()
    assert list(kept(shop)) == [f"A {ANN}"]
    marked(shop, name)
    assert set(kept(shop)) == {f"A {ANN}", f"B {BOB}"}


def test_the_word_for_going_back_is_no_answer_to_any_question() -> None:
    assert mark_entry.BACK.upper().isalpha()
    assert len(mark_entry.BACK) > 3
