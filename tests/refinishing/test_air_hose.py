"""Pressure on the way to the gun against a measured chain; the scaling is from memory."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing import CATALOGUE
from generator.refinishing.air_hose import (
    gun_inlet_pressure,
    hose_drop_for_length,
    hose_drop_ratio,
)

SIZES = st.integers(1, 400).map(lambda tenths: Fraction(tenths, 10))


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


def test_the_measured_chain_of_drops():
    # trade-magazine article on a starved gun: 75 to 67 to 36 to 28 psi
    assert gun_inlet_pressure(*exact(75, 8)).inlet == 67
    assert gun_inlet_pressure(*exact(75, 8, 31)).inlet == 36
    assert gun_inlet_pressure(*exact(75, 8, 31, 8)) == (47, 28)


@pytest.mark.parametrize(
    ("numbers", "expected"),
    [
        (("0.25", "0.375", 12, 12), "0.132"),  # turbulent flow, from memory
        (("0.375", "0.375", 12, 18), "2.25"),  # turbulent flow, from memory
    ],
)
def test_drop_against_bore_and_flow(numbers, expected):
    found = hose_drop_ratio(*exact(*numbers))
    assert abs(found - Fraction(expected)) <= Fraction("0.0005")
    assert CATALOGUE["hose_drop_ratio"].facts.status == "from_memory"


def test_twice_the_length_is_twice_the_drop():
    # turbulent flow, from memory
    assert hose_drop_for_length(*exact(31, 25, 50)) == 62
    assert CATALOGUE["hose_drop_for_length"].facts.status == "from_memory"


@given(SIZES, SIZES, SIZES, SIZES, SIZES)
def test_two_changes_in_turn_are_one_change(bore, middle, end, flow, new_flow):
    first = hose_drop_ratio(bore, middle, flow, new_flow)
    second = hose_drop_ratio(middle, end, new_flow, new_flow)
    assert first * second == hose_drop_ratio(bore, end, flow, new_flow)


@given(SIZES, SIZES)
def test_a_wider_hose_and_less_air_lose_less(bore, flow):
    assert hose_drop_ratio(bore, bore + 1, flow, flow) < 1
    assert hose_drop_ratio(bore, bore, flow + 1, flow) < 1


@given(st.lists(st.integers(0, 20).map(Fraction), min_size=4, max_size=4), st.randoms())
def test_the_order_of_the_drops_does_not_matter(drops, order):
    shuffled = list(drops)
    order.shuffle(shuffled)
    start = Fraction(100)
    assert gun_inlet_pressure(start, *drops) == gun_inlet_pressure(start, *shuffled)


def test_a_gun_that_gets_no_air_is_refused():
    with pytest.raises(OutsideValidity, match="no air"):
        gun_inlet_pressure(*exact(47, 8, 31, 8))


@pytest.mark.parametrize("numbers", [(75, -1), (0, 8), (75, 8, -31)])
def test_pressures_below_zero_are_refused(numbers):
    with pytest.raises(OutsideValidity):
        gun_inlet_pressure(*exact(*numbers))


def test_pressure_is_set_at_the_gun_inlet_with_the_trigger_pulled():
    assert "trigger pulled" in CATALOGUE["gun_inlet_pressure"].facts.caution
