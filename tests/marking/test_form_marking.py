"""A form is marked exactly: must-pass questions first, then what waits, then the marks."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.marking import (
    Awarded,
    Blank,
    CannotMark,
    Chosen,
    Illegible,
    Ordered,
    Typed,
    mark_form,
    mark_response,
)
from generator.marking.answers.mark_form import LEFT_OUT
from tests.marking.issued import options
from tests.marking.small_forms import RIGHT, any_answer, every_kind, small_form

FORM = small_form(must_pass=(1,))
WRONG = {
    1: Chosen(("A",)),
    2: Chosen(("B",)),
    3: Typed("30"),
    4: Ordered(tuple("DCBA")),
    6: Awarded((0, 0, 0)),
}


@given(st.data())
def test_points_are_the_exact_sum_and_the_verdict_follows_the_rule(data):
    gate = data.draw(st.sets(st.integers(1, 6)))
    form = small_form(must_pass=sorted(gate))
    entries = form["questions"]
    answers = {e["number"]: data.draw(any_answer(e["question"])) for e in entries}
    marked = mark_form(form, answers)
    one_by_one = {e["number"]: mark_response(e["question"], answers[e["number"]]) for e in entries}
    assert marked.points == sum(one_by_one[e["number"]].share * e["marks"] for e in entries)
    assert marked.most == form["marks"] == 14
    unread = {n for n, mark in one_by_one.items() if mark.status == "illegible"}
    missed = {n for n in gate - unread if one_by_one[n].share < 1}
    assert set(marked.gate_missed) == missed
    assert set(marked.waiting("illegible")) == unread
    if missed:
        assert marked.verdict == "must_pass_missed"
    elif unread:
        assert marked.verdict == "unfinished"
    else:
        assert marked.verdict == ("passed" if marked.points >= form["pass_marks"] else "not_passed")


@pytest.mark.parametrize(
    ("changes", "verdict", "missed"),
    [
        ({}, "passed", ()),
        ({1: WRONG[1]}, "must_pass_missed", (1,)),
        ({1: Blank()}, "must_pass_missed", (1,)),
        ({1: Illegible()}, "unfinished", ()),
        ({1: WRONG[1], 2: Illegible()}, "must_pass_missed", (1,)),
        ({3: Typed("sixty")}, "unfinished", ()),
        ({3: WRONG[3], 4: WRONG[4]}, "not_passed", ()),
        (WRONG, "must_pass_missed", (1,)),
    ],
)
def test_a_must_pass_question_decides_before_anything_else(changes, verdict, missed):
    marked = mark_form(FORM, RIGHT | changes)
    assert (marked.verdict, marked.gate_missed) == (verdict, missed)


def test_part_marks_do_not_open_the_gate():
    form = small_form(must_pass=(4,))
    marked = mark_form(form, RIGHT | {4: Ordered(tuple("BACD"))})
    assert 0 < marked.questions[3].mark.share < 1
    # 2 x 5/6 of the order and all the rest is well above 80 percent
    assert marked.points == 14 - 2 + Fraction(5, 3)
    assert marked.verdict == "must_pass_missed"


def test_a_written_answer_without_marks_waits_and_a_blank_one_does_not():
    waiting = mark_form(FORM, {n: r for n, r in RIGHT.items() if n != 6})
    assert (waiting.verdict, waiting.waiting("written"), waiting.waiting("illegible")) == (
        "unfinished",
        (6,),
        (),
    )
    blank = mark_form(FORM, RIGHT | {6: Blank()})
    assert (blank.verdict, blank.points) == ("not_passed", 10)
    assert blank.questions[5].mark.status == "blank"


def test_a_question_that_was_not_answered_is_blank_not_wrong():
    marked = mark_form(FORM, {1: RIGHT[1], 6: RIGHT[6]})
    assert [entry.mark.status for entry in marked.questions[1:5]] == ["blank"] * 4


@pytest.mark.parametrize(("wrong", "verdict"), [(4, "passed"), (5, "not_passed")])
def test_exactly_the_pass_marks_pass(wrong, verdict):
    form = small_form(questions=[options("choice", "A", "AB")] * 20)
    assert form["pass_marks"] == 16
    answers = {n: Chosen(("B" if n <= wrong else "A",)) for n in range(1, 21)}
    assert mark_form(form, answers).verdict == verdict


def without(form, *numbers):
    """Return a form with questions left out."""
    entries = [e | ({LEFT_OUT: True} if e["number"] in numbers else {}) for e in form["questions"]]
    return form | {"questions": entries}


def test_what_is_left_out_counts_neither_in_the_points_nor_in_most_nor_as_must_pass():
    marked = mark_form(without(FORM, 1, 5), RIGHT | {1: Chosen(("A",)), 5: Illegible()})
    assert (marked.points, marked.most) == (10, 10)
    assert (marked.pass_marks, marked.verdict, marked.gate_missed) == (8, "passed", ())
    assert marked.waiting("illegible") == ()


def test_answers_to_a_question_that_is_not_there_are_refused():
    with pytest.raises(CannotMark, match="form A has no question 7"):
        mark_form(FORM, RIGHT | {7: Blank()})
    with pytest.raises(CannotMark, match="takes a written number"):
        mark_form(FORM, {3: Chosen(("A",))})


def test_no_answers_at_all_is_no_pass():
    marked = mark_form(small_form(questions=every_kind()[:5]), {})
    assert (marked.points, marked.verdict) == (0, "not_passed")
