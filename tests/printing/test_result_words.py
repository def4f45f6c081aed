"""Luck and mastery in words: what the key says of a form."""

from generator.printing import answer_key
from generator.printing.content.result_words import luck_in_words, mastery_in_words
from tests.printing.form_for_tests import CHOICE, form_of, full_form, issued_form
from tests.printing.pdf_reading import FONTS, whole_text


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
