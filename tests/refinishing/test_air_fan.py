"""Fan laws; from memory, checked by derivation."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import round_to_step
from generator.refinishing import CATALOGUE
from generator.refinishing.air_fan import fan_at_speed

SPEEDS = st.integers(100, 3000).map(Fraction)


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


def test_a_fan_slowed_by_a_tenth():
    # fan laws, from memory
    found = fan_at_speed(*exact(1000, 900, 9000, "0.5", 5))
    assert found.new_flow == 8100
    assert found.new_pressure == Fraction("0.405")
    # 3.645 hp is an exact tie in decimal
    assert round_to_step(found.new_power, Fraction("0.01"), "half") == Fraction("3.65")
    assert CATALOGUE["fan_at_speed"].facts.status == "from_memory"


@given(SPEEDS, SPEEDS)
def test_power_goes_with_flow_times_pressure(speed, new_speed):
    # air power is flow times pressure
    found = fan_at_speed(speed, new_speed, *exact(9000, "0.5", 5))
    assert found.new_power / 5 == found.new_flow / 9000 * (found.new_pressure / Fraction("0.5"))


@given(SPEEDS, SPEEDS, SPEEDS)
def test_two_changes_in_turn_are_one_change(speed, middle, end):
    half_way = fan_at_speed(speed, middle, *exact(9000, "0.5", 5))
    assert fan_at_speed(middle, end, *half_way) == fan_at_speed(speed, end, *exact(9000, "0.5", 5))


@pytest.mark.parametrize("place", range(5))
def test_a_fan_that_stands_still_is_refused(place):
    numbers = list(exact(1000, 900, 9000, "0.5", 5))
    numbers[place] = Fraction(0)
    with pytest.raises(OutsideValidity):
        fan_at_speed(*numbers)


def test_booth_fans_are_for_licensed_hands():
    caution = CATALOGUE["fan_at_speed"].facts.caution
    assert "licensed trade" in caution and "posted clearance time" in caution
