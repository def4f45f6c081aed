"""Pot life and cure time by the ten-degree rule, against the note that prints it."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, acceptance_band, round_to_step, unit_named
from generator.refinishing import CATALOGUE
from generator.refinishing.cure_rate import cure_time_at, pot_life_at

TIMES = st.integers(1, 600).map(Fraction)
TENTHS = st.integers(0, 350).map(lambda tenths: Fraction(tenths, 10))
STEPS = st.integers(0, 150).map(lambda tenths: Fraction(tenths, 10))
FINE = Fraction("0.05")


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


@pytest.mark.parametrize(
    ("time", "before", "after", "expected"),
    [
        (60, 25, 35, "30.0"),  # technical note on the ten-degree rule: cure, printed 30
        (240, 20, 15, "339.4"),  # rule of the note, our numbers
        (30, 20, 30, "15.0"),  # rule of the note, our numbers
    ],
)
def test_cure_time_at_another_temperature(time, before, after, expected):
    assert abs(cure_time_at(*exact(time, before, after)) - Fraction(expected)) <= FINE


def test_gel_time_at_another_temperature_as_printed():
    # technical note on the ten-degree rule: gel time 10 min at 25 °C, printed 5 at 35 °C
    assert pot_life_at(*exact(10, 25, 35)) == 5


def test_a_cold_cure_is_rounded_up_and_a_warm_pot_life_down():
    # numbers of the check, rounded in whole minutes
    cure, life = CATALOGUE["cure_time_at"].facts, CATALOGUE["pot_life_at"].facts
    longer = cure_time_at(*exact(240, 20, 15))
    shorter = pot_life_at(*exact(45, 20, 25))
    assert round_to_step(longer, Fraction(1), cure.rounding["cure_time_at"]) == 340
    assert round_to_step(shorter, Fraction(1), life.rounding["pot_life_at"]) == 31


def test_a_cure_shorter_and_a_pot_life_longer_than_the_exact_one_fail():
    cure = acceptance_band(
        cure_time_at(*exact(240, 20, 15)), Fraction(1), "up", Fraction(2), "minimum"
    )
    life = acceptance_band(
        pot_life_at(*exact(45, 20, 25)), Fraction(1), "down", Fraction(2), "maximum"
    )
    assert not cure.holds(Fraction(339)) and cure.holds(Fraction(340))
    assert not life.holds(Fraction(32)) and life.holds(Fraction(31))


@given(TIMES, TENTHS)
def test_ten_kelvins_double_or_halve_and_none_changes_nothing(time, temperature):
    assert cure_time_at(time, temperature, temperature) == time
    assert cure_time_at(time, temperature, temperature + 10) == time / 2
    assert cure_time_at(time, temperature + 10, temperature) == time * 2


@given(TIMES, TENTHS, STEPS)
def test_there_and_back_gives_the_time_again(time, temperature, step):
    there = pot_life_at(time, temperature, temperature + step)
    back = pot_life_at(there, temperature + step, temperature)
    assert abs(back - time) < Fraction(1, 10**5)


@given(TIMES, TENTHS, st.integers(1, 149))
def test_warmer_is_always_shorter(time, temperature, tenths):
    step = Fraction(tenths, 10)
    nearer = cure_time_at(time, temperature, temperature + step)
    farther = cure_time_at(time, temperature, temperature + step + Fraction(1, 10))
    assert farther < nearer < time


@given(TIMES, TENTHS)
def test_whole_steps_meet_the_ones_beside_them(time, temperature):
    # a whole step is worked out exactly, its neighbours by logarithms
    at = cure_time_at(time, temperature, temperature + 10)
    beside = cure_time_at(time, temperature, temperature + 10 + Fraction(1, 10**6))
    assert 0 < at - beside < time * Fraction(1, 10**6)


@given(TIMES, st.integers(41, 80))
def test_fahrenheit_and_celsius_give_the_same_time(time, fahrenheit):
    celsius = [
        Quantity(Fraction(point), unit_named("degF")).to(unit_named("degC")).number
        for point in (fahrenheit, fahrenheit + 18)
    ]
    assert cure_time_at(time, *celsius) == time / 2


@pytest.mark.parametrize(
    ("numbers", "words"),
    [
        ((60, 20, 60), "0 °C to 50 °C"),
        ((60, -1, 10), "0 °C to 50 °C"),
        ((60, 20, 36), "15 K"),
        ((60, 36, 20), "15 K"),
        ((0, 20, 30), "above zero"),
        ((60, 20, 30, 1), "factor"),
    ],
)
def test_steps_the_rule_does_not_hold_for_are_refused(numbers, words):
    for relation in (cure_time_at, pot_life_at):
        with pytest.raises(OutsideValidity, match=words):
            relation(*exact(*numbers))


@pytest.mark.parametrize("name", ["cure_time_at", "pot_life_at"])
def test_the_rule_is_never_used_for_flash_off(name):
    assert "never for flash-off" in CATALOGUE[name].facts.caution
    assert not any("flash" in parameter.name for parameter in CATALOGUE[name].parameters)
