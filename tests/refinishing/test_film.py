"""Wet and dry film against printed exercises of painting inspectors' courses."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, unit_named
from generator.refinishing.film import dry_film, mil_to_um, wet_film

REGISTRY = pint.UnitRegistry()
SOLIDS = st.integers(1, 100).map(Fraction)
FILMS = st.fractions(1, 500, max_denominator=10)
THINNER = st.integers(0, 200).map(Fraction)


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


@pytest.mark.parametrize(
    ("dry", "solids", "thinner", "printed", "tolerance"),
    [
        (45, 56, 0, "80.36", "0.005"),  # inspector's exercise sheet
        (60, 40, 0, "150", "0.05"),  # inspector's exercise sheet
        (100, 65, 20, "185", "0.5"),  # inspection-course slides
        (50, 42, 0, "119.0", "0.05"),  # rule of the slides, our numbers
    ],
)
def test_wet_film_as_printed(dry, solids, thinner, printed, tolerance):
    found = wet_film(*exact(dry, solids, thinner))
    assert abs(found - Fraction(printed)) <= Fraction(tolerance)


@pytest.mark.parametrize(
    ("wet", "solids", "thinner", "printed", "tolerance"),
    [
        (250, 50, 0, "125", "0.5"),  # inspection-course slides
        (84, 42, 0, "35.28", "0.005"),  # inspector's exercise sheet
        (120, 48, 10, "52.4", "0.05"),  # rule of the slides, our numbers
        (130, 83, 0, "107.9", "0.05"),  # inspector's exercise sheet
    ],
)
def test_dry_film_as_printed(wet, solids, thinner, printed, tolerance):
    found = dry_film(*exact(wet, solids, thinner))
    assert abs(found - Fraction(printed)) <= Fraction(tolerance)


@given(FILMS, SOLIDS, THINNER)
def test_wet_to_dry_to_wet_comes_back_exactly(film, solids, thinner):
    assert wet_film(dry_film(film, solids, thinner), solids, thinner) == film


@given(FILMS, SOLIDS, THINNER, st.integers(1, 50))
def test_more_thinner_needs_a_thicker_wet_film(film, solids, thinner, more):
    assert wet_film(film, solids, thinner + more) > wet_film(film, solids, thinner)


@given(FILMS, SOLIDS, THINNER)
def test_a_wet_film_is_never_thinner_than_the_dry_film_it_leaves(film, solids, thinner):
    assert wet_film(film, solids, thinner) >= film


@given(FILMS, SOLIDS, THINNER)
def test_working_in_mils_or_micrometres_gives_the_same_wet_film(film, solids, thinner):
    # unit invariance: a film is a length whatever it is measured in
    mil, um = unit_named("mil"), unit_named("um")
    in_mils = Quantity(wet_film(film, solids, thinner), mil).to(um).number
    assert in_mils == wet_film(Quantity(film, mil).to(um).number, solids, thinner)


@given(FILMS)
def test_mils_become_micrometres_as_a_general_units_library_says(film):
    # pint as oracle
    oracle = REGISTRY.Quantity(float(film), "thou").to("micrometer").magnitude
    assert float(mil_to_um(film)) == pytest.approx(oracle)


def test_mils_become_micrometres_as_our_own_units_say():
    assert mil_to_um(Fraction("2.5")) == Fraction("63.5")
    for film in exact(1, "1.8", 120):
        converted = Quantity(film, unit_named("mil")).to(unit_named("um"))
        assert mil_to_um(film) == converted.number


@pytest.mark.parametrize(
    ("film", "solids", "thinner", "words"),
    [
        (0, 50, 0, "dry film must be above zero"),
        (60, 0, 0, "volume solids must be above 0 %"),
        (60, 101, 0, "at most 100 %"),
        (60, 50, -1, "thinner must not be below zero"),
    ],
)
def test_impossible_films_are_refused(film, solids, thinner, words):
    with pytest.raises(OutsideValidity, match=words):
        wet_film(*exact(film, solids, thinner))
