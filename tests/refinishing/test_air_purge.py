"""Thinning out the air of a room against a public-health table and a tracer example."""

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import round_to_step
from generator.refinishing import CATALOGUE
from generator.refinishing.air_movement import air_changes
from generator.refinishing.air_purge import dilution_time, flow_from_half_life, removal_time

CHANGES = st.integers(1, 300).map(Fraction)
REMOVALS = st.integers(1, 999).map(lambda tenths: Fraction(tenths, 10))
FINE = Fraction("0.005")


def exact(*numbers: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(number)) for number in numbers)


# MMWR 43 (RR-13), table S3-1: minutes for 90, 99 and 99.9 %
@pytest.mark.parametrize(
    ("changes", "printed"), [(6, (23, 46, 69)), (12, (12, 23, 35)), (20, (7, 14, 21))]
)
def test_removal_times_as_printed(changes, printed):
    for removal, minutes in zip(("90", "99", "99.9"), printed, strict=True):
        found = removal_time(Fraction(changes), Fraction(removal))
        assert round_to_step(found, Fraction(1), "half") == minutes


def test_a_time_to_keep_is_rounded_up_where_the_table_rounds_half_up():
    # MMWR table S3-1 prints 46 for 46.05 minutes
    facts = CATALOGUE["removal_time"].facts
    found = removal_time(Fraction(6), Fraction(99))
    assert round_to_step(found, Fraction(1), facts.rounding["removal_time"]) == 47
    assert facts.limit == {"removal_time": "minimum"}


def test_a_well_moved_booth_takes_about_a_minute_and_a_half():
    # rule of the table, our numbers
    assert abs(removal_time(Fraction(180), Fraction(99)) - Fraction("1.54")) <= FINE


@pytest.mark.parametrize(("efficiency", "expected"), [("1", "1.01"), ("0.3", "3.36")])
def test_dilution_time(efficiency, expected):
    # dilution equation, our numbers
    found = dilution_time(*exact(3024, 9000, 400, 20, efficiency))
    assert abs(found - Fraction(expected)) <= FINE


@pytest.mark.parametrize(
    ("volume", "half_life", "expected"),
    [
        (20, "1.4", "9.9"),  # tracer-gas article: printed 9.9
        (95, "0.5", "131.7"),  # rule of the article, our numbers
    ],
)
def test_fresh_air_from_a_half_life(volume, half_life, expected):
    found = flow_from_half_life(*exact(volume, half_life))
    assert abs(found - Fraction(expected)) <= Fraction("0.05")


@given(st.integers(100, 5000), st.integers(100, 20_000), st.integers(2, 999), st.integers(1, 10))
def test_factor_and_efficiency_are_turned_upside_down(volume, flow, start, factor):
    # the table's factor multiplies, the other guides' efficiency divides
    end = Fraction(1)
    share = 100 * (1 - end / start)
    changes = air_changes(Fraction(flow), Fraction(volume))
    by_table = removal_time(changes, share, Fraction(factor))
    by_guide = dilution_time(*exact(volume, flow, start, end), Fraction(1, factor))
    assert float(by_table) == pytest.approx(float(by_guide), rel=1e-6, abs=1e-6)


@pytest.mark.parametrize("factor", ["0.5", "11"])
def test_an_efficiency_taken_for_a_factor_is_refused(factor):
    with pytest.raises(OutsideValidity, match="multiplies"):
        removal_time(Fraction(6), Fraction(99), Fraction(factor))


@pytest.mark.parametrize("efficiency", ["0", "3"])
def test_a_factor_taken_for_an_efficiency_is_refused(efficiency):
    with pytest.raises(OutsideValidity, match="divides"):
        dilution_time(*exact(3024, 9000, 400, 20, efficiency))


@given(CHANGES, REMOVALS)
def test_after_the_removal_time_the_wanted_share_is_gone(changes, removal):
    # exponential fall of evenly mixed air as oracle
    minutes = float(removal_time(changes, removal))
    left = math.exp(-float(changes) / 60 * minutes)
    assert left == pytest.approx(1 - float(removal) / 100, rel=1e-4)


@given(CHANGES, REMOVALS)
def test_more_air_is_quicker_and_more_removal_slower(changes, removal):
    found = removal_time(changes, removal)
    assert removal_time(changes + 1, removal) < found
    assert removal_time(changes, removal + Fraction(1, 100)) > found


@given(st.integers(10, 900).map(Fraction), st.integers(1, 50).map(lambda t: Fraction(t, 10)))
def test_half_is_gone_after_a_half_life(volume, half_life):
    flow = flow_from_half_life(volume, half_life)
    assert float(removal_time(flow / volume, Fraction(50))) == pytest.approx(
        float(half_life) * 60, rel=1e-5
    )


@pytest.mark.parametrize(
    ("start", "end", "words"), [(20, 20, "start"), (20, 400, "start"), (400, 0, "end level")]
)
def test_levels_that_do_not_fall_are_refused(start, end, words):
    with pytest.raises(OutsideValidity, match=words):
        dilution_time(*exact(3024, 9000, start, end))


@pytest.mark.parametrize("removal", [0, 100, 101])
def test_removing_nothing_or_all_is_refused(removal):
    with pytest.raises(OutsideValidity, match="share"):
        removal_time(Fraction(6), Fraction(removal))


@pytest.mark.parametrize("name", ["removal_time", "dilution_time", "flow_from_half_life"])
def test_a_purge_is_never_a_time_to_take_the_mask_off(name):
    caution = CATALOGUE[name].facts.caution
    assert "never a time to take a mask off" in caution
    assert "posted clearance time" in caution
