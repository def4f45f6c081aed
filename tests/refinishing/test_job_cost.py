"""Cost and time of a job, by arithmetic."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.refinishing.job_cost import cost_per_area, job_cost, process_time
from tests.refinishing.asked import asked, exact


@pytest.mark.parametrize(
    ("numbers", "materials", "labour", "total"),
    [
        (("2.4", 55, "12.5", "0.35", 95, "0.5", 68), "67.25", 132, "211.75"),  # arithmetic
        (("3.25", 48, "9.8", "0.6", 72, "0.15", 88, "0.15", 18), "59.10", 156, "224.90"),
    ],
)
def test_a_job_added_up(numbers, materials, labour, total):
    found = job_cost(*exact(*numbers))
    assert found == exact(materials, labour, total)


@pytest.mark.parametrize(
    ("numbers", "wanted"), [((68, "3.9", 2), "34.87"), ((54, "5.2", 3), "31.15")]
)
def test_paint_for_a_square_metre(numbers, wanted):
    # arithmetic
    assert abs(cost_per_area(*exact(*numbers)) - Fraction(wanted)) <= Fraction("0.005")


def test_time_in_the_booth_with_and_without_a_last_flash():
    # arithmetic
    assert process_time(*exact(3, 4, 10, 45)) == 77
    assert process_time(*exact(3, 4, 10, 45, 1)) == 87


def test_a_price_for_each_us_gallon_is_turned_into_litres():
    # a US gallon is 3.785411784 L exactly
    given = {"practical_rate": "4 m2/L", "coats": "2"}
    metric = asked("cost_per_area", "money/m2", price="100 money/L", **given)
    us = asked("cost_per_area", "money/m2", price="378.5411784 money/us_gal", **given)
    assert metric == us == 50


@given(st.integers(1, 6), st.integers(0, 30), st.integers(0, 30), st.integers(0, 90))
def test_a_flash_after_the_last_coat_adds_exactly_one_flash(coats, spray, flash, bake):
    times = exact(coats, spray, flash, bake)
    assert process_time(*times, Fraction(1)) - process_time(*times) == flash


@given(st.integers(0, 20), st.integers(0, 90), st.integers(0, 50), st.integers(0, 9))
def test_materials_and_labour_and_consumables_make_the_total(hours, rate, extra, amount):
    found = job_cost(*exact(hours, rate, extra, amount, 70))
    assert found.total == found.materials + found.labour + extra


@pytest.mark.parametrize(
    ("call", "numbers", "words"),
    [
        (job_cost, (-1, 55, 0, 1, 95), "labour must not be below zero"),
        (job_cost, (1, 55, 0, -1, 95), "amount must not be below zero"),
        (cost_per_area, (68, 0, 2), "spreading rate must be above zero"),
        (cost_per_area, (68, 4, "1.5"), "number of coats"),
        (process_time, (3, 4, 10, 45, 2), "flash after the last coat"),
        (process_time, (0, 4, 10, 45), "number of coats"),
    ],
)
def test_impossible_jobs_are_refused(call, numbers, words):
    with pytest.raises(OutsideValidity, match=words):
        call(*exact(*numbers))
