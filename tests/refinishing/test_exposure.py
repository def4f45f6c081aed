"""Averages and mixtures in the air against 29 CFR 1910.1000(d), and two units of vapour."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.exposure import dust_average, mixture_sum, time_weighted_average
from generator.refinishing.vapour_units import mass_to_ppm, ppm_to_mass
from tests.refinishing.asked import asked, exact

CONTENTS = st.integers(0, 500).map(Fraction)
LIMITS = st.integers(1, 1000).map(Fraction)


def test_a_day_in_three_spells_as_printed():
    # 29 CFR 1910.1000(d)(1), worked example: 81.25 ppm
    assert time_weighted_average(*exact(150, 2, 75, 2, 50, 4)) == Fraction("81.25")


def test_a_long_shift_is_still_divided_by_eight():
    # the same rule; dividing by the 10 h of the shift would give 80 and hide the excess
    assert time_weighted_average(*exact(80, 10)) == 100


def test_dust_by_the_same_rule_in_any_unit():
    # rule of 29 CFR 1910.1000(d)(1), our numbers
    assert dust_average(*exact(12, 2, 3, 4)) == Fraction("4.5")
    small = asked("dust_average", "ug/m3", concentration_1="40 ug/m3", time_1="4 h")
    assert small == 20


def test_a_mixture_within_its_limit():
    # 29 CFR 1910.1000(d)(2), inputs of its example
    found = mixture_sum(*exact(500, 1000, 45, 200, 40, 200))
    assert found == Fraction("0.925")
    assert found <= 1


def test_vapours_each_below_their_limit_can_be_over_it_together():
    assert mixture_sum(*exact(60, 100, 60, 100)) > 1


@given(CONTENTS, LIMITS, CONTENTS, LIMITS)
def test_one_more_vapour_never_lowers_the_sum(content_1, limit_1, content_2, limit_2):
    two = mixture_sum(content_1, limit_1, content_2, limit_2)
    assert mixture_sum(content_1, limit_1, content_2, limit_2, Fraction(5), Fraction(50)) > two


@given(CONTENTS, st.integers(1, 12))
def test_time_without_exposure_counts_as_zero(content, hours):
    spell = (content, Fraction(hours))
    assert time_weighted_average(*spell, Fraction(0), Fraction(8)) == time_weighted_average(*spell)


@pytest.mark.parametrize(
    ("ppm", "molecular_mass", "printed", "tolerance"),
    [
        (150, "116.16", 713, "0.5"),  # NIOSH file of May 1994
        (100, "92.13", "376.8", "0.05"),  # rule of the Canadian centre, our numbers
        (5000, 44, 8998, 5),  # conversion note, printed as 9000
    ],
)
def test_parts_per_million_as_printed(ppm, molecular_mass, printed, tolerance):
    found = ppm_to_mass(*exact(ppm, molecular_mass))
    assert abs(found - Fraction(printed)) <= Fraction(tolerance)


def test_a_printed_conversion_is_rounded_to_whole_thousands():
    # conversion note: 5000 ppm at 44 printed as 9000; exactly 8998
    assert abs(ppm_to_mass(*exact(5000, 44)) - 9000) > 2


def test_milligrams_as_printed():
    # conversion note: 9.4 ppm
    assert abs(mass_to_ppm(*exact(30, 78)) - Fraction("9.4")) <= Fraction("0.05")


@given(CONTENTS, st.integers(1, 300).map(Fraction))
def test_there_and_back_again_is_exact(content, molecular_mass):
    assert mass_to_ppm(ppm_to_mass(content, molecular_mass), molecular_mass) == content


@pytest.mark.parametrize(
    ("call", "numbers", "words"),
    [
        (time_weighted_average, (-1, 8), "concentration must not be below zero"),
        (time_weighted_average, (50, 20, 40, 5), "24 h"),
        (dust_average, (5, -1), "time must not be below zero"),
        (mixture_sum, (5, 0, 5, 100), "limit must be above zero"),
        (ppm_to_mass, (5, 0), "molecular mass must be above zero"),
        (mass_to_ppm, (-5, 78), "concentration must not be below zero"),
    ],
)
def test_impossible_air_is_refused(call, numbers, words):
    with pytest.raises(OutsideValidity, match=words):
        call(*exact(*numbers))
