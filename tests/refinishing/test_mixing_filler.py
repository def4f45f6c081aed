"""Filler hardener: published rule of 1 to 3 % of a 50 % peroxide paste; sizes by eye."""

from fractions import Fraction
from math import pi

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing import CATALOGUE
from generator.refinishing.mixing_filler import (
    bead_and_ball_percent,
    filler_hardener,
    filler_hardener_percent,
)

BALL = Fraction("1.68")  # inches; Rules of Golf, least diameter of the ball, from memory
PASTE = Fraction("1.2")  # g/mL; common practice
HEAVY_FILLER, LIGHT_FILLER = Fraction("1.8"), Fraction("1.2")  # g/mL; common practice
SIZES = st.fractions("1/16", 4, max_denominator=64)


@pytest.mark.parametrize(("filler", "percent", "grams"), [(150, 2, "3.0"), (80, 1, "0.8")])
def test_hardener_paste_by_weight(filler, percent, grams):
    # paint-chemistry answer on polyester repair filler, 2012: the rule; our numbers
    paste = filler_hardener(Fraction(filler), Fraction(percent))
    assert paste == Fraction(grams)
    assert filler + paste == Fraction(filler) * (100 + percent) / 100


def test_four_grams_to_160_lie_in_the_published_band():
    # paint-chemistry answer on polyester repair filler, 2012
    percent = filler_hardener_percent(Fraction(160), Fraction(4))
    assert percent == Fraction("2.5")
    assert 1 <= percent <= 3


@given(st.integers(1, 3000), st.fractions(0, 10, max_denominator=50))
def test_percent_and_grams_undo_each_other(filler, percent):
    grams = filler_hardener(Fraction(filler), percent)
    assert filler_hardener_percent(Fraction(filler), grams) == percent


@pytest.mark.parametrize(
    ("bead_diameter", "filler_density", "percent", "in_band"),
    [
        ("1/8", HEAVY_FILLER, "0.66", False),
        ("3/16", HEAVY_FILLER, "1.48", True),
        ("1/4", HEAVY_FILLER, "2.64", True),
        ("5/16", HEAVY_FILLER, "4.12", False),
        ("1/8", LIGHT_FILLER, "0.99", False),
        ("3/16", LIGHT_FILLER, "2.22", True),
        ("1/4", LIGHT_FILLER, "3.95", False),
    ],
)
def test_a_two_inch_bead_on_a_ball_lands_in_the_band_only_at_some_widths(
    bead_diameter, filler_density, percent, in_band
):
    # geometry; band of the paint-chemistry answer, 2012
    found = bead_and_ball_percent(BALL, Fraction(2), Fraction(bead_diameter), filler_density, PASTE)
    assert abs(found - Fraction(percent)) <= Fraction("0.005")
    assert (1 <= found <= 3) is in_band


@given(SIZES, SIZES, SIZES, SIZES, SIZES)
def test_bead_and_ball_agree_with_their_two_volumes(ball, length, width, filler, paste):
    rope = pi * float(width) ** 2 * float(length) / 4 * float(paste)
    sphere = pi * float(ball) ** 3 / 6 * float(filler)
    found = bead_and_ball_percent(ball, length, width, filler, paste)
    assert float(found) == pytest.approx(100 * rope / sphere)


@given(SIZES, SIZES, SIZES)
def test_a_bead_twice_as_wide_holds_four_times_the_paste(ball, length, width):
    single = bead_and_ball_percent(ball, length, width, HEAVY_FILLER, PASTE)
    assert bead_and_ball_percent(ball, length, 2 * width, HEAVY_FILLER, PASTE) == 4 * single


@pytest.mark.parametrize(("filler", "percent"), [(0, 2), (-10, 2), (100, -1)])
def test_impossible_amounts_are_refused(filler, percent):
    with pytest.raises(OutsideValidity):
        filler_hardener(Fraction(filler), Fraction(percent))


@pytest.mark.parametrize(
    "name", ["filler_hardener", "filler_hardener_percent", "bead_and_ball_percent"]
)
def test_peroxide_carries_its_caution(name):
    assert "oggles" in CATALOGUE[name].facts.caution
