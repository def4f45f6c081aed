"""`guidecoat correct`: a key is corrected for a reason, all are marked again, nothing is lost."""

import copy
import json
from contextlib import chdir
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.command_line.main import main
from generator.marking import mark_form
from generator.records import open_records
from generator.records.issues.issues import issue_of, void
from generator.records.sittings.corrections import corrections_of
from generator.records.sittings.form_marks import as_marked
from generator.records.sittings.mark_and_store import read_responses
from generator.records.sittings.stored_marks import all_markings
from generator.records.store.audit_log import lines
from tests.command_line.marking_project import (
    AT,
    TRAINER,
    corrections,
    kept,
    marked,
    marking_project,
    row,
    table,
    verdicts,
)
from tests.command_line.running import misuse, run
from tests.marking.issued import Plain
from tests.marking.small_forms import ANN, BOB, RIGHT_CELLS, every_kind, small_form

REASON = ("--reason", "both are sold so")


def turned(question: Plain, order: str) -> Plain:
    """Return a question with its options in another order, lettered anew."""
    new = copy.deepcopy(question)
    options = {option["letter"]: option for option in new["key"]["options"]}
    new["key"]["options"] = [
        {**options[letter], "letter": new_letter}
        for new_letter, letter in zip("ABCD", order, strict=False)
    ]
    return new


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    """Return a project in which form B letters the choice the other way and asks other numbers."""
    choice, several, number, *rest = every_kind()
    other_sum = number | {"stem": "The same with other numbers"}
    on_b = [turned(choice, "CBA"), turned(several, "DCBA"), other_sum, *rest]
    ours = small_form("A", ANN, must_pass=(1,))
    return marking_project(tmp_path / "shop", ours, small_form("B", BOB, on_b, must_pass=(1,)))


def correct(shop: Path, *arguments: str) -> Result:
    """Run `guidecoat correct` for the first issue; it must succeed."""
    result = run(shop, "correct", "1", *arguments, *REASON, "--yes")
    assert result.exit_code == 0, result.output
    return result


def refused(shop: Path, *arguments: str) -> str:
    """Run `guidecoat correct`, which must change nothing; give its sentence."""
    before = kept(shop)
    result = run(shop, "correct", *arguments)
    assert result.exit_code == 1, result.output
    assert kept(shop) == before
    assert corrections(shop) == 0
    assert result.stderr.count("\n") == 1
    return result.stderr.removeprefix("Error: ").rstrip("\n")


def sat(shop: Path) -> None:
    """Mark two papers that chose the option with the text C in the first question."""
    marked(shop, table(shop, row("A", "C", *RIGHT_CELLS[1:]), row("B", "A", "D B", "60")))


def test_a_further_option_is_accepted_on_every_form_whatever_its_letter(shop: Path) -> None:
    sat(shop)
    assert set(verdicts(shop).values()) == {"must_pass_missed"}
    said = correct(shop, "--form", "A", "--question", "1", "--accept", "c", "--by", TRAINER).stdout
    assert said == (
        "question 1 of form A: 'C' is accepted as well\n"
        "changes 2 forms: A, B\n"
        "2 papers marked again, 2 with other marks\n"
        "  form A, Apprentice 01: 13 of 14 marks, not passed: a must-pass question was missed"
        " -> 14 of 14 marks, passed\n"
        "  form B, Apprentice 02: 4 of 14 marks, not passed: a must-pass question was missed"
        " -> 5 of 14 marks, not finished: a person must still look at an answer\n"
        "correction 1 of issue 1 is kept\n"
    )
    with open_records(shop / "records") as connection:
        (correction,) = corrections_of(connection, 1)
        (_, none, before), (_, number, after) = all_markings(connection, 1)
    assert (correction.reason, correction.decided_by) == (REASON[1], TRAINER)
    assert (none, before.verdict, number, after.verdict) == (None, "must_pass_missed", 1, "passed")


@pytest.mark.parametrize(
    "change",
    [
        ("--question", "1", "--accept", "C"),
        ("--question", "1", "--key", "C"),
        ("--question", "2", "--key", "A B"),
        ("--question", "3", "--accept-number", "29 to 31 µm"),
        ("--question", "5", "--leave-out"),
        ("--question", "1", "--leave-out"),
    ],
)
def test_marking_again_equals_marking_from_scratch_with_the_corrected_key(
    tmp_path: Path, shop: Path, change: tuple[str, ...]
) -> None:
    rows = row("A", "C", "A B", "30", *RIGHT_CELLS[3:]), row("B", "A", "D C", "30", "ACBD", "1C")
    marked(shop, table(shop, *rows))
    first = kept(shop)
    correct(shop, "--form", "A", *change)
    again = kept(shop)
    assert {name: s.marked for name, s in again.items()} != {n: s.marked for n, s in first.items()}
    # the same answers for the first time, after the correction
    with open_records(shop / "records") as connection, connection:
        connection.execute("DELETE FROM markings")
        connection.execute("DELETE FROM sittings")
    assert "2 new" in marked(shop, table(shop, *rows)).stdout
    scratch = kept(shop)
    assert {name: s.marked for name, s in scratch.items()} == {
        name: s.marked for name, s in again.items()
    }


def test_a_corrected_key_marks_like_a_form_that_was_issued_with_it(shop: Path) -> None:
    sat(shop)
    correct(shop, "--form", "B", "--question", "1", "--key", "A")
    with open_records(shop / "records") as connection:
        frozen = issue_of(connection, 1).forms
    for form, sitting in zip(frozen, kept(shop).values(), strict=True):
        content = copy.deepcopy(form.content)
        for option in content["questions"][0]["question"]["key"]["options"]:
            option["right"] = option["text"] == "C"
        fresh = as_marked(mark_form(content, read_responses(sitting.responses)))
        assert (fresh.points, fresh.most, fresh.verdict) == (
            sitting.marked.points,
            sitting.marked.most,
            sitting.marked.verdict,
        )
        assert [(m.share, m.status) for m in fresh.marks] == [
            (m.share, m.status) for m in sitting.marked.marks
        ]


def test_a_form_that_asks_with_other_numbers_is_named_and_stays(shop: Path) -> None:
    marked(shop, table(shop, row("A", "B", "", "65"), row("B", "B", "", "65")))
    said = correct(shop, "--form", "A", "--question", "3", "--accept-number", "65").stdout
    assert "changes 1 form: A\n" in said
    assert "form B asks it with other numbers and stays as it is\n" in said
    assert "2 papers marked again, 1 with other marks\n" in said
    assert kept(shop)[f"A {ANN}"].marked.marks[2].share == 1
    assert kept(shop)[f"B {BOB}"].marked.marks[2].share == 0


def test_a_question_left_out_gives_no_marks_and_asks_for_none(shop: Path) -> None:
    sat(shop)
    said = correct(shop, "--form", "A", "--question", "1", "--leave-out").stdout
    assert "question 1 of form A: the question is left out of the marks\n" in said
    assert "13 of 13 marks, passed" in said
    mark = kept(shop)[f"A {ANN}"].marked.marks[0]
    assert mark.findings["left_out"] is True
    assert kept(shop)[f"A {ANN}"].marked.most == 13


def test_a_dry_run_and_a_no_keep_nothing(shop: Path) -> None:
    sat(shop)
    before = kept(shop)
    ask = ("correct", "1", "--form", "A", "--question", "1", "--accept", "C", *REASON)
    tried = run(shop, *ask, "--dry-run")
    assert tried.exit_code == 0
    assert "2 papers marked again" in tried.stdout
    assert tried.stdout.endswith("nothing was kept\n")
    with chdir(shop):
        answers = [CliRunner().invoke(main, ask, input=typed) for typed in ("n\n", "")]
    assert [a.exit_code for a in answers] == [1, 1]
    assert answers[0].stderr.endswith(
        "\nError: nothing was kept; to keep it, answer y or add --yes\n"
    )
    assert (kept(shop), corrections(shop)) == (before, 0)
    with chdir(shop):
        assert CliRunner().invoke(main, ask, input="y\n").exit_code == 0
    assert corrections(shop) == 1


def test_two_corrections_go_on_top_of_each_other_and_the_same_one_twice_is_refused(
    shop: Path,
) -> None:
    sat(shop)
    correct(shop, "--form", "A", "--question", "1", "--accept", "C")
    again = run(shop, "correct", "1", "--form", "B", "--question", "1", "--accept", "A", *REASON)
    assert again.exit_code == 1
    assert "issue 1 is marked so already; nothing would change" in again.stderr
    correct(shop, "--form", "A", "--question", "1", "--key", "A")
    assert verdicts(shop)[f"A {ANN}"] == "must_pass_missed"
    with open_records(shop / "records") as connection:
        assert [number for _, number, _ in all_markings(connection, 1)] == [None, 1, 2]


ASK = ("1", "--form", "A", "--question", "1", "--accept", "C", *REASON)


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (("9", *ASK[1:]), "there is no issue 9 in the records"),
        (("1", "--form", "Q", *ASK[3:]), "issue 1 has no form 'Q', only A, B"),
        (("1", "--form", "A", "--question", "7", *ASK[5:]), "form A ends with question 6"),
        ((*ASK[:6], "E", *REASON), "the question has no 'E', only A, B, C"),
        ((*ASK[:6], "B", *REASON), "issue 1 is marked so already; nothing would change"),
        (
            ("1", "--form", "A", "--question", "3", "--accept", "A", *REASON),
            "a further option is accepted for a choice; name the whole key instead",
        ),
        (
            ("1", "--form", "A", "--question", "3", "--accept-number", "much", *REASON),
            "'much' is not a number that can be read",
        ),
        ((*ASK[:7], "--reason", " ", "--yes"), "say why the key is corrected"),
        ((*ASK, "--yes", "--by", "Trainer 9"), "'Trainer 9' is not in the records; add the person"),
    ],
)
def test_a_correction_that_cannot_be_meant_is_one_sentence_and_changes_nothing(
    shop: Path, arguments: tuple[str, ...], said: str
) -> None:
    sat(shop)
    assert said in refused(shop, *arguments)


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (ASK[:5] + REASON, "say one of --accept, --key, --accept-number, --leave-out"),
        ((*ASK, "--leave-out"), "say one of --accept, --key"),
        (ASK[:7], "Missing option '--reason'"),
        (("1", *ASK[3:]), "say which question: --form with the letter"),
        (("0", *ASK[1:]), "0 is not in the range"),
    ],
)
def test_a_request_that_is_not_whole_is_misuse(
    shop: Path, arguments: tuple[str, ...], said: str
) -> None:
    assert said in misuse(shop, "correct", *arguments)


def test_a_voided_issue_and_a_form_without_questions_left_are_refused(tmp_path: Path) -> None:
    one = small_form("A", questions=every_kind()[:1])
    shop = marking_project(tmp_path / "shop", one)
    out = ("1", "--form", "A", "--question", "1", "--leave-out", *REASON)
    assert refused(shop, *out) == "form A would be left without questions"
    with open_records(shop / "records") as connection:
        void(connection, 1, "the key got out", AT)
    assert refused(shop, *ASK).startswith("issue 1 was voided; its marks do not count. To use it")


def test_the_diary_tells_of_the_correction_without_names_or_reason(shop: Path) -> None:
    sat(shop)
    correct(shop, "--form", "A", "--question", "1", "--accept", "C")
    with open_records(shop / "records") as connection:
        told = lines(connection)
    assert told[-1][1:] == ("correct", "issue 1: correction 1, 2 sittings marked again")
    assert REASON[1] not in json.dumps(told)


def test_no_records_and_no_project_are_told(tmp_path: Path, shop: Path) -> None:
    assert misuse(tmp_path, "correct", *ASK).startswith("no course project here")
    for path in (shop / "records").iterdir():
        path.unlink()
    result = run(shop, "correct", *ASK)
    assert result.exit_code == 1
    assert "there are no records here yet" in result.stderr
