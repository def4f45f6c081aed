"""Paint for a job against printed worked examples."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import round_to_step
from generator.refinishing.film import dry_film
from generator.refinishing.film_material import (
    film_from_volume,
    mass_per_area,
    paint_needed,
    transfer_swap,
)
from generator.refinishing.film_spread import practical_spreading_rate, spreading_rate

PERCENTS = st.integers(1, 100).map(Fraction)


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


@pytest.mark.parametrize(
    ("area", "film", "coats", "solids", "efficiency", "printed", "tolerance"),
    [
        (500, 50, 1, 50, 100, "50.0", "0.05"),  # inspection-course slides
        (500, 200, 1, 85, 60, "196", "0.5"),  # inspection-course slides
        ("1.8", 25, 2, 40, 65, "0.346", "0.0005"),  # rule of the slides, our numbers
    ],
)
def test_litres_for_a_job_as_printed(area, film, coats, solids, efficiency, printed, tolerance):
    found = paint_needed(*exact(area, film, coats, solids, efficiency))
    assert abs(found - Fraction(printed)) <= Fraction(tolerance)


def test_wet_and_dry_film_of_a_volume_as_printed():
    # inspector's exercise sheet: 20 L on 108 m² at 45 %
    wet, dry = film_from_volume(*exact(20, 108, 45))
    assert abs(wet - Fraction("185.19")) <= Fraction("0.005")
    assert abs(dry - Fraction("83.33")) <= Fraction("0.005")


def test_the_83_25_of_an_older_key_comes_from_rounding_half_way():
    # older key to the exercise sheet rounds the wet film to 185 first
    wet, dry = film_from_volume(*exact(20, 108, 45))
    slip = dry_film(round_to_step(wet, Fraction(1), "half"), Fraction(45))
    assert slip == Fraction("83.25")
    assert abs(dry - slip) > Fraction("0.05")


def test_less_paint_with_a_better_gun_as_printed():
    # trade-magazine clinic: 0.66 gal at 30 % against 70 %
    new_amount, saved = transfer_swap(*exact("0.66", 30, 70))
    assert abs(new_amount - Fraction("0.28")) <= Fraction("0.005")
    assert abs(saved - Fraction("0.38")) <= Fraction("0.005")


def test_the_printed_saving_of_3_80_multiplies_a_rounded_figure():
    # trade-magazine clinic prints 3.80 at 10 a gallon
    saved = transfer_swap(*exact("0.66", 30, 70)).saved
    assert abs(saved * 10 - Fraction("3.77")) <= Fraction("0.005")
    assert round_to_step(saved, Fraction("0.01"), "half") * 10 == Fraction("3.8")


@pytest.mark.parametrize(
    ("film", "density", "printed"),
    [
        (150, "1.1", "165.0"),  # coatings note on paint density
        (90, "1.32", "118.8"),  # rule of the note, our numbers
    ],
)
def test_mass_per_area_as_printed(film, density, printed):
    assert mass_per_area(*exact(film, density)) == Fraction(printed)


@given(st.integers(1, 90), st.integers(1, 200), st.integers(1, 6), PERCENTS, PERCENTS)
def test_paint_needed_undoes_the_practical_spreading_rate(area, film, coats, solids, efficiency):
    needed = paint_needed(*exact(area, film, coats), solids, efficiency)
    loss = 100 - efficiency
    rate = practical_spreading_rate(spreading_rate(solids, Fraction(film)), loss)
    assert needed * rate == area * coats


@given(st.integers(1, 90), st.integers(1, 200), st.integers(1, 6), PERCENTS)
def test_the_paint_needed_without_loss_leaves_the_film_asked_for(area, film, coats, solids):
    litres = paint_needed(*exact(area, film, coats), solids, Fraction(100))
    assert film_from_volume(litres, Fraction(area), solids).dry == film * coats


@given(st.fractions("1/10", 20, max_denominator=20), PERCENTS, PERCENTS)
def test_the_same_solids_land_with_either_gun(amount, old, new):
    swap = transfer_swap(amount, old, new)
    assert swap.new_amount * new == amount * old
    assert (swap.saved > 0) is (new > old)


@pytest.mark.parametrize("coats", ["0", "-1", "1.5"])
def test_a_part_of_a_coat_is_refused(coats):
    with pytest.raises(OutsideValidity, match="number of coats"):
        paint_needed(*exact(2, 25, coats, 40, 65))
