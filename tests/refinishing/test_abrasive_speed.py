"""Disc speeds against the published wheel-speed table and formula."""

import math
from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, round_to_step, unit_named
from generator.refinishing import CATALOGUE
from generator.refinishing.abrasive_speed import (
    PI,
    disc_area,
    disc_area_ratio,
    highest_speed,
    orbit_speed,
    rim_speed,
)

REGISTRY = pint.UnitRegistry()
DIAMETERS = st.integers(20, 300).map(Fraction)
SPEEDS = st.integers(100, 25_000).map(Fraction)
FINE = Fraction("0.005")


@pytest.mark.parametrize(("diameter", "rpm"), [(125, 12000), (150, 10000)])
def test_rim_speed_in_metres_and_feet(diameter, rpm):
    # formula of the wheel-speed table, our numbers
    speed = rim_speed(Fraction(diameter), Fraction(rpm))
    assert abs(speed - Fraction("78.54")) <= FINE
    feet = Quantity(speed, unit_named("m/s")).to(unit_named("ft/min")).number
    assert abs(feet - 15461) <= Fraction(1, 2)


def test_highest_speed_is_rounded_down_to_or_below_the_tables_figure():
    # wheel-speed table: 125 mm at 80 m/s, printed 12 200
    exact = highest_speed(Fraction(125), Fraction(80))
    facts = CATALOGUE["highest_speed"].facts
    assert facts.limit == {"highest_speed": "maximum"}
    direction = facts.rounding["highest_speed"]
    assert round_to_step(exact, Fraction(1), direction) == 12223
    assert round_to_step(exact, Fraction(100), direction) == 12200


@pytest.mark.parametrize(
    ("orbit", "opm", "expected"),
    [("5", 12000, "3.14"), ("2.5", 12000, "1.57"), ("3", 10000, "1.57")],
)
def test_orbit_speed_is_that_of_a_small_circle(orbit, opm, expected):
    # kinematics, from memory
    assert abs(orbit_speed(Fraction(orbit), Fraction(opm)) - Fraction(expected)) <= FINE
    assert CATALOGUE["orbit_speed"].facts.status == "from_memory"


@pytest.mark.parametrize(
    ("diameter", "area", "other", "ratio"), [(150, "176.7", 125, "1.44"), (75, "44.2", 150, "0.25")]
)
def test_disc_areas(diameter, area, other, ratio):
    # geometry
    assert abs(disc_area(Fraction(diameter)) - Fraction(area)) <= Fraction("0.05")
    assert disc_area_ratio(Fraction(diameter), Fraction(other)) == Fraction(ratio)


@given(DIAMETERS, SPEEDS)
def test_highest_speed_undoes_rim_speed(diameter, rpm):
    assert highest_speed(diameter, rim_speed(diameter, rpm)) == rpm


@given(DIAMETERS, SPEEDS)
def test_rim_speed_agrees_with_a_general_units_library(diameter, rpm):
    # pint as oracle
    turns = REGISTRY.Quantity(float(rpm), "revolution/minute").to("radian/second").magnitude
    radius = REGISTRY.Quantity(float(diameter) / 2, "millimeter").to("meter").magnitude
    assert float(rim_speed(diameter, rpm)) == pytest.approx(turns * radius)


@given(DIAMETERS, SPEEDS)
def test_a_speed_rounded_down_never_passes_the_rim_limit(diameter, limit):
    rim_limit = limit / 100
    rpm = round_to_step(highest_speed(diameter, rim_limit), Fraction(1), "down")
    assert rpm == 0 or rim_speed(diameter, rpm) <= rim_limit


@given(DIAMETERS, DIAMETERS)
def test_area_ratio_is_the_ratio_of_the_areas(diameter, other):
    assert disc_area_ratio(diameter, other) == disc_area(diameter) / disc_area(other)


def test_the_circle_number_is_right_to_machine_precision():
    # Python's own constant as oracle
    assert float(PI) == math.pi


def test_speed_limits_carry_the_marked_speed_caution():
    assert "marked on the disc" in CATALOGUE["highest_speed"].facts.caution


@pytest.mark.parametrize(("diameter", "limit"), [(0, 80), (125, 0), (-125, 80)])
def test_impossible_discs_are_refused(diameter, limit):
    with pytest.raises(OutsideValidity):
        highest_speed(Fraction(diameter), Fraction(limit))
