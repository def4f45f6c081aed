"""Averages over a paint system and VOC for each gallon of solids, against rules and their table."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.voc_average import (
    voc_of_multistage,
    voc_of_two_stages,
    voc_over_solids,
    voc_per_solids,
)
from generator.refinishing.voc_regulatory import voc_less_water
from tests.refinishing.asked import exact

CONTENTS = st.integers(1, 800).map(Fraction)
TENTH = Fraction("0.05")


def test_base_and_clear_by_the_district_rule():
    # district rule 423, our numbers
    assert abs(voc_of_two_stages(*exact(700, 420)) - Fraction("513.3")) <= TENTH


def test_a_midcoat_counts_once_and_the_clear_twice():
    # 40 CFR 59.104(a)(2), form from memory, our numbers
    assert voc_of_multistage(*exact(680, 440, 640)) == 550


@given(CONTENTS, CONTENTS)
def test_without_midcoats_both_averages_are_the_same(base, clear):
    assert voc_of_multistage(base, clear) == voc_of_two_stages(base, clear)


@given(CONTENTS, CONTENTS, CONTENTS, CONTENTS)
def test_an_average_lies_between_the_lowest_and_highest_layer(base, clear, first, second):
    layers = (base, clear, first, second)
    assert min(layers) <= voc_of_multistage(*layers) <= max(layers)


@pytest.mark.parametrize(("voc", "printed"), [("2.8", "4.5"), ("3.7", "7.4"), ("4.2", "9.8")])
def test_content_for_each_gallon_of_solids_as_printed(voc, printed):
    # 5 CCR 1001-29, appendix E, solvent at 7.36 lb/gal
    assert abs(voc_per_solids(Fraction(voc)) - Fraction(printed)) <= TENTH


def test_a_guidebook_example_works_on_with_another_line():
    # 52 % water, 42 % solids, 6 % solvent by volume: the book prints 0.76 lb/gal, which is the
    # solvent over 58 %; with its own inputs the solvent over all but the water is 0.92
    solvent = Fraction("0.06") * Fraction("7.36")
    found = voc_less_water(solvent, Fraction(1), Fraction("0.52")).less_water
    assert abs(found - Fraction("0.92")) <= Fraction("0.005")
    assert abs(found - Fraction("0.76")) > Fraction("0.1")


@given(st.fractions("1/10", 7, max_denominator=20))
def test_solids_worked_out_both_ways_agree(voc):
    # without water the rest of the can is solids: volume solids = 1 - voc / solvent density
    solids = 100 * (1 - voc / Fraction("7.36"))
    assert voc_over_solids(voc, solids) == voc_per_solids(voc)


@given(st.integers(0, 70), st.integers(1, 3))
def test_more_solvent_means_more_for_each_gallon_of_solids(tenths, more):
    first, second = Fraction(tenths, 10), Fraction(tenths + more, 10)
    assert voc_per_solids(second) > voc_per_solids(first)


@pytest.mark.parametrize("voc", ["7.36", "9"])
def test_a_content_of_pure_solvent_or_more_is_refused(voc):
    with pytest.raises(OutsideValidity, match="below the density"):
        voc_per_solids(Fraction(voc))


def test_a_layer_below_zero_is_refused():
    with pytest.raises(OutsideValidity, match="must not be below zero"):
        voc_of_multistage(*exact(680, 440, -1))
