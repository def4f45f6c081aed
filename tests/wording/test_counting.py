"""Counts, lists, shares and odds read as a person would say them."""

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.wording import counted, listed, odds, percent, questions_named, rough_odds


def test_one_thing_and_several_things() -> None:
    assert [counted(n, "mark") for n in (0, 1, 2)] == ["0 marks", "1 mark", "2 marks"]
    assert counted(2, "order is", "orders are") == "2 orders are"


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ([], ""),
        (["one"], "one"),
        (["one", "two"], "one and two"),
        (["a", "b", "c"], "a, b and c"),
    ],
)
def test_words_are_listed_as_a_sentence_lists_them(words: list[str], told: str) -> None:
    assert listed(words) == told


def test_questions_are_named_by_their_numbers() -> None:
    assert questions_named([3]) == "question 3"
    assert questions_named([3, 7]) == "questions 3, 7"


def test_a_percent_is_whole_and_half_up() -> None:
    assert percent(Fraction(1, 200)) == "1\u00a0%"
    assert percent(Fraction(149, 200)) == "75\u00a0%"


def test_exact_odds_are_rounded_to_a_whole_number() -> None:
    assert odds(Fraction(1, 7776)) == "1 time in 7,776"
    assert odds(Fraction(2, 5)) == "1 time in 3"


@pytest.mark.parametrize(
    ("chance", "words"),
    [
        (1.0, "nearly every time"),
        (0.5, "about 1 time in 2"),
        (0.1, "about 1 time in 10"),
        # 20 questions of four options, cut 12: 9.3539e-4 (binomial tail)
        (9.3539e-4, "about 1 time in 1,100"),
        # the same with cut 14: 2.9512e-5
        (2.9512e-5, "about 1 time in 34,000"),
        (0.00024, "about 1 time in 4,200"),
        (1e-6, "about 1 time in 1,000,000"),
        (9.9e-7, "less than 1 time in 1,000,000"),
        (5e-324, "less than 1 time in 1,000,000"),
    ],
)
def test_a_chance_is_told_as_odds_of_two_digits(chance: float, words: str) -> None:
    assert rough_odds(chance) == words


@given(st.fractions(Fraction(1, 10**6), Fraction(2, 3)))
def test_odds_are_never_off_by_more_than_their_rounding(chance: Fraction) -> None:
    told = re.fullmatch(r"about 1 time in ([\d,]+)", rough_odds(float(chance)))
    assert told
    assert int(told[1].replace(",", "")) == pytest.approx(float(1 / chance), rel=0.34)
