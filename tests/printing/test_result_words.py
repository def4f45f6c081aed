"""Luck and mastery in words: what the key says of a form."""

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.printing import answer_key
from generator.printing.content.result_words import luck_in_words, mastery_in_words, odds_in_words
from tests.printing.form_for_tests import CHOICE, form_of, full_form, issued_form
from tests.printing.pdf_reading import FONTS, whole_text


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
def test_a_chance_is_told_as_odds_of_two_figures(chance, words):
    assert odds_in_words(chance) == words


@given(st.fractions(Fraction(1, 10**6), Fraction(2, 3)))
def test_odds_are_never_off_by_more_than_their_rounding(chance):
    told = re.fullmatch(r"about 1 time in ([\d,]+)", odds_in_words(float(chance)))
    assert told
    assert int(told[1].replace(",", "")) == pytest.approx(float(1 / chance), rel=0.34)


def test_a_form_that_luck_cannot_pass_says_why():
    assert "cannot pass: a number or a written answer" in luck_in_words({"guesser_passes": 0.0})
    assert luck_in_words({}) == ""


def test_mastery_names_the_score_from_which_it_is_shown():
    form = form_of(CHOICE, pass_marks=16, pass_percent=80, mastery_marks=19)
    assert mastery_in_words(form).replace("\u00a0", " ") == (
        "From 19 marks on, the paper shows that the person knows 80 % of the subject (lower bound "
        "at 95 %). A pass below that only suggests it."
    )


def test_a_pass_mark_that_shows_mastery_leaves_nothing_to_suggest():
    form = form_of(CHOICE, pass_marks=19, mastery_marks=19)
    assert "suggests" not in mastery_in_words(form)


def test_a_paper_too_short_for_mastery_says_so():
    text = mastery_in_words(form_of(CHOICE, mastery_marks=None))
    assert "the paper is too short to show it" in text
    assert mastery_in_words(form_of(CHOICE)) == ""


def test_the_key_states_gate_luck_and_mastery_once():
    text = whole_text(answer_key(issued_form(), paper="a4", fonts=FONTS))
    for words in (
        "Questions 2, 7 and 12 must be right.",
        "Somebody who guesses every answer passes about 1 time in 4,200.",
        "From 21 marks on, the paper shows",
    ):
        assert text.count(words) == 1
    for number in (2, 7, 12):
        assert f"must {number} " in text
        assert f"Question {number} MUST BE RIGHT" in text
    plain = whole_text(answer_key(full_form(), paper="a4", fonts=FONTS))
    assert "guesses" not in plain
    assert "MUST BE RIGHT" not in plain
