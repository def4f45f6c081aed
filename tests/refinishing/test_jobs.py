"""Whole jobs: the published consumption rule, split by arithmetic of parts."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import round_to_step
from generator.refinishing import CATALOGUE
from generator.refinishing.jobs import ready_to_spray


def job(area, film, coats, solids, efficiency, margin, parts, cup=600):
    return ready_to_spray(
        Fraction(str(area)),
        *(Fraction(number) for number in (film, coats, solids, efficiency, margin)),
        tuple(Fraction(part) for part in parts),
        Fraction(cup),
    )


@pytest.mark.parametrize(
    ("given_job", "expected"),
    [
        (("2.2", 25, 2, 42, 65, 10, (4, 1, 1)), (443, 295, 74, 74, 1)),
        (("1.5", 50, 2, 48, 60, 10, (4, 1)), (573, 458, 115, 0, 1)),
        (("6.5", 15, 2, 18, 65, 5, (1, 1)), (1750, 875, 875, 0, 3)),
    ],
)
def test_a_whole_job_comes_out_of_its_parts(given_job, expected):
    # arithmetic on the consumption rule of the inspection-course slides
    found = job(*given_job)
    assert all(abs(a - b) <= Fraction(1, 2) for a, b in zip(found, expected, strict=True))
    assert found.fills == expected[4]


def test_a_job_rounded_to_nearest_could_run_short_so_it_is_marked_to_round_up():
    found = job("2.2", 25, 2, 42, 65, 10, (4, 1, 1))
    assert round_to_step(found.total, Fraction(1), "half") < found.total
    assert set(CATALOGUE["ready_to_spray"].facts.rounding.values()) == {"up"}


@given(
    st.integers(1, 80).map(lambda tenths: Fraction(tenths, 10)),
    st.integers(1, 4),
    st.integers(10, 100),
    st.integers(10, 100),
    st.integers(100, 900),
)
def test_the_cans_add_up_and_the_fills_hold_them(area, coats, solids, efficiency, cup):
    found = job(area, 25, coats, solids, efficiency, 10, (4, 1, 1), cup)
    assert found.base + found.hardener + found.thinner == found.total
    assert (found.fills - 1) * cup < found.total <= found.fills * cup


@given(st.integers(1, 80), st.integers(0, 50), st.integers(1, 50))
def test_a_larger_margin_mixes_more(area, margin, more):
    lean = job(area, 25, 2, 40, 65, margin, (4, 1)).total
    assert job(area, 25, 2, 40, 65, margin + more, (4, 1)).total > lean


@pytest.mark.parametrize(("cup", "margin"), [(0, 10), (600, -1)])
def test_an_impossible_cup_or_margin_is_refused(cup, margin):
    with pytest.raises(OutsideValidity):
        job(2, 25, 2, 40, 65, margin, (4, 1), cup)
