"""Mixing ratios, and what dimensions are called."""

from fractions import Fraction

import pytest

from generator.quantities import BARE, UNITS, Dimension, Ratio, dimension_words


@pytest.mark.parametrize("parts", [(), (0, 0), (4, -1)])
def test_a_ratio_without_sensible_parts_is_refused(parts: tuple[int, ...]) -> None:
    with pytest.raises(ValueError, match="a ratio needs parts"):
        Ratio(tuple(Fraction(part) for part in parts))


def test_the_parts_of_a_ratio_add_up() -> None:
    assert Ratio((Fraction(4), Fraction(1), Fraction("0.5"))).total == Fraction("5.5")


def test_every_unit_has_words_for_what_it_measures() -> None:
    unnamed = [n for n, u in UNITS.items() if u.kind_words.startswith("a measure of")]
    assert unnamed == []


def test_an_unusual_dimension_is_spelt_out() -> None:
    assert dimension_words(Dimension(length=4, time=-2)) == (
        "a measure of length to the power 4 per time to the power 2"
    )
    assert dimension_words(Dimension(mass=-1)) == "a measure of 1 per mass"


def test_dimensions_multiply_divide_and_rise() -> None:
    length, time = Dimension(length=1), Dimension(time=1)
    assert length.over(time) == UNITS["m/s"].dimension
    assert length.raised(3) == UNITS["L"].dimension
    assert UNITS["m2/L"].dimension.times(UNITS["L/m2"].dimension) == BARE
