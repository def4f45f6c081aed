"""The cap-pressure limit of a state rule, judged in the unit it is written in."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, unit_named
from generator.refinishing import CATALOGUE
from generator.refinishing.gun_pressure import cap_pressure_left


# 06-096 Code of Maine Rules chapter 153 section 2(D): 0.1 to 10 psi
@pytest.mark.parametrize(
    ("cap", "within"), [("9.5", True), ("10.5", False), ("10", True), ("10.001", False)]
)
def test_a_cap_is_within_the_limit_or_not(cap, within):
    assert (cap_pressure_left(Fraction(cap)) >= 0) is within


def test_a_rounded_bar_figure_is_not_the_limit_itself():
    # 0.69 bar is often printed for 10 psi and is already over it
    psi = Quantity(Fraction("0.69"), unit_named("bar")).to(unit_named("psi")).number
    assert Fraction("10.007") < psi < Fraction("10.008")
    assert cap_pressure_left(psi) < 0


def test_a_cap_without_pressure_is_refused():
    with pytest.raises(OutsideValidity, match="gauge"):
        cap_pressure_left(Fraction("0.09"))
    assert cap_pressure_left(Fraction("0.1")) == Fraction("9.9")


@given(st.integers(1, 400).map(lambda tenths: Fraction(tenths, 10)))
def test_what_is_left_and_what_is_there_make_up_the_limit(cap):
    assert cap_pressure_left(cap) + cap == 10


def test_a_lawful_gun_is_no_protection():
    assert "supplied air" in CATALOGUE["cap_pressure_left"].facts.caution
