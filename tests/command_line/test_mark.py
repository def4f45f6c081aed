"""`guidecoat mark`: answers are marked and kept whole, or refused with every place."""

import json
import os
import re
import shutil
import stat
from fractions import Fraction
from pathlib import Path

import openpyxl
import pytest

from generator.marking import response_as_plain
from generator.records import Person, open_records
from generator.records.issues.issues import void
from generator.records.leaving.erase import erase_person
from generator.records.people.people import add_people
from generator.records.store.audit_log import lines
from generator.records.store.database import FILE_NAME
from tests.command_line.marking_project import (
    AT,
    HEADER,
    TRAINER,
    WRONG_CELLS,
    kept,
    marked,
    marking_project,
    refused,
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


def test_a_class_is_marked_and_each_paper_is_told(shop: Path) -> None:
    missed = ("A", *RIGHT_CELLS[1:])
    name = table(shop, row("A"), row("B", *missed), row("C", "", "", ""))
    said = marked(shop, name, "--marker", TRAINER)
    assert said.stdout == (
        "issue 1, small_check: 2 new\n"
        "  form A, Apprentice 01: 14 of 14 marks, passed\n"
        "  form B, Apprentice 02: 13 of 14 marks, not passed: a must-pass question was missed"
        " (question 1)\n"
        f"no answers yet, not marked: form C ({C})\n"
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
    assert "warning: cell G2: question 4 of form A: D missing [order-not-whole]" in said.stderr
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
    assert error == (
        "Error: 'Trainer 9' is not in the records; add the person first: "
        'guidecoat records people --person "Trainer 9"\n'
    )


def test_a_voided_issue_takes_no_answers(shop: Path) -> None:
    with open_records(shop / "records") as connection:
        void(connection, 1, "the key got out", AT)
    result = run(shop, "mark", table(shop, row("A")))
    assert result.exit_code == 1
    assert f"form {A} is of issue 1, which was voided" in result.stderr
    assert "guidecoat records void 1 --take-back" in result.stderr


def test_the_day_of_the_sitting_is_kept_with_the_answers(shop: Path) -> None:
    marked(shop, table(shop, row("A")), "--sat", "2026-03-03")
    assert kept(shop)[f"A {ANN}"].sat == "2026-03-03"
    said = marked(shop, table(shop, row("A")), "--sat", "2026-03-04").stdout
    assert "1 there already, with a new day now" in said
    assert kept(shop)[f"A {ANN}"].sat == "2026-03-04"
    error = refused(shop, table(shop, row("A")), "--sat", "2026-03-01")
    assert "issue 1 was made on 2026-03-02, so nobody sat it on 2026-03-01" in error


def test_answers_of_an_erased_person_are_refused_and_nobody_else_is_suggested(shop: Path) -> None:
    with open_records(shop / "records") as connection:
        add_people(connection, [Person("Apprentice 12"), Person("Apprentice 14")], AT)
        erase_person(connection, "Apprentice 12", AT)
    error = refused(shop, table(shop, row("C", person="Apprentice 12")))
    assert "cell C2: 'Apprentice 12' was erased from the records, so no answers are kept" in error
    assert "take this row out of the table" in error
    assert "Apprentice 14" not in error


def test_a_name_or_a_label_in_the_wrong_column_is_told_what_belongs_there(shop: Path) -> None:
    error = refused(shop, table(shop, row("C", person="Ann Example")))
    assert "'Ann Example' is a name, and this column takes the code" in error
    assert f"write '{ANN}'" in error
    error = refused(shop, table(shop, ("C", "C", "", *RIGHT_CELLS)))
    assert "the id of eight characters stands at the foot of the paper" in error


def test_an_answer_that_is_no_number_is_shown_with_the_paper_to_look_at(shop: Path) -> None:
    said = marked(shop, table(shop, row("A", "A", "A C", "two"))).stdout
    assert "question 3 cannot be read (3: 'two')" in said


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
