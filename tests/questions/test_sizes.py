"""Sizes that options state: plain numbers, numbers in words, limits, times on a clock."""

from fractions import Fraction

import pytest

from generator.questions.drawing.sizes import stated_size


@pytest.mark.parametrize(
    ("text", "size"),
    [
        ("P320", 320),
        ("\u22125 °C", -5),
        ("98 %", 98),
        ("65 % of the tin is left after the job", 65),
        ("Within 10 s", 10),
        ("1 to 2 minutes", 60),
        ("2 hours", 7200),
        ("Nine tenths", Fraction(9, 10)),
        ("About a quarter", Fraction(1, 4)),
        ("At 10:30", 37800),
        ("08:00 the next day", 28800 + 86400),
    ],
)
def test_a_size_is_read_as_a_reader_takes_it(text, size):
    assert stated_size(text) == size


def test_a_limit_stands_beside_its_number():
    less, between, more = map(stated_size, ("Less than 75", "Between 75 and 100", "More than 75"))
    assert less < between < more
    assert between == 75


@pytest.mark.parametrize(
    "text",
    [
        "",
        "Overnight",
        "Wait 10 minutes, then sand",
        "One wets a small area and the other dries it",
        "The one already on the sander",
        "Two even coats of 90 µm, with flash between",
    ],
)
def test_a_sentence_states_no_size(text):
    assert stated_size(text) is None
