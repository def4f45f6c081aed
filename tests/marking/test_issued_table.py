"""The table of an issue: what goes out comes back, and what does not match is refused whole."""

import csv
from io import StringIO
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import Place
from generator.marking import ISSUED_RULES, TABLE_RULES, Blank, Chosen, answer_table, mark_form
from generator.marking.tables import issued_rules
from generator.marking.tables.csv_cells import read_cells
from generator.marking.tables.issued_answers import (
    FormAnswers,
    file_problems,
    form_ids_of,
    read_issued,
)
from generator.marking.tables.issued_cells import answer_cell
from generator.marking.tables.issued_table import plain_form_id, shown_form_id
from generator.marking.tables.paper_identity import Known, by_halves, nearest_form
from tests.marking.issued import options
from tests.marking.small_forms import (
    ANN,
    BOB,
    RIGHT,
    RIGHT_CELLS,
    any_answer,
    every_kind,
    small_form,
)

OURS, NOBODYS = small_form("A", ANN), small_form("B", questions=[options("choice", "A", "AB")])
FORMS = {form["form_id"]: form for form in (OURS, NOBODYS)}
A, B = FORMS
KNOWN = Known(FORMS, by_halves(FORMS), (ANN, BOB, "Trainer 1"), {"V0000000": 4})
HEADER = "form,label,person,1,2,3,4,5,6"
RULES = {**ISSUED_RULES, **TABLE_RULES}


def read(text, known=KNOWN):
    """Read a table as the command does."""
    rows, problems = read_cells(text, "t.csv")
    found, more = read_issued(rows, "t.csv", known)
    return found, (*problems, *more)


def table(*rows):
    """Return a table with the header as issued."""
    return "\n".join((HEADER, *rows)) + "\n"


def test_the_table_that_goes_out_has_a_row_a_form_and_a_column_a_question():
    rows = list(csv.reader(StringIO(answer_table([OURS, NOBODYS]))))
    assert rows[0] == HEADER.split(",")
    assert rows[1:] == [[A, "A", ANN, *[""] * 6], [B, "B", "", *[""] * 6]]


def test_an_empty_table_marks_nobody():
    found, problems = read(answer_table([OURS, NOBODYS]))
    assert found.filled == ()
    assert [p.rule for p in problems] == ["no-answers"]


@given(st.data())
def test_any_answers_of_a_class_come_back_from_the_filled_table(data):
    rows = list(csv.reader(StringIO(answer_table([OURS, NOBODYS]))))
    wanted = {}
    for row, form in zip(rows[1:], (OURS, NOBODYS), strict=True):
        answers = {e["number"]: data.draw(any_answer(e["question"])) for e in form["questions"]}
        for entry in form["questions"]:
            number = entry["number"]
            row[number + 2] = answer_cell(entry["question"]["kind"], answers[number])
        if any(row[3:]):
            wanted[form["form_id"]] = answers
    written = StringIO()
    csv.writer(written, delimiter=data.draw(st.sampled_from(",;\t"))).writerows(rows)
    found, problems = read(written.getvalue())
    assert all(problem.severity == "warning" for problem in problems) or not wanted
    assert {paper.form_id: paper.responses for paper in found.filled} == wanted
    assert set(found.empty) == (set(FORMS) - set(wanted) if wanted else set())


def test_a_row_says_whose_paper_it_is_and_an_empty_row_is_not_marked():
    cells = ",".join(RIGHT_CELLS)
    found, problems = read(table(f"{A},A,,{cells}", f"{B},B,,,,,,,"))
    assert problems == ()
    (paper,) = found.filled
    assert (paper.form_id, paper.person, paper.responses) == (A, ANN, RIGHT)
    assert found.empty == (B,)
    assert mark_form(OURS, paper.responses).verdict == "passed"


def test_an_empty_cell_is_blank_but_a_written_answer_waits():
    found, _ = read(table(f"{A},A,,b,,,,,"))
    assert found.filled[0].responses == {
        1: Chosen(("B",)),
        **{number: Blank() for number in (2, 3, 4, 5)},
    }


def test_one_form_made_for_nobody_takes_several_people_by_their_codes():
    found, problems = read(table(f"{B},B,apprentice 01,A,,,,,", f"{B},B,{BOB},B,,,,,"))
    assert problems == ()
    assert [paper.person for paper in found.filled] == [ANN, BOB]


GOOD = f"{A},A,{ANN},B,A C,60,A B C D,1C 2A 3B,2 1 1"


@pytest.mark.parametrize(
    ("row", "place", "rule", "said", "hint"),
    [
        ("7KQ2M4OX,A,,B,,,,,", "3:1", "unknown-form", "no form '7KQ2M4OX'", f"mean '{A}'"),
        ("ZZZZZZZZ,A,,B,,,,,", "3:1", "unknown-form", "no form 'ZZZZZZZZ' was issued", ""),
        ("V0000000,A,,B,,,,,", "3:1", "unknown-form", "issue 4, which was voided", ""),
        (",A,,B,,,,,", "3:1", "unknown-form", "names no form", ""),
        (GOOD, "3:1", "form-twice", f"form {A} for '{ANN}' is there already, in line 2", ""),
        (f"{B},A,,A,,,,,", "3:10", "wrong-label", "has the label B, not 'A'", ""),
        (f"{A},A,{BOB},B,,,,,", "3:12", "wrong-person", f"for '{ANN}', not for '{BOB}'", ""),
        (f"{B},B,Aprentice 01,A,,,,,", "3:12", "unknown-person", "not in the", f"mean '{ANN}'"),
        (
            f"{B},B,Q,A,,,,,",
            "3:12",
            "unknown-person",
            "not in the records",
            "records people --person",
        ),
        (f"{B},B,,A,B,,,,", "3:15", "answer-beyond", "form B ends with question 1", "quotes"),
        (f"{B},B,,AB,,,,,", "3:13", "two-letters", "question 1 of form B: this", "write A+B"),
        (f"{B},B,,C,,,,,", "3:13", "answer-letters", "question 1 of form B: the question", ""),
        (f"{B},B,,A,,,,", "3:1", "ragged-row", "has 8 cells, the header has 9", ""),
        (f"{B},B,,12,5,,,,,", "3:1", "ragged-row", "has 10 cells", ""),
    ],
)
def test_a_row_that_does_not_match_is_refused_at_its_place_and_nothing_is_taken(
    row, place, rule, said, hint
):
    found, problems = read(table(GOOD, row))
    errors = [problem for problem in problems if problem.severity == "error"]
    first = next(problem for problem in errors if problem.rule == rule)
    assert str(first.place) == f"t.csv:{place}"
    assert said in first.message
    assert hint in first.hint
    assert (found.filled, found.empty) == ((), ())
    assert rule in RULES


def test_every_problem_of_every_row_is_told_at_once():
    _, problems = read(table(f"{A},B,{BOB},E,A E,60,ABX,1C 1A,9 9 9", f"{B},B,,,Z,,,,"))
    assert [(p.place.line, p.rule) for p in problems] == [
        (2, "wrong-label"),
        (2, "wrong-person"),
        (2, "answer-letters"),
        (2, "answer-letters"),
        (2, "answer-letters"),
        (2, "answer-pairs"),
        (2, "answer-marks"),
        (3, "answer-beyond"),
    ]


@pytest.mark.parametrize(
    ("header", "place", "said"),
    [
        (
            "form,label,person,1,2,Q3,4,5,6",
            "1:23",
            "column F was '3' in the table as it was issued",
        ),
        ("form,label,person,2,1,3,4,5,6", "1:19", "column D is '2' and was '1'"),
        ("id,label,person,1,2,3,4,5,6", "1:1", "column A was 'form'"),
        ("form,label,person,,,,,,", "1:1", "the columns 1, 2, 3, 4, 5, 6 are missing"),
        ("form,label,person,1,2,,,,", "1:1", "the columns 3, 4, 5, 6 are missing"),
    ],
)
def test_a_changed_header_is_refused(header, place, said):
    found, problems = read(f"{header}\n{GOOD}\n")
    assert problems[0].rule == "issued-header"
    assert str(problems[0].place) == f"t.csv:{place}"
    assert said in problems[0].message
    assert found.filled == ()


@pytest.mark.parametrize(
    ("header", "place", "column"),
    [
        ("form,label,person,1,2,3,4,5,6,Notes", "1:31", "column J 'Notes'"),
        ("form,Notes,label,person,1,2,3,4,5,6", "1:6", "column B 'Notes'"),
        ("form,label,person,1,2,2,3,4,5,6", "1:23", "column F '2'"),
        ("form,label,person,,1,2,3,4,5,6", "1:19", "column D without a name"),
    ],
)
def test_a_column_that_was_added_is_one_problem_with_what_to_do(header, place, column):
    found, problems = read(f"{header}\n{GOOD},\n")
    assert [str(p.place) for p in problems] == [f"t.csv:{place}"]
    assert problems[0].message == f"{column} is not in the table as it was issued"
    assert problems[0].hint == "delete the column"
    assert found.filled == ()


@pytest.mark.parametrize("text", ["", "\n\n", "# only a note\n"])
def test_a_file_without_a_table_is_refused(text):
    assert [p.rule for p in read(text)[1]] == ["issued-header"]


def test_an_order_with_a_step_missing_is_told_and_still_taken():
    found, problems = read(table(f"{A},A,,,,,A B C,,"))
    assert len(found.filled) == 1
    (problem,) = problems
    assert (problem.severity, problem.rule) == ("warning", "order-not-whole")
    assert str(problem.place) == "t.csv:2:16"
    assert problem.message == "question 4 of form A: D missing"


ids = st.text("0123456789ABCDEFGHJKMNPQRSTVWXYZ", min_size=8, max_size=8)


@given(ids)
def test_an_id_comes_back_as_it_was_and_no_spreadsheet_takes_it_for_a_number(form_id):
    shown = shown_form_id(form_id)
    assert plain_form_id(shown) == form_id
    assert plain_form_id(f" {form_id[:4].lower()} {form_id[4:].lower()} ") == form_id
    with pytest.raises(ValueError, match="could not convert"):
        float(shown)


@pytest.mark.parametrize(
    ("form_id", "shown"),
    [("12345678", "1234-5678"), ("12E34567", "12E3-4567"), ("1MAR2026", "1MAR-2026")],
)
def test_an_id_that_a_spreadsheet_would_change_is_written_in_two_parts(form_id, shown):
    assert shown_form_id(form_id) == shown


def test_letters_that_no_id_has_are_read_as_the_figures_they_look_like():
    assert plain_form_id("7kq2-mOIl") == "7KQ2M011"


def test_ids_are_read_from_the_first_column():
    rows, _ = read_cells(table(GOOD, f"{B.lower()},B,,A,,,,,"), "t.csv")
    assert form_ids_of(rows) == (A, B)


def test_the_nearest_form_shares_a_half_and_most_signs_of_the_other():
    halves = by_halves([A, B, "ZZZZM4ZZ"])
    assert nearest_form("7KQ2M4XX", halves) == f"did you mean '{A}'?"
    assert nearest_form("7KQ2XX0B", halves) == f"did you mean '{B}'?"
    assert nearest_form("7KQXXXXX", halves) == ""
    assert nearest_form("", halves) == ""


@pytest.mark.parametrize(
    ("answers", "rule", "said"),
    [
        (FormAnswers("NONE0000", "", {}, Place("p.json", 1, 1)), "unknown-form", "no form"),
        (FormAnswers(A, BOB, {}, Place("p.json", 1, 1)), "wrong-person", "was made for"),
        (
            FormAnswers(A, "", {1: Chosen(("E",))}, Place("p.json", 1, 1)),
            "answers-file",
            "question 1 of form A: the question has no 'E'",
        ),
        (
            FormAnswers(A, "", {3: Chosen(("A",))}, Place("p.json", 1, 1)),
            "answers-file",
            "takes a written number, not marked options",
        ),
        (
            FormAnswers(A, "", {7: Blank()}, Place("p.json", 1, 1)),
            "answers-file",
            "form A has no question 7",
        ),
    ],
)
def test_a_saved_file_is_held_to_its_form(answers, rule, said):
    (problem,) = file_problems(answers, KNOWN)
    assert problem.rule == rule
    assert said in problem.message
    assert rule in RULES


def test_the_answers_of_a_saved_file_pass_where_they_are_those_of_the_form():
    assert list(file_problems(FormAnswers(A, ANN, RIGHT, Place("p.json", 1, 1)), KNOWN)) == []
    assert len(every_kind()) == len(RIGHT)


def test_every_page_is_about_something_that_is_refused():
    folder = Path(issued_rules.__file__).parents[2]
    sources = [*folder.glob("marking/tables/*.py"), *folder.glob("command_line/mark*.py")]
    said = "".join(p.read_text("utf-8") for p in sources if p.name != "issued_rules.py")
    assert [rule for rule in ISSUED_RULES if f'"{rule}"' not in said] == []
