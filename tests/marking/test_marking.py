"""One door for every kind; blank and illegible stay apart from wrong."""

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
    Matched,
    Ordered,
    Response,
    Typed,
    mark_as_plain,
    mark_response,
    response_as_plain,
    response_from_plain,
)
from tests.marking.issued import Plain, match, numeric, options, order, question, written

EVERY_KIND = (
    (numeric("1", "1", "1"), Typed(" ")),
    (options("choice", "A", "ABC"), Chosen(())),
    (options("multiple_response", "AB", "ABC"), Chosen(())),
    (order("ABC", ["AB"]), Ordered(())),
    (match({"1": "A"}, "AB"), Matched((("1", ""),))),
    (written(1), Blank()),
)


@pytest.mark.parametrize(("asked", "empty"), EVERY_KIND)
def test_no_answer_is_blank_and_an_unreadable_one_illegible(asked: Plain, empty: Response) -> None:
    for response in (empty, Blank()):
        mark = mark_response(asked, response)
        assert mark.share == 0
        assert mark.status == "blank"
        assert mark.went_wrong == ()
    assert mark_response(asked, Illegible()).status == "illegible"


@pytest.mark.parametrize(
    ("marks", "share", "status"),
    [((2, 1), "1", "right"), ((1, 1), "2/3", "part"), ((0, 0), "0", "wrong")],
)
def test_marking_points_add_up(marks: tuple[int, ...], share: str, status: str) -> None:
    mark = mark_response(written(2, 1), Awarded(marks))
    assert (mark.share, mark.status) == (Fraction(share), status)
    short = [
        str(n) for n, (got, most) in enumerate(zip(marks, (2, 1), strict=True), 1) if got < most
    ]
    assert [f.subject for f in mark.went_wrong] == short


@pytest.mark.parametrize(
    ("marks", "says"),
    [((1,), "2 marking points"), ((3, 0), "takes 0 to 2 marks, not 3"), ((0, -1), "not -1")],
)
def test_marks_that_the_points_do_not_have_are_refused(marks: tuple[int, ...], says: str) -> None:
    with pytest.raises(CannotMark, match=says):
        mark_response(written(2, 1), Awarded(marks))


def test_an_answer_of_another_form_is_refused_in_words() -> None:
    with pytest.raises(CannotMark, match="takes a written number, not marked options"):
        mark_response(numeric("1", "1", "1"), Chosen(("A",)))
    with pytest.raises(CannotMark, match="takes marks for marking points"):
        mark_response(written(1), Typed("some prose"))
    with pytest.raises(CannotMark, match="kind 'drawing'"):
        mark_response(question("drawing", {}), Typed("x"))


LETTERS = st.lists(st.sampled_from("ABCDEFG"), max_size=7).map(tuple)
RESPONSES = st.one_of(
    LETTERS.map(Chosen),
    LETTERS.map(Ordered),
    st.text(max_size=20).map(Typed),
    st.lists(st.integers(0, 5), max_size=5).map(lambda marks: Awarded(tuple(marks))),
    st.dictionaries(st.sampled_from("123"), st.sampled_from("ABC")).map(
        lambda answers: Matched(tuple(answers.items()))
    ),
    st.just(Blank()),
    st.just(Illegible()),
)


@given(RESPONSES)
def test_an_answer_comes_back_from_its_json_form(response: Response) -> None:
    assert response_from_plain(response_as_plain(response)) == response


@pytest.mark.parametrize(
    "plain",
    [
        {},
        {"form": "sung"},
        {"form": "chosen"},
        {"form": "chosen", "letters": [1]},
        {"form": "awarded", "marks": ["1"]},
        {"form": "awarded", "marks": [True]},
        {"form": "matched", "answers": ["A"]},
        {"form": "typed", "text": 12},
        {"form": ["typed"]},
    ],
)
def test_json_that_is_no_answer_is_refused(plain: Plain) -> None:
    with pytest.raises(CannotMark, match="not an answer in a known form"):
        response_from_plain(plain)


def test_a_mark_is_written_with_an_exact_share() -> None:
    mark = mark_response(options("multiple_response", "ABC", "ABCD"), Chosen(("A",)))
    plain = mark_as_plain(mark)
    assert (plain["share"], plain["status"]) == ("1/3", "part")
    assert plain["went_wrong"][0] == {"about": "missed", "place": "B", "text": "about B"}
