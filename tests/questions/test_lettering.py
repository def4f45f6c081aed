"""Options and matches get letters in a drawn order, and numbers stand in their own order."""

from collections import Counter

import pytest

from generator.questions.drawing.lettering import item_options, lettered, matched, unlike
from generator.questions.drawing.seeded_random import SeededRandom
from tests.questions.small_bank import FIRST_JOB, PAPERS, bank_of, items

WORDS = [("Degrease", True, "Wax."), ("Sand", False, "No."), ("Prime", False, "No.")]


@pytest.fixture(scope="module")
def bank(tmp_path_factory):
    return bank_of(
        tmp_path_factory.mktemp("bank"),
        {
            "items/cleaning/wash.yml": items(first=FIRST_JOB),
            "items/filler/shape.yml": items(papers=PAPERS),
        },
    )


def texts(key):
    return [option.text for option in key.options]


def test_letters_run_from_a_and_each_option_keeps_its_reason():
    key = lettered(WORDS, SeededRandom("letters"))
    assert [option.letter for option in key.options] == ["A", "B", "C"]
    assert {(o.text, o.right, o.feedback) for o in key.options} == set(WORDS)


def test_the_right_option_has_no_favourite_letter():
    seen = Counter(
        next(o.letter for o in lettered(WORDS, SeededRandom("spread", str(n))).options if o.right)
        for n in range(900)
    )
    # upper 0.1 % point of chi-square with 2 degrees: NIST/SEMATECH e-Handbook, 1.3.6.7.4
    assert sum((seen[letter] - 300) ** 2 / 300 for letter in "ABC") < 13.816


@pytest.mark.parametrize(
    ("given", "shown"),
    [
        (["P320", "P80", "P1200"], ["P80", "P320", "P1200"]),
        (["10 min", "2 min", "7.5 min"], ["2 min", "7.5 min", "10 min"]),
        (["-5 °C", "12 °C", "3 °C"], ["-5 °C", "3 °C", "12 °C"]),
        (
            ["Within 3 min", "Within 10 s", "Within 1 min"],
            ["Within 10 s", "Within 1 min", "Within 3 min"],
        ),
        (["2 to 3 hours", "10 to 15 minutes"], ["10 to 15 minutes", "2 to 3 hours"]),
        (
            ["More than 125 µm", "Between 75 and 100 µm", "Less than 75 µm"],
            ["Less than 75 µm", "Between 75 and 100 µm", "More than 125 µm"],
        ),
        (
            ["About five inches", "About one inch", "About a tenth of an inch"],
            ["About a tenth of an inch", "About one inch", "About five inches"],
        ),
        (["About nine tenths", "About a half"], ["About a half", "About nine tenths"]),
        (
            ["08:00 the next day", "12:00 the same day"],
            ["12:00 the same day", "08:00 the next day"],
        ),
        (["At 10:58", "At 10:44"], ["At 10:44", "At 10:58"]),
    ],
)
def test_numbers_stand_in_rising_order_whatever_the_draw(given, shown):
    for number in range(5):
        answers = [(text, False, "No.") for text in given]
        assert texts(lettered(answers, SeededRandom(str(number)))) == shown


def test_one_option_in_words_sends_all_through_the_draw():
    answers = [(text, False, "No.") for text in ("2 min", "10 min", "Overnight")]
    assert len({tuple(texts(lettered(answers, SeededRandom(str(n))))) for n in range(60)}) == 6


def test_options_with_one_leading_number_do_not_keep_the_author_s_order():
    answers = [("1 coat wet", True, "Yes."), ("1 coat dry", False, "No.")]
    first = {texts(lettered(answers, SeededRandom(str(n))))[0] for n in range(30)}
    assert first == {"1 coat wet", "1 coat dry"}


def test_a_written_item_gives_its_own_options(bank):
    key = item_options(bank.items["cleaning/wash/first"].record, SeededRandom("own"))
    assert sorted(texts(key)) == ["Degrease it", "Mask it", "Prime it", "Sand it"]
    assert [o.text for o in key.options if o.right] == ["Degrease it"]


def test_a_match_joins_every_left_text_to_its_own_right_text(bank):
    record = bank.items["filler/shape/papers"].record
    for label in "abcdef":
        key = matched(record, SeededRandom(label))
        left, right = dict(key.left), dict(key.right)
        joined = {left[number]: right[letter] for number, letter in key.answers}
        said = {left[number]: says for number, says in key.feedback}
        assert joined == {pair.left: pair.right for pair in record.pairs}
        assert said == {pair.left: pair.feedback for pair in record.pairs}
        assert list(left) == ["1", "2", "3"]
        assert list(right) == ["A", "B", "C", "D"]
        assert "Cut steel" in right.values()


def test_both_sides_of_a_match_are_drawn(bank):
    record = bank.items["filler/shape/papers"].record
    keys = [matched(record, SeededRandom(str(n))) for n in range(200)]
    assert len({key.left for key in keys}) == 6
    assert len({key.right for key in keys}) == 24


def test_texts_that_read_the_same_are_taken_once():
    candidates = [("Sand it.", "a"), ("sand  IT", "b"), ("Prime it", "c"), ("Mask it", "d")]
    assert unlike(candidates, ["mask it!"]) == [("Sand it.", "a"), ("Prime it", "c")]
