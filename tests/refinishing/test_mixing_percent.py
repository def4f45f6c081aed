"""Thinner as a percentage; arithmetic, and a published note for the mixed form."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.mixing import split_total
from generator.refinishing.mixing_percent import (
    parts_to_percent,
    parts_to_reduction,
    percent_reduction,
    percent_reduction_of_mix,
)

PARTS = st.tuples(*[st.integers(1, 12).map(Fraction)] * 3)


@pytest.mark.parametrize(
    ("base", "percent", "thinner", "total", "share", "per_part"),
    [
        (1000, 25, "250", "1250", "20.0", "0.25"),
        (480, 50, "240", "720", "33.3", "0.5"),
        (400, 150, "600", "1000", "60.0", "1.5"),
        (620, 20, "124", "744", "16.7", "0.2"),
    ],
)
def test_percent_reduction_is_of_the_base(base, percent, thinner, total, share, per_part):
    # arithmetic
    found = percent_reduction(Fraction(base), Fraction(percent))
    assert (found.thinner, found.total) == (Fraction(thinner), Fraction(total))
    assert abs(found.share_of_mix - Fraction(share)) <= Fraction("0.05")
    assert found.parts_per_part == Fraction(per_part)


def test_reduction_of_the_mix_counts_the_hardener_too():
    # note on the 4:1:10 % mixing notation
    of_mix = percent_reduction_of_mix(Fraction(480), Fraction(120), Fraction(10))
    assert of_mix == (60, 660)
    assert percent_reduction(Fraction(480), Fraction(10)).thinner == 48


@pytest.mark.parametrize(
    ("ratio", "expected"),
    [((4, 1, 1), ("66.7", "16.7", "16.7")), ((2, 1), ("66.7", "33.3", "0"))],
)
def test_parts_become_shares_of_the_whole_mix(ratio, expected):
    # arithmetic
    found = parts_to_percent(tuple(Fraction(part) for part in ratio))
    assert all(
        abs(a - Fraction(b)) <= Fraction("0.05") for a, b in zip(found, expected, strict=True)
    )


def test_three_to_one_is_a_third_of_the_base_and_a_quarter_of_the_mix():
    # arithmetic
    assert parts_to_reduction(Fraction(3), Fraction(1)) == (Fraction(100, 3), 25)


@pytest.mark.parametrize(
    ("base_parts", "thinner_parts", "percent"),
    [(4, 1, 25), (2, 1, 50), (1, 1, 100), (2, 3, 150)],
)
def test_the_common_equivalents_agree(base_parts, thinner_parts, percent):
    # arithmetic
    assert parts_to_reduction(Fraction(base_parts), Fraction(thinner_parts)).reduction == percent


@given(PARTS)
def test_shares_add_up_to_a_hundred_and_match_the_split_of_a_hundred(ratio):
    shares = parts_to_percent(ratio)
    assert sum(shares) == 100
    assert shares == tuple(split_total(Fraction(100), ratio))


@given(st.integers(1, 20), st.integers(0, 20))
def test_reduction_by_parts_and_by_percent_pour_the_same(base_parts, thinner_parts):
    shares = parts_to_reduction(Fraction(base_parts), Fraction(thinner_parts))
    poured = percent_reduction(Fraction(base_parts), shares.reduction)
    assert poured.thinner == thinner_parts
    assert poured.share_of_mix == shares.share_of_mix


@given(st.integers(1, 2000), st.integers(1, 2000), st.integers(1, 50))
def test_the_two_meanings_of_percent_part_company_as_soon_as_there_is_hardener(b, h, percent):
    of_mix = percent_reduction_of_mix(Fraction(b), Fraction(h), Fraction(percent)).thinner
    assert of_mix > percent_reduction(Fraction(b), Fraction(percent)).thinner


@pytest.mark.parametrize(("base", "percent"), [(0, 10), (-1, 10), (100, -1)])
def test_impossible_reductions_are_refused(base, percent):
    with pytest.raises(OutsideValidity):
        percent_reduction(Fraction(base), Fraction(percent))
