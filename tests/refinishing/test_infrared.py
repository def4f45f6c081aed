"""Lamp heat against distance: the published inverse square, and a wide disc from memory."""

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing import CATALOGUE
from generator.refinishing.infrared import RADII_AWAY, disc_lamp_ratio, point_lamp_ratio

SMALL = Fraction(40)
DISTANCES = st.integers(400, 3000).map(Fraction)
FINE = Fraction("0.0005")


@pytest.mark.parametrize(
    ("near", "far", "expected"),
    [
        (500, 1000, "0.25"),  # note on radiation: twice the distance, a quarter
        (600, 750, "0.64"),  # rule of the note, our numbers
        (500, 1500, "0.1111"),  # note on radiation: three times the distance, a ninth
    ],
)
def test_a_small_lamp_falls_off_with_the_square(near, far, expected):
    found = point_lamp_ratio(Fraction(near), Fraction(far), SMALL)
    assert abs(found - Fraction(expected)) <= FINE


def test_a_wide_lamp_falls_off_more_slowly_than_the_square():
    # even disc on its axis, from memory; the inverse square would say 0.25
    found = disc_lamp_ratio(Fraction(500), Fraction(1000), Fraction(300))
    assert abs(found - Fraction("0.312")) <= FINE
    assert abs(found - Fraction("0.25")) > Fraction("0.05")
    assert CATALOGUE["disc_lamp_ratio"].facts.status == "from_memory"


def test_the_inverse_square_is_refused_at_the_working_distance_of_a_paint_lamp():
    with pytest.raises(OutsideValidity, match="too close"):
        point_lamp_ratio(Fraction(500), Fraction(1000), Fraction(300))
    with pytest.raises(OutsideValidity, match="too close"):
        point_lamp_ratio(Fraction(1000), Fraction(500), Fraction(300))


@given(DISTANCES, DISTANCES)
def test_where_both_hold_they_differ_by_one_percent_at_most(distance, new_distance):
    square = point_lamp_ratio(distance, new_distance, SMALL)
    disc = disc_lamp_ratio(distance, new_distance, SMALL)
    assert abs(disc / square - 1) <= Fraction("0.01")


@given(st.integers(1, 200).map(Fraction))
def test_the_limit_of_the_inverse_square_is_ten_radii(radius):
    edge = RADII_AWAY * radius
    assert point_lamp_ratio(edge, edge, radius) == 1
    with pytest.raises(OutsideValidity):
        point_lamp_ratio(edge - Fraction(1, 100), edge, radius)


@given(st.integers(100, 2000), st.integers(100, 2000), st.integers(10, 600))
def test_the_disc_agrees_with_heat_summed_ring_by_ring(near, far, radius):
    # rings of a diffuse disc summed as oracle: dE = 2 r h² / (r² + h²)² dr
    def summed(height: float) -> float:
        rings = 400
        width = radius / rings
        middles = ((i + 0.5) * width for i in range(rings))
        return math.fsum(2 * r * height**2 / (r**2 + height**2) ** 2 * width for r in middles)

    oracle = summed(far) / summed(near)
    ours = float(disc_lamp_ratio(Fraction(near), Fraction(far), Fraction(radius)))
    assert ours == pytest.approx(oracle, rel=0.01)


@given(DISTANCES, DISTANCES, st.integers(1, 600).map(Fraction))
def test_the_ratio_back_is_the_other_way_up(distance, new_distance, radius):
    there = disc_lamp_ratio(distance, new_distance, radius)
    assert there * disc_lamp_ratio(new_distance, distance, radius) == 1
    assert (there < 1) is (new_distance > distance)


@pytest.mark.parametrize("name", ["point_lamp_ratio", "disc_lamp_ratio"])
def test_lamps_carry_their_caution(name):
    caution = CATALOGUE[name].facts.caution
    assert "thermometer" in caution and "sheets" in caution


def test_a_lamp_without_size_is_refused():
    with pytest.raises(OutsideValidity, match="emitter"):
        disc_lamp_ratio(Fraction(500), Fraction(600), Fraction(0))
