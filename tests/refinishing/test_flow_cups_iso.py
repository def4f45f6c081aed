"""ISO and DIN cups; the coefficients are from memory and give back printed range ends."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing import CATALOGUE
from generator.refinishing.flow_cups_iso import (
    din_cup_viscosity,
    iso_cup_seconds,
    iso_cup_viscosity,
    iso_curve,
)

ORIFICES = st.sampled_from([3, 4, 6]).map(Fraction)
SECONDS = st.integers(300, 1000).map(lambda tenths: Fraction(tenths, 10))
FINE = Fraction("0.05")


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


@pytest.mark.parametrize(("orifice", "seconds", "expected"), [(4, 60, "78.9"), (3, 40, "12.7")])
def test_viscosity_from_seconds(orifice, seconds, expected):
    # ISO 2431 coefficients, from memory
    assert abs(iso_cup_viscosity(*exact(orifice, seconds)) - Fraction(expected)) <= FINE


# range ends as a cup maker prints them
@pytest.mark.parametrize(
    ("orifice", "seconds", "expected", "printed"), [(4, 21, "19.2", 19), (6, 17, "83.8", 84)]
)
def test_the_bare_line_gives_printed_range_ends_outside_the_working_range(
    orifice, seconds, expected, printed
):
    found = iso_curve(*exact(orifice, seconds))
    assert abs(found - Fraction(expected)) <= FINE
    assert abs(found - printed) <= Fraction(1, 2)
    with pytest.raises(OutsideValidity, match="30 to 100 s"):
        iso_cup_viscosity(*exact(orifice, seconds))


def test_seconds_from_viscosity():
    # ISO 2431 coefficients, from memory
    assert abs(iso_cup_seconds(*exact(4, 100)) - Fraction("74.9")) <= FINE


@given(ORIFICES, SECONDS)
def test_seconds_from_viscosity_undo_viscosity_from_seconds(orifice, seconds):
    inner = min(max(seconds, Fraction("30.01")), Fraction("99.99"))
    back = iso_cup_seconds(orifice, iso_cup_viscosity(orifice, inner))
    assert abs(back - inner) < Fraction(1, 10**6)


@given(ORIFICES, st.integers(300, 999))
def test_thicker_paint_runs_longer(orifice, tenths):
    first = iso_cup_viscosity(orifice, Fraction(tenths, 10))
    assert 0 < first < iso_cup_viscosity(orifice, Fraction(tenths + 1, 10))


@given(SECONDS)
def test_the_same_seconds_mean_thicker_paint_in_a_wider_cup(seconds):
    three, four, six = (iso_cup_viscosity(Fraction(hole), seconds) for hole in (3, 4, 6))
    assert three < four < six


@pytest.mark.parametrize("seconds", ["29.99", "100.01"])
def test_the_standards_working_range_is_kept(seconds):
    with pytest.raises(OutsideValidity, match="another cup"):
        iso_cup_viscosity(*exact(4, seconds))


@pytest.mark.parametrize("viscosity", [20, 200])
def test_a_paint_that_would_leave_the_working_range_is_refused(viscosity):
    with pytest.raises(OutsideValidity, match="another cup"):
        iso_cup_seconds(*exact(4, viscosity))


@pytest.mark.parametrize("orifice", [2, 5, "4.5"])
def test_cups_the_standard_does_not_have_are_refused(orifice):
    with pytest.raises(OutsideValidity, match="3, 4 or 6 mm"):
        iso_cup_viscosity(*exact(orifice, 50))


def test_the_old_din_cup_stays_from_memory_and_unconfirmed():
    # from memory, in no text that was read
    assert abs(din_cup_viscosity(Fraction(20)) - Fraction("68.8")) <= FINE
    facts = CATALOGUE["din_cup_viscosity"]
    assert facts.facts.status == "from_memory"
    assert "withdrawn" in facts.notes["Deviates"] and "not confirmed" in facts.notes["Checked"]
    with pytest.raises(OutsideValidity):
        din_cup_viscosity(Fraction(19))


def test_iso_cups_are_from_memory():
    for name in ("iso_cup_viscosity", "iso_cup_seconds"):
        assert CATALOGUE[name].facts.status == "from_memory"
