"""Percent by weight of a multi-part mix, against the inputs of a state fact sheet."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.voc_by_weight import voc_weight_percent
from tests.refinishing.asked import asked, exact

SHEET = {
    "parts": "60:30:10", "base_voc": "62 percent", "hardener_voc": "100 percent",
    "thinner_voc": "49 percent", "base_density": "10.5 lb/us_gal",
    "hardener_density": "7.5 lb/us_gal", "thinner_density": "6.75 lb/us_gal",
}  # fmt: skip
PERCENTS = st.integers(0, 100).map(Fraction)


def test_the_figure_true_to_mass_differs_from_the_simplified_one_of_the_sheet():
    # state air-agency fact sheet, January 2005; it prints the simplified average
    name = "voc_weight_percent"
    assert asked(name, "lb/us_gal", "mixed_density", **SHEET) == Fraction("9.225")
    assert abs(asked(name, "percent", "by_mass", **SHEET) - Fraction("70.3")) <= Fraction("0.05")
    assert asked(name, "percent", "by_volume_share", **SHEET) == Fraction("72.1")


@given(st.integers(1, 9), st.integers(1, 9), PERCENTS, PERCENTS)
def test_with_equal_densities_both_averages_agree(base, hardener, base_voc, hardener_voc):
    found = voc_weight_percent(exact(base, hardener), base_voc, hardener_voc, *exact(1, 1))
    assert found.by_mass == found.by_volume_share


@given(st.integers(1, 9), st.integers(1, 9), PERCENTS, PERCENTS, st.integers(5, 20))
def test_the_mass_of_solvent_is_the_same_whichever_way_it_is_added_up(
    base, hardener, base_voc, hardener_voc, tenths
):
    density = Fraction(tenths, 10)
    found = voc_weight_percent(exact(base, hardener), base_voc, hardener_voc, density, Fraction(1))
    solvent = base * density * base_voc + hardener * hardener_voc
    assert found.by_mass * found.mixed_density * (base + hardener) == solvent


@pytest.mark.parametrize(
    ("numbers", "words"),
    [
        ((62, 101, "1.2", 1), "from 0 % to 100 %"),
        ((62, 100, 0, 1), "density of base must be above zero"),
    ],
)
def test_impossible_cans_are_refused(numbers, words):
    with pytest.raises(OutsideValidity, match=words):
        voc_weight_percent(exact(4, 1), *exact(*numbers))


def test_a_thinner_part_needs_a_thinner_density():
    with pytest.raises(OutsideValidity, match="density of thinner"):
        voc_weight_percent(exact(4, 1, 1), *exact(62, 100, "1.2", 1, 50))
