"""Colour differences against the printed test pairs and a colour library."""

import warnings
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.colour_difference import (
    colour_difference_1976,
    colour_difference_2000,
)
from tests.refinishing.asked import exact

TENTHS = st.integers(-1000, 1000).map(lambda tenths: Fraction(tenths, 10))
LIGHT = st.integers(0, 1000).map(lambda tenths: Fraction(tenths, 10))
COLOURS = st.tuples(LIGHT, TENTHS, TENTHS)
WITHIN = Fraction(1, 10_000)

# Color Research and Application 30 (2005), table 1: pairs and CIEDE2000 as printed; CIE 1976 ours
PAIRS = [
    ((50, "2.6772", "-79.7751"), (50, 0, "-82.7485"), "2.0425", "4.0011"),
    ((50, "2.5", 0), (73, 25, -18), "27.1492", "36.8680"),
    (
        ("60.2574", "-34.0099", "36.2677"), ("60.4626", "-34.1751", "39.4387"),
        "1.2644", "3.1819",
    ),
    (("2.0776", "0.0795", "-1.1350"), ("0.9033", "-0.0636", "-0.5514"), "0.9082", "1.3191"),
    ((50, "2.5", 0), (50, "3.2592", "0.3350"), "1.0000", "0.8298"),
]  # fmt: skip


@pytest.mark.parametrize(("first", "second", "printed", "plain"), PAIRS)
def test_the_printed_pairs(first, second, printed, plain):
    colours = (*exact(*first), *exact(*second))
    assert abs(colour_difference_2000(*colours) - Fraction(printed)) <= WITHIN
    assert abs(colour_difference_1976(*colours) - Fraction(plain)) <= WITHIN


def test_a_copying_slip_in_circulation_gives_another_difference():
    # a notebook in circulation copies -82.7485 as -82.7465
    found = colour_difference_2000(*exact(50, "2.6772", "-79.7751", 50, 0, "-82.7465"))
    assert abs(found - Fraction("2.0425")) > WITHIN


@pytest.fixture(scope="module")
def library():
    """Return the colour library, where it is installed."""
    with warnings.catch_warnings():
        # the library says at import that it goes without its plotting parts
        warnings.simplefilter("ignore")
        return pytest.importorskip("colour.difference")


@given(COLOURS, COLOURS)
def test_both_differences_agree_with_a_colour_library(library, first, second):
    # colour-science as oracle
    assume(_hues_apart(first, second))
    pair = [list(map(float, colour)) for colour in (first, second)]
    found = float(colour_difference_2000(*first, *second))
    assert found == pytest.approx(float(library.delta_E_CIE2000(*pair)), abs=1e-4)
    plain = float(colour_difference_1976(*first, *second))
    assert plain == pytest.approx(float(library.delta_E_CIE1976(*pair)), abs=1e-6)


@given(COLOURS, COLOURS)
def test_a_difference_is_the_same_both_ways(first, second):
    assume(_hues_apart(first, second))
    there = colour_difference_2000(*first, *second)
    assert abs(there - colour_difference_2000(*second, *first)) <= Fraction(1, 10**6)


@given(COLOURS)
def test_a_colour_does_not_differ_from_itself(colour):
    assert colour_difference_2000(*colour, *colour) == 0
    assert colour_difference_1976(*colour, *colour) == 0


def test_strong_colours_differ_less_to_the_eye_than_by_distance():
    grey = exact(50, 0, 0, 50, 3, 0)
    strong = exact(50, 80, 0, 50, 83, 0)
    assert colour_difference_1976(*grey) == colour_difference_1976(*strong) == 3
    assert colour_difference_2000(*strong) < colour_difference_2000(*grey)


def test_hues_straight_across_are_refused_because_platforms_differ():
    # the pair is 4.8045 on some machines and 4.7461 on others
    with pytest.raises(OutsideValidity, match="straight across"):
        colour_difference_2000(*exact(50, "-0.001", "2.49", 50, "0.001", "-2.49"))


@pytest.mark.parametrize(
    ("colour", "words"), [((101, 0, 0), "lightness"), ((50, 201, 0), "Red-green")]
)
def test_colours_no_instrument_shows_are_refused(colour, words):
    with pytest.raises(OutsideValidity, match=words):
        colour_difference_1976(*exact(*colour, 50, 0, 0))


def _hues_apart(first, second):
    # points straight across from one another: same direction through grey
    cross = first[1] * second[2] - first[2] * second[1]
    along = first[1] * second[1] + first[2] * second[2]
    return abs(cross) > 1 or along >= 0
