"""Over-poured mixes; no published worked example was found, so arithmetic and properties."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing import CATALOGUE
from generator.refinishing.mixing_overpour import overpour_base, overpour_hardener

AMOUNTS = st.integers(1, 2000).map(Fraction)


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


def test_too_much_base_asks_for_more_of_the_rest():
    # arithmetic of parts
    found = overpour_base(*exact(400, 430, 100, 100))
    assert found == exact("107.5", "107.5", "7.5", "7.5", 645)


def test_too_much_hardener_asks_for_more_base_and_may_overfill_the_cup():
    # arithmetic of parts
    found = overpour_hardener(*exact(400, 100, 120, 100))
    assert found == exact(480, 120, 80, 20, 720)
    assert found.total > 700


@given(AMOUNTS, AMOUNTS, AMOUNTS, st.integers(0, 500))
def test_the_mended_mix_is_back_on_its_ratio(base, hardener, thinner, more):
    poured = base + more
    found = overpour_base(base, poured, hardener, thinner)
    assert found.hardener * base == hardener * poured
    assert found.thinner * base == thinner * poured
    assert found.total == poured + found.hardener + found.thinner
    assert found.hardener_extra >= 0


@given(AMOUNTS, AMOUNTS, AMOUNTS, st.integers(0, 500))
def test_mending_a_hardener_by_its_base_and_a_base_by_its_hardener_agree(b, h, t, more):
    by_hardener = overpour_hardener(b, h, h + more, t)
    by_base = overpour_base(b, by_hardener.base, h, t)
    assert (by_base.hardener, by_base.thinner) == (h + more, by_hardener.thinner)


@given(AMOUNTS, AMOUNTS, AMOUNTS, st.integers(1, 500))
def test_too_much_hardener_costs_more_base_the_leaner_the_ratio(b, h, t, more):
    found = overpour_hardener(b, h, h + more, t)
    assert found.base_extra == more * b / h


def test_pouring_less_than_planned_is_no_over_pour():
    with pytest.raises(OutsideValidity, match="top that can up"):
        overpour_base(*exact(400, 390, 100, 100))


@pytest.mark.parametrize("name", ["overpour_base", "overpour_hardener"])
def test_mending_carries_its_caution(name):
    assert "hazardous waste" in CATALOGUE[name].facts.caution
