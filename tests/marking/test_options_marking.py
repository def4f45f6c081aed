"""Choice is all or nothing; multiple response is right ones less wrong ones, never below 0."""

from fractions import Fraction
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.marking import CannotMark, Chosen, Matched, mark_response
from tests.marking.issued import match, options

FIVE = options("multiple_response", "AC", "ABCDE")
THREE = options("choice", "B", "ABC")


# the plus/minus rule worked by hand for five options of which A and C are right
@pytest.mark.parametrize(
    ("letters", "share"),
    [("AC", "1"), ("A", "1/2"), ("ACD", "1/2"), ("AB", "0"), ("ABCDE", "0")],
)
def test_plus_minus_gives_the_shares_worked_by_hand(letters: str, share: str) -> None:
    assert mark_response(FIVE, Chosen(tuple(letters))).share == Fraction(share)


def test_ticking_by_coin_earns_seven_sixty_fourths_on_average() -> None:
    shares = [
        mark_response(FIVE, Chosen(letters)).share
        for size in range(6)
        for letters in combinations("ABCDE", size)
    ]
    assert sum(shares) / 32 == Fraction(7, 64)


def test_a_multiple_response_says_what_was_wrong_what_was_missed_and_what_held() -> None:
    mark = mark_response(FIVE, Chosen(("A", "D")))
    assert [(f.about, f.subject, f.text) for f in mark.went_wrong] == [
        ("option", "D", "about D"),
        ("missed", "C", "about C"),
    ]
    assert [(f.about, f.subject) for f in mark.notes] == [("option", "A")]


@pytest.mark.parametrize(("letters", "share"), [("A", 0), ("B", 1), ("C", 0), ("b", 1), ("BC", 0)])
def test_a_choice_is_all_or_nothing(letters: str, share: int) -> None:
    assert mark_response(THREE, Chosen(tuple(letters))).share == share


def test_a_choice_gives_the_reason_of_the_option_that_was_marked() -> None:
    assert mark_response(THREE, Chosen(("A",))).went_wrong[0].text == "about A"
    assert mark_response(THREE, Chosen(("B",))).notes[0].text == "about B"
    assert "one answer" in mark_response(THREE, Chosen(("B", "C"))).went_wrong[0].text


def test_a_letter_that_the_question_does_not_have_is_refused() -> None:
    with pytest.raises(CannotMark, match="no 'D', only A, B, C"):
        mark_response(THREE, Chosen(("D",)))


@given(st.sets(st.sampled_from("ABCDEF"), min_size=1), st.sets(st.sampled_from("ABCDEF")))
def test_the_share_lies_between_0_and_1_and_is_full_for_the_key_alone(
    right: set[str], chosen: set[str]
) -> None:
    question = options("multiple_response", "".join(right), "ABCDEF")
    mark = mark_response(question, Chosen(tuple(chosen)))
    assert 0 <= mark.share <= 1
    assert (mark.share == 1) is (chosen == right)


@given(
    st.sets(st.sampled_from("ABCDEF"), min_size=1),
    st.sets(st.sampled_from("ABCDEF")),
    st.data(),
)
def test_adding_a_right_option_never_lowers_the_share(
    right: set[str], chosen: set[str], data: st.DataObject
) -> None:
    question = options("multiple_response", "".join(right), "ABCDEF")
    more = chosen | {data.draw(st.sampled_from(sorted(right)))}
    before = mark_response(question, Chosen(tuple(chosen))).share
    assert mark_response(question, Chosen(tuple(more))).share >= before


PAIRS = match({"1": "C", "2": "A", "3": "B"}, "ABCD")


@pytest.mark.parametrize(
    ("answers", "share", "wrong"),
    [
        ({"1": "C", "2": "A", "3": "B"}, "1", []),
        ({"1": "C", "2": "B", "3": "A"}, "1/3", ["2", "3"]),
        ({"1": "C"}, "1/3", ["2", "3"]),
        ({"1": "c", "2": "A", "3": ""}, "2/3", ["3"]),
        ({"1": "D", "2": "D", "3": "D"}, "0", ["1", "2", "3"]),
    ],
)
def test_a_match_earns_the_share_of_right_pairs(
    answers: dict[str, str], share: str, wrong: list[str]
) -> None:
    mark = mark_response(PAIRS, Matched(tuple(answers.items())))
    assert mark.share == Fraction(share)
    assert [(f.subject, f.text) for f in mark.went_wrong] == [(n, f"why {n}") for n in wrong]


@pytest.mark.parametrize("answers", [{"4": "A"}, {"1": "E"}])
def test_a_pair_that_the_question_does_not_have_is_refused(answers: dict[str, str]) -> None:
    with pytest.raises(CannotMark, match="the question has no"):
        mark_response(PAIRS, Matched(tuple(answers.items())))
