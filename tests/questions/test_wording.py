"""Small words fit the numbers that are drawn behind them."""

import pytest

from generator.questions.wording import with_articles


@pytest.mark.parametrize(
    ("drawn", "read"),
    [
        ("a 8 in disc", "an 8 in disc"),
        ("A 80 L tank and a 8.5 mm hole", "An 80 L tank and an 8.5 mm hole"),
        ("a 11 h shift", "an 11 h shift"),
        ("a 18,000 rpm tool", "an 18,000 rpm tool"),
        ("a 11000 rpm tool", "an 11000 rpm tool"),
        ("an 5 in disc", "a 5 in disc"),
        ("a 110 V lamp", "a 110 V lamp"),
        ("a 1.8 mm tip", "a 1.8 mm tip"),
        ("a 180 grit disc", "a 180 grit disc"),
        ("a panel of 8 parts", "a panel of 8 parts"),
        ("a sheet", "a sheet"),
        ("option A 8", "option A 8"),
    ],
)
def test_the_article_fits_the_number_as_it_is_read_aloud(drawn, read):
    assert with_articles(drawn) == read
