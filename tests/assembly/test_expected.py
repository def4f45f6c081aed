"""Expected shares: the prior alone, then more and more what people answered."""

from fractions import Fraction
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.assembly.forms.expected import PRIOR_ANSWERS, Facility, expected_share, prior_share
from generator.questions.question import MINUTES

LEVELS = ("recall", "apply", "diagnose")


def test_every_kind_and_level_has_a_prior_and_harder_levels_expect_less():
    for kind in MINUTES:
        shares = [prior_share(kind, level) for level in LEVELS]
        assert all(0 < share < 1 for share in shares)
        assert shares == sorted(shares, reverse=True)


@pytest.mark.parametrize(("kind", "level"), list(product(MINUTES, LEVELS)))
def test_without_answers_the_prior_stands(kind, level):
    assert expected_share(kind, level, None) == prior_share(kind, level)


@given(st.fractions(0, 1), st.integers(0, 500))
def test_answers_pull_the_share_from_the_prior_towards_what_was_seen(mean, answers):
    prior = prior_share("choice", "apply")
    share = expected_share("choice", "apply", Facility(mean, answers))
    assert min(prior, mean) <= share <= max(prior, mean)
    # the gap to what was seen shrinks as the answers outweigh the prior
    assert abs(share - mean) == abs(prior - mean) * PRIOR_ANSWERS / (PRIOR_ANSWERS + answers)


def test_ten_answers_weigh_as_much_as_the_prior():
    share = expected_share("choice", "apply", Facility(Fraction(1, 2), 10))
    assert share == (Fraction(7, 10) + Fraction(1, 2)) / 2
