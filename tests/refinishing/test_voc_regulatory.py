"""VOC as applied and less water, against a worked answer, a coatings note and the rule."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.voc_regulatory import (
    regulatory_voc,
    voc_from_weight_percent,
    voc_less_water,
)
from tests.refinishing.asked import asked, exact

MASSES = st.integers(1, 900).map(Fraction)
SHARES = st.fractions(0, "2/5", max_denominator=50)


@pytest.mark.parametrize(
    ("numbers", "less_water", "as_applied"),
    [
        ((620, 450, 0, 1, "0.451", 0), "309.7", "170.0"),  # rule 59.104(a)(1), our numbers
        ((520, 0, 120, 1, 0, "0.152"), "471.7", "400.0"),  # the same
    ],
)
def test_both_figures_by_the_rule(numbers, less_water, as_applied):
    found = regulatory_voc(*exact(*numbers))
    assert abs(found.less_water - Fraction(less_water)) <= Fraction("0.05")
    assert abs(found.as_applied - Fraction(as_applied)) <= Fraction("0.05")


def test_a_pooled_hundred_gallons_as_printed():
    # coatings note, answers on VOC: 0.332 and 0.883 lb/gal
    pool = {"voc_mass": "33.2 lb", "coating": "100 us_gal", "water_volume": "62.4 us_gal"}
    as_applied = asked("voc_less_water", "lb/us_gal", "as_applied", **pool)
    less_water = asked("voc_less_water", "lb/us_gal", "less_water", **pool)
    assert as_applied == Fraction("0.332")
    assert abs(less_water - Fraction("0.883")) <= Fraction("0.0005")


def test_a_waterborne_coating_as_printed():
    # question and answer, March 2004: 2.23 and 4.87 lb/gal with water at 8.33
    can = {
        "solids": "20.8 percent", "water": "53 percent",
        "density": "8.52 lb/us_gal", "water_density": "8.33 lb/us_gal",
    }  # fmt: skip
    found = [
        asked("voc_from_weight_percent", "lb/us_gal", name, **can)
        for name in ("as_applied", "less_water")
    ]
    assert abs(found[0] - Fraction("2.23")) <= Fraction("0.005")
    assert abs(found[1] - Fraction("4.87")) <= Fraction("0.005")


def test_leaving_the_water_density_out_takes_the_printed_one():
    given_water = voc_from_weight_percent(*exact("20.8", 53, "8.52", "8.33"))
    assert voc_from_weight_percent(*exact("20.8", 53, "8.52")) == given_water


def test_the_two_densities_in_use_for_water_move_the_last_figure():
    # 8.33 and 8.34 lb/gal are both printed
    light = voc_from_weight_percent(*exact("20.8", 53, "8.52", "8.33")).less_water
    heavy = voc_from_weight_percent(*exact("20.8", 53, "8.52", "8.34")).less_water
    assert 0 < light - heavy < Fraction("0.01")


@given(MASSES, st.integers(1, 40), SHARES, SHARES)
def test_the_rules_figure_is_never_lower_than_as_applied(mass, coating, water, exempt):
    found = voc_less_water(mass, Fraction(coating), coating * water, coating * exempt)
    assert found.less_water >= found.as_applied


@given(MASSES, st.integers(1, 40), SHARES, st.integers(1, 50))
def test_more_water_cannot_make_a_coating_comply(mass, coating, share, more):
    before = voc_less_water(mass, Fraction(coating), coating * share)
    after = voc_less_water(mass, Fraction(coating + more), coating * share + more)
    assert after.less_water == before.less_water
    assert after.as_applied < before.as_applied


@given(MASSES, st.integers(1, 40), st.integers(1, 50))
def test_more_exempt_solvent_leaves_the_rules_figure_alone(mass, coating, more):
    before = voc_less_water(mass, Fraction(coating), Fraction(0))
    after = voc_less_water(mass, Fraction(coating + more), Fraction(0), Fraction(more))
    assert after.less_water == before.less_water


@pytest.mark.parametrize(
    ("call", "numbers", "words"),
    [
        (regulatory_voc, (100, 90, 20, 1, 0, 0), "weigh more than all"),
        (regulatory_voc, (0, 0, 0, 1, 0, 0), "volatiles must be above zero"),
        (voc_less_water, (100, 1, "0.6", "0.4"), "less than the whole coating"),
        (voc_from_weight_percent, (60, 50, 9), "over 100 %"),
        (voc_from_weight_percent, (0, 50, 9), "solids by weight must be above 0 %"),
        (voc_from_weight_percent, (10, 80, 11), "fill the whole coating"),
    ],
)
def test_impossible_coatings_are_refused(call, numbers, words):
    with pytest.raises(OutsideValidity, match=words):
        call(*exact(*numbers))
