"""Solvent given off by a job and by a shop, against a state small-business template."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.voc_emission import job_emission, potential_emission, yearly_emission
from tests.refinishing.asked import asked, exact


def test_a_shops_potential_as_printed():
    # state template, potential to emit: 3391 vehicles and 1.18 short tons
    shop = exact(8760, "2.5833", "0.5", "1.39")
    found = potential_emission(*shop)
    assert abs(found.vehicles - 3391) <= Fraction("0.5")
    assert abs(found.emission - Fraction("1.18")) <= Fraction("0.005")


def test_a_further_product_as_printed():
    # state template: 0.10 short tons
    found = yearly_emission(*exact(3391, "0.125", "0.46"))
    assert abs(found - Fraction("0.10")) <= Fraction("0.005")


def test_adding_rounded_tons_differs_from_rounding_their_sum():
    # template's two lines, added before and after rounding to a hundredth of a ton
    parts = [yearly_emission(*exact(3391, *line)) for line in (("0.125", "0.46"), ("0.25", "1.2"))]
    rounded = sum(round(part, 2) for part in parts)
    assert sum(parts) != rounded


def test_one_job_with_its_cleaning():
    # arithmetic: 0.588 kg sprayed and 0.1032 kg of cleaning solvent not caught
    assert job_emission(*exact("1.4", 420, "0.3", 860, 60)) == Fraction("0.6912")


def test_a_metric_shop_gets_the_same_mass_as_a_us_shop():
    us = asked(
        "yearly_emission", "kg", vehicles="100", volume_per_vehicle="0.5 us_gal", voc="3 lb/us_gal"
    )
    metric = asked(
        "job_emission", "kg", sprayed="50 us_gal", voc="3 lb/us_gal",
        cleanup="0 L", cleanup_voc="0 g/L", recovered="100 percent",
    )  # fmt: skip
    assert us == metric


@given(st.integers(1, 100), st.integers(1, 99))
def test_catching_more_solvent_gives_off_less(amount, share):
    before = job_emission(*exact(1, 400, amount, 800, share))
    after = job_emission(*exact(1, 400, amount, 800, share + 1))
    assert after < before


def test_half_the_time_for_each_vehicle_doubles_the_potential():
    slow = potential_emission(*exact(2000, 4, 1, 3))
    fast = potential_emission(*exact(2000, 2, 1, 3))
    assert fast.emission == 2 * slow.emission


@pytest.mark.parametrize(
    ("call", "numbers"),
    [
        (job_emission, (1, 400, 1, 800, 120)),
        (job_emission, (-1, 400, 1, 800, 50)),
        (potential_emission, (8760, 0, 1, 1)),
        (yearly_emission, (0, 1, 1)),
    ],
)
def test_impossible_shops_are_refused(call, numbers):
    with pytest.raises(OutsideValidity, match="must"):
        call(*exact(*numbers))
