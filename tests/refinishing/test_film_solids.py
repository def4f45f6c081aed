"""Volume solids against the exercise sheet, the slides and an article on thinning."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.film import dry_film, wet_film
from generator.refinishing.film_solids import (
    solids_after_thinning,
    solids_of_mix,
    volume_solids_from_films,
)

SOLIDS = st.integers(1, 100).map(Fraction)
THINNER = st.integers(0, 200).map(Fraction)
TOLERANCE = Fraction("0.005")


@pytest.mark.parametrize(("dry", "wet", "printed"), [(53, 110, "48.18"), (36, 108, "33.33")])
def test_solids_from_the_two_films_as_printed(dry, wet, printed):
    # inspector's exercise sheet
    found = volume_solids_from_films(Fraction(dry), Fraction(wet))
    assert abs(found - Fraction(printed)) <= TOLERANCE


@pytest.mark.parametrize(
    ("solids", "thinner", "printed"),
    [
        (60, 25, "48.00"),  # article: one gallon at 60 % with one quart of thinner
        (65, 20, "54.17"),  # inspection-course slides print 54
        (48, 30, "36.92"),  # rule of the slides, our numbers
    ],
)
def test_solids_after_thinning_as_printed(solids, thinner, printed):
    found = solids_after_thinning(Fraction(solids), Fraction(thinner))
    assert abs(found - Fraction(printed)) <= TOLERANCE


def test_solids_of_a_mix_are_the_mean_by_volume():
    # arithmetic
    found = solids_of_mix((Fraction(4), Fraction(1), Fraction(1)), Fraction(52), Fraction(45))
    assert abs(found - Fraction("42.17")) <= TOLERANCE


@given(SOLIDS, THINNER)
def test_thinning_then_reckoning_is_reckoning_with_the_thinner(solids, thinner):
    # the slides show both ways for one case
    thinned = solids_after_thinning(solids, thinner)
    assert wet_film(Fraction(100), thinned) == wet_film(Fraction(100), solids, thinner)


@given(SOLIDS, st.integers(1, 200).map(Fraction))
def test_thinning_lowers_solids_by_less_than_its_own_percentage(solids, thinner):
    thinned = solids_after_thinning(solids, thinner)
    assert solids * (100 - thinner) / 100 < thinned < solids


@given(st.integers(1, 400).map(Fraction), SOLIDS)
def test_solids_found_from_films_give_those_films_back(wet, solids):
    assert volume_solids_from_films(dry_film(wet, solids), wet) == solids


@given(st.integers(1, 9), st.integers(1, 9), st.integers(1, 9), SOLIDS)
def test_thinner_in_the_ratio_thins_as_the_percentage_does(base, hardener, thinner, solids):
    parts = (Fraction(base), Fraction(hardener), Fraction(thinner))
    percent = Fraction(100 * thinner, base + hardener)
    assert solids_of_mix(parts, solids, solids) == solids_after_thinning(solids, percent)


def test_a_dry_film_thicker_than_the_wet_one_is_refused():
    with pytest.raises(OutsideValidity, match="never thicker"):
        volume_solids_from_films(Fraction(110), Fraction(53))


@pytest.mark.parametrize(
    ("base", "hardener", "thinner"), [(0, 45, 0), (52, 101, 0), (52, 45, 120), (52, -1, 0)]
)
def test_impossible_solids_are_refused(base, hardener, thinner):
    parts = (Fraction(4), Fraction(1), Fraction(1))
    with pytest.raises(OutsideValidity):
        solids_of_mix(parts, Fraction(base), Fraction(hardener), Fraction(thinner))
