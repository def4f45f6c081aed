"""From gun to film: a published rule for efficiency, and a volume balance from memory."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, unit_named
from generator.refinishing import CATALOGUE
from generator.refinishing.spray_film import (
    gun_speed_for_film,
    measured_transfer_efficiency,
    wet_film_from_gun,
)

REGISTRY = pint.UnitRegistry()
FLOWS = st.integers(20, 600).map(Fraction)
SPEEDS = st.integers(10, 120).map(Fraction)
FANS = st.integers(5, 45).map(Fraction)
OVERLAPS = st.integers(0, 90).map(Fraction)
SHARES = st.integers(1, 100).map(Fraction)
FINE = Fraction("0.05")


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


@pytest.mark.parametrize(
    ("numbers", "expected"),
    [
        ((42, 160, 45), "58.3"),  # finishing answer: solids on the part over solids sprayed
        ((30, 150, 52), "38.5"),  # finishing answer: solids on the part over solids sprayed
    ],
)
def test_measured_transfer_efficiency(numbers, expected):
    found = measured_transfer_efficiency(*exact(*numbers))
    assert abs(found - Fraction(expected)) <= FINE


@pytest.mark.parametrize(
    ("numbers", "expected"),
    [
        ((200, 50, 25, 50, 65), "34.7"),  # volume balance, from memory
        ((180, 40, 25, 75, 65), "78.0"),  # volume balance, from memory
    ],
)
def test_wet_film_from_gun(numbers, expected):
    assert abs(wet_film_from_gun(*exact(*numbers)) - Fraction(expected)) <= FINE
    assert CATALOGUE["wet_film_from_gun"].facts.status == "from_memory"


def test_gun_speed_for_film():
    # volume balance, from memory
    found = gun_speed_for_film(*exact(220, 40, 26, 50, 65))
    assert abs(found - Fraction("45.8")) <= FINE
    assert CATALOGUE["gun_speed_for_film"].facts.status == "from_memory"


@given(FLOWS, SPEEDS, FANS, OVERLAPS, SHARES)
def test_the_speed_for_a_film_undoes_the_film_from_a_speed(flow, speed, fan, overlap, share):
    film = wet_film_from_gun(flow, speed, fan, overlap, share)
    assert gun_speed_for_film(flow, film, fan, overlap, share) == speed


@given(FLOWS, SPEEDS, FANS, SHARES)
def test_the_film_agrees_with_a_general_units_library(flow, speed, fan, share):
    # pint as oracle, half overlap
    landing = REGISTRY.Quantity(float(flow), "mL/minute") * float(share) / 100
    swept = REGISTRY.Quantity(float(speed), "cm/s") * REGISTRY.Quantity(float(fan) / 2, "cm")
    oracle = (landing / swept).to("micrometer").magnitude
    assert float(wet_film_from_gun(flow, speed, fan, Fraction(50), share)) == pytest.approx(oracle)


@given(FLOWS, SPEEDS, FANS, SHARES)
def test_half_overlap_doubles_the_film_and_twice_the_speed_halves_it(flow, speed, fan, share):
    single = wet_film_from_gun(flow, speed, fan, Fraction(0), share)
    assert wet_film_from_gun(flow, speed, fan, Fraction(50), share) == 2 * single
    assert wet_film_from_gun(flow, 2 * speed, fan, Fraction(0), share) == single / 2


def test_inches_and_centimetres_give_the_same_film():
    metric = wet_film_from_gun(*exact(200, "50.8", "25.4", 50, 65))
    speed = Quantity(Fraction(20), unit_named("in/s")).to(unit_named("cm/s")).number
    fan = Quantity(Fraction(10), unit_named("in")).to(unit_named("cm")).number
    assert wet_film_from_gun(Fraction(200), speed, fan, *exact(50, 65)) == metric


@given(SHARES, SHARES)
def test_weighing_back_gives_the_efficiency_again(share, solids):
    sprayed = Fraction(150)
    on_part = sprayed * solids / 100 * share / 100
    assert measured_transfer_efficiency(on_part, sprayed, solids) == share


def test_more_solids_than_were_sprayed_are_refused():
    with pytest.raises(OutsideValidity, match="weigh again"):
        measured_transfer_efficiency(*exact(80, 160, 45))


@pytest.mark.parametrize(
    ("numbers", "words"),
    [
        ((200, 50, 25, 100, 65), "overlap"),
        ((200, 50, 25, -1, 65), "overlap"),
        ((200, 0, 25, 50, 65), "speed"),
        ((200, 50, 25, 50, 0), "efficiency"),
        ((0, 50, 25, 50, 65), "flow"),
    ],
)
def test_strokes_that_cannot_be_are_refused(numbers, words):
    with pytest.raises(OutsideValidity, match=words):
        wet_film_from_gun(*exact(*numbers))


def test_spraying_carries_the_breathing_caution():
    for name in ("measured_transfer_efficiency", "wet_film_from_gun", "gun_speed_for_film"):
        assert "supplied air" in CATALOGUE[name].facts.caution
