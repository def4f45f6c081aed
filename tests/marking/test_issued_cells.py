"""A cell is read as one answer, and every answer can be written as a cell."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.marking import (
    ISSUED_RULES,
    Awarded,
    Blank,
    Chosen,
    Illegible,
    Matched,
    Ordered,
    Typed,
    mark_response,
)
from generator.marking.tables.issued_cells import (
    LONGEST_CELL,
    CellRefused,
    answer_cell,
    doubts_about,
    read_answer,
)
from tests.marking.small_forms import RIGHT, RIGHT_CELLS, any_answer, every_kind

KINDS = {question["kind"]: question for question in every_kind()}


@given(st.data())
def test_any_answer_comes_back_from_its_cell(data):
    question = data.draw(st.sampled_from(every_kind()))
    answer = data.draw(any_answer(question))
    cell = answer_cell(question["kind"], answer)
    assert read_answer(question, cell) == answer


@pytest.mark.parametrize("number", RIGHT)
def test_the_cells_of_the_help_are_fully_right(number):
    question = every_kind()[number - 1]
    cell = RIGHT_CELLS[number - 1]
    assert read_answer(question, cell) == RIGHT[number]
    assert answer_cell(question["kind"], RIGHT[number]) == cell
    assert mark_response(question, RIGHT[number]).share == 1


@pytest.mark.parametrize(
    ("kind", "cell", "answer"),
    [
        ("choice", "b", Chosen(("B",))),
        ("choice", " B. ", Chosen(("B",))),
        ("choice", "\uff22", Chosen(("B",))),
        ("choice", "a + c", Chosen(("A", "C"))),
        ("multiple_response", "ac", Chosen(("A", "C"))),
        ("multiple_response", "A, C", Chosen(("A", "C"))),
        ("multiple_response", "A;C", Chosen(("A", "C"))),
        ("numeric", "12,5 µm", Typed("12,5 µm")),
        ("numeric", "  60  ", Typed("60")),
        ("order", "cabd", Ordered(("C", "A", "B", "D"))),
        ("order", "C > A > B > D", Ordered(("C", "A", "B", "D"))),
        ("order", "C-A-B-D", Ordered(("C", "A", "B", "D"))),
        ("match", "1c2a3b", Matched((("1", "C"), ("2", "A"), ("3", "B")))),
        ("match", "1-C, 3=B", Matched((("1", "C"), ("3", "B")))),
        ("written", "2 0 1", Awarded((2, 0, 1))),
        ("written", "2,0,1", Awarded((2, 0, 1))),
        ("written", "2+0+1", Awarded((2, 0, 1))),
        ("written", "", None),
        ("written", "Blank", Blank()),
        ("written", "?", Illegible()),
        ("choice", "", Blank()),
        ("choice", "BLANK", Blank()),
        ("numeric", " ? ", Illegible()),
    ],
)
def test_a_cell_may_be_typed_in_several_ways(kind, cell, answer):
    assert read_answer(KINDS[kind], cell) == answer


@pytest.mark.parametrize(
    ("kind", "cell", "rule", "said"),
    [
        ("choice", "AB", "two-letters", "takes one letter, not 'AB'"),
        ("choice", "A B", "two-letters", "takes one letter"),
        ("choice", "E", "answer-letters", "has no 'E', only A, B, C"),
        ("choice", "2", "answer-letters", "'2' is not made of letters"),
        # a Cyrillic letter looks like an A and is none
        ("choice", "\u0410", "answer-letters", "is not made of letters"),
        ("multiple_response", "A C E", "answer-letters", "has no 'E'"),
        ("multiple_response", "A A", "answer-letters", "'A' is there more than once"),
        ("order", "A B X", "answer-letters", "has no 'X'"),
        ("order", "1 2 3", "answer-letters", "is not made of letters"),
        ("match", "C A B", "answer-pairs", "is not pairs"),
        ("match", "1C 1A", "answer-pairs", "number 1 is there more than once"),
        ("match", "4A", "answer-letters", "has no '4', only 1, 2, 3"),
        ("match", "1E", "answer-letters", "has no 'E'"),
        ("written", "2", "answer-marks", "there are 3 marking points, and marks for 1"),
        ("written", "3 0 0", "answer-marks", "point 1 takes 0 to 2 marks, not 3"),
        ("written", "2 0 x", "answer-marks", "is not marks for the marking points"),
        ("written", "2-0-1", "answer-marks", "is not marks for the marking points"),
        ("numeric", "2-Jan", "spreadsheet-date", "'2-Jan' is a date that the spreadsheet made"),
        ("numeric", "2026-01-02", "spreadsheet-date", "is a date"),
        ("numeric", "1/2/2026", "spreadsheet-date", "is a date"),
        ("numeric", "9" * (LONGEST_CELL + 1), "answer-length", "at most 200 characters"),
    ],
)
def test_a_cell_that_is_no_answer_is_refused_by_a_rule_that_has_a_page(kind, cell, rule, said):
    with pytest.raises(CellRefused, match=said) as refused:
        read_answer(KINDS[kind], cell)
    assert refused.value.rule == rule
    assert rule in ISSUED_RULES


@pytest.mark.parametrize(
    ("cell", "hint"),
    [
        ("A or B", "two options marked, write A+B"),
        ("AB", "two options marked, write A+B"),
        ("bb", "write B"),
        ("none", "leave the cell empty where nothing was answered"),
        ("n/a", "leave the cell empty where nothing was answered"),
        ("ABC", "write the one letter that is marked on the paper"),
        ("bad", "write the one letter that is marked on the paper"),
        ("2", "write the letters that are marked on the paper"),
    ],
)
def test_a_hint_never_makes_an_answer_out_of_a_word(cell, hint):
    with pytest.raises(CellRefused) as refused:
        read_answer(KINDS["choice"], cell)
    assert hint in refused.value.hint


@given(st.sampled_from(sorted(KINDS)), st.text(max_size=30))
def test_any_text_is_read_or_refused_and_what_is_read_can_be_marked(kind, text):
    try:
        answer = read_answer(KINDS[kind], text)
    except CellRefused as refused:
        assert refused.rule in ISSUED_RULES
        return
    if answer is not None:
        assert 0 <= mark_response(KINDS[kind], answer).share <= 1


@pytest.mark.parametrize(
    ("cell", "doubts"),
    [
        ("A B C D", ""),
        ("A B C", "D missing"),
        ("A B B C", "D missing and B more than once"),
    ],
)
def test_an_order_that_is_not_whole_is_told_and_marked_as_it_stands(cell, doubts):
    answer = read_answer(KINDS["order"], cell)
    assert doubts_about(KINDS["order"], answer) == doubts
    assert (mark_response(KINDS["order"], answer).share == 1) == (doubts == "")
