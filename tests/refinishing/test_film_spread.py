"""Spreading rates as bulletins, slides, an estimating guide and a handbook print them."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, unit_named
from generator.refinishing.film_spread import (
    FT2_MIL_PER_US_GALLON,
    area_covered_us,
    practical_spreading_rate,
    spreading_rate,
    spreading_rate_us,
    wet_film_from_spread,
)

REGISTRY = pint.UnitRegistry()
SOLIDS = st.integers(1, 100).map(Fraction)
FILMS = st.integers(1, 400).map(Fraction)


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


@pytest.mark.parametrize(
    ("solids", "film", "printed", "tolerance"),
    [
        (65, 100, "6.5", "0.05"),  # inspection-course slides
        (65, 125, "5.2", "0.05"),  # bulletin on theoretical spreading rate
        (38, 40, "9.50", "0.005"),  # rule of the slides, our numbers
    ],
)
def test_metric_spreading_rate_as_printed(solids, film, printed, tolerance):
    found = spreading_rate(*exact(solids, film))
    assert abs(found - Fraction(printed)) <= Fraction(tolerance)


@pytest.mark.parametrize(
    ("solids", "film", "printed", "tolerance"),
    [
        (65, 5, "208.52", "0.005"),  # bulletin on theoretical spreading rate
        (35, 2, "281", "0.5"),  # estimating guide with the 1604 table
    ],
)
def test_us_spreading_rate_as_printed(solids, film, printed, tolerance):
    found = spreading_rate_us(*exact(solids, film))
    assert abs(found - Fraction(printed)) <= Fraction(tolerance)


def test_the_handbooks_rounded_constant_gives_its_400():
    # MIL-HDBK-1110 section 2.1.5 rounds the constant to 1600
    in_1604 = spreading_rate_us(Fraction(100), Fraction(4))
    assert in_1604 * 1600 / FT2_MIL_PER_US_GALLON == 400
    assert in_1604 == 401


def test_the_handbooks_600_for_half_solids_at_one_mil_is_a_misprint():
    # MIL-HDBK-1110 section 2.1.5 prints 600; 400 and 200 on its next lines are right
    def by_handbook(mils):
        return spreading_rate_us(Fraction(50), Fraction(mils)) * 1600 / FT2_MIL_PER_US_GALLON

    assert (by_handbook(1), by_handbook(2), by_handbook(4)) == (800, 400, 200)


def test_the_us_constant_is_the_rounded_size_of_a_gallon_spread_one_mil_thick():
    # 231 in³ in a US gallon; published tables round 1604.17 to 1604
    assert abs(Fraction(231 * 1000, 144) - Fraction("1604.17")) <= Fraction("0.005")
    assert abs(FT2_MIL_PER_US_GALLON - Fraction(231 * 1000, 144)) < Fraction(1, 2)


def test_coverage_with_transfer_efficiency_as_printed():
    # paints and coatings resource center, question and answer of October 2003
    found = area_covered_us(*exact(1, 52, 30, "1.5"))
    assert abs(found - 167) <= Fraction("0.5")


def test_dividing_by_solids_and_efficiency_is_the_slip_of_the_2009_answer():
    # an answer of December 2009 prints them below the line
    found = area_covered_us(*exact(1, 52, 30, "1.5"))
    assert 1604 / Fraction("0.52") / Fraction("0.3") / Fraction("1.5") > 40 * found


def test_loss_is_taken_off_the_theoretical_rate():
    # rule of the slides, our numbers
    assert practical_spreading_rate(*exact("6.5", 40)) == Fraction("3.9")


def test_wet_film_from_a_spreading_rate_as_printed():
    # article on spread rates, June 2014
    assert wet_film_from_spread(Fraction(8)) == 125


@given(SOLIDS, st.integers(1, 40).map(Fraction))
def test_us_and_metric_rates_agree_but_for_the_rounded_constant(solids, mils):
    metric = spreading_rate(solids, mils * Fraction("25.4"))
    converted = Quantity(metric, unit_named("m2/L")).to(unit_named("ft2/us_gal")).number
    assert abs(spreading_rate_us(solids, mils) / converted - 1) < Fraction(1, 9000)


@given(SOLIDS, FILMS)
def test_a_litre_spread_over_its_area_is_its_own_volume(solids, film):
    # pint as oracle for the factor 1000 between L, m² and µm
    area = spreading_rate(solids, film)
    pure = REGISTRY.Quantity(float(area * film), "meter**2 * micrometer").to("liter").magnitude
    assert pure == pytest.approx(float(solids) / 100)


@given(SOLIDS, FILMS)
def test_the_spread_of_pure_solids_undoes_the_wet_film(solids, film):
    assert spreading_rate(Fraction(100), wet_film_from_spread(film)) == film


@pytest.mark.parametrize("loss", [-1, 100, 120])
def test_a_loss_of_everything_is_refused(loss):
    with pytest.raises(OutsideValidity, match="loss"):
        practical_spreading_rate(*exact("6.5", loss))


@pytest.mark.parametrize("efficiency", [0, 101])
def test_an_impossible_efficiency_is_refused(efficiency):
    with pytest.raises(OutsideValidity, match="transfer efficiency"):
        area_covered_us(*exact(1, 52, efficiency, 1))
