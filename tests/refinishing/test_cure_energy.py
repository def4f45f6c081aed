"""Cure time from the energy of the reaction; the textbook equation is from memory."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing import CATALOGUE
from generator.refinishing.cure_energy import cure_time_by_energy, energy_for_doubling
from generator.refinishing.cure_rate import cure_time_at

FINE = Fraction("0.05")


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


@pytest.mark.parametrize(
    ("numbers", "expected"),
    [
        ((30, 60, 70, 50), "17.7"),  # textbook equation, from memory
        ((60, 20, 30, 50), "30.5"),  # textbook equation, from memory
    ],
)
def test_cure_time_by_energy(numbers, expected):
    assert abs(cure_time_by_energy(*exact(*numbers)) - Fraction(expected)) <= FINE
    assert CATALOGUE["cure_time_by_energy"].facts.status == "from_memory"


@pytest.mark.parametrize(("low", "high", "expected"), [(20, 30, "51.2"), (130, 140, "96.0")])
def test_energy_with_which_a_rate_doubles(low, high, expected):
    # textbook equation, from memory
    assert abs(energy_for_doubling(*exact(low, high)) - Fraction(expected)) <= FINE


@given(st.integers(0, 40).map(Fraction), st.integers(1, 300).map(Fraction))
def test_with_the_energy_for_doubling_it_agrees_with_the_ten_degree_rule(low, time):
    # the two relations as oracles of each other
    energy = energy_for_doubling(low, low + 10)
    by_energy = cure_time_by_energy(time, low, low + 10, energy)
    assert abs(by_energy - cure_time_at(time, low, low + 10)) < Fraction(1, 10**4)


@given(st.integers(10, 120).map(Fraction), st.integers(0, 139).map(Fraction))
def test_one_energy_does_not_double_the_rate_everywhere(energy, low):
    cold = cure_time_by_energy(Fraction(60), low, low + 1, energy)
    warm = cure_time_by_energy(Fraction(60), low + 10, low + 11, energy)
    assert cold < warm < 60


@given(st.integers(1, 140).map(Fraction))
def test_doubling_needs_more_energy_where_it_is_hot(low):
    assert energy_for_doubling(low - 1, low + 9) < energy_for_doubling(low, low + 10)


@pytest.mark.parametrize("numbers", [(0, 20, 30, 50), (60, -1, 30, 50), (60, 20, 151, 50)])
def test_impossible_cures_are_refused(numbers):
    with pytest.raises(OutsideValidity):
        cure_time_by_energy(*exact(*numbers))


def test_two_equal_temperatures_double_nothing():
    with pytest.raises(OutsideValidity, match="second temperature"):
        energy_for_doubling(*exact(30, 30))
