"""Coats and layers; sums, so arithmetic and properties."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, unit_named
from generator.refinishing.film import dry_film
from generator.refinishing.film_build import coats_needed, film_for_sand_off, film_stack

FILMS = st.integers(1, 300).map(Fraction)
SOLIDS = st.integers(1, 100).map(Fraction)


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


@pytest.mark.parametrize(
    ("target", "wet", "solids", "expected"),
    [(120, 100, 50, (3, 50, 80)), (60, 75, 40, (2, 30, 75))],
)
def test_coats_are_rounded_up_and_an_exact_quotient_gains_none(target, wet, solids, expected):
    # arithmetic
    coats, dry, equal = coats_needed(*exact(target, wet, solids))
    assert (coats, dry, equal) == (expected[0], expected[1], expected[2])


def test_layers_add_up_less_the_sanding():
    # arithmetic: e-coat 20, surfacer 60, basecoat 15, clearcoat 50, 25 sanded off
    total = film_stack(*exact(20, 60, 15, 50, 25))
    assert total == 120
    mils = Quantity(total, unit_named("um")).to(unit_named("mil")).number
    assert abs(mils - Fraction("4.72")) <= Fraction("0.005")


def test_sanding_allowance_goes_on_before_the_wet_film_is_reckoned():
    # arithmetic
    assert film_for_sand_off(*exact(60, 30, 48)) == exact(90, "187.5")


@given(FILMS, FILMS, SOLIDS)
def test_the_coats_are_enough_and_one_fewer_is_not(target, wet, solids):
    plan = coats_needed(target, wet, solids)
    assert plan.coats * plan.dry_per_coat >= target
    assert (plan.coats - 1) * plan.dry_per_coat < target


@given(FILMS, FILMS, SOLIDS)
def test_equal_coats_meet_the_target_and_stay_below_the_thickest(target, wet, solids):
    plan = coats_needed(target, wet, solids)
    assert plan.coats * dry_film(plan.wet_per_equal_coat, solids) == target
    assert plan.wet_per_equal_coat <= wet


@given(FILMS, FILMS, SOLIDS)
def test_sanding_the_allowance_off_leaves_the_wanted_film(wanted, sand_off, solids):
    film = film_for_sand_off(wanted, sand_off, solids)
    assert film_stack(film.dry, Fraction(0), sanded_off=sand_off) == wanted
    assert dry_film(film.wet, solids) == film.dry


def test_sanding_off_more_than_is_there_is_refused():
    with pytest.raises(OutsideValidity, match="More is sanded off"):
        film_stack(Fraction(20), Fraction(10), sanded_off=Fraction(31))


@pytest.mark.parametrize("layers", [(-1, 10), (10, -1)])
def test_a_layer_below_zero_is_refused(layers):
    with pytest.raises(OutsideValidity, match="layer must not be below zero"):
        film_stack(*exact(*layers))
