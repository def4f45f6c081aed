"""Mixing by parts. Sums of parts are arithmetic; the percent form follows a published note."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import round_to_step
from generator.refinishing import CATALOGUE
from generator.refinishing.mixing import (
    amounts_from_base,
    cup_marks,
    largest_batch,
    split_total,
    split_total_with_percent,
)

HALF_TENTH = Fraction("0.05")


def parts(*sizes: object) -> tuple[Fraction, ...]:
    return tuple(Fraction(str(size)) for size in sizes)


def near(found: tuple[Fraction, ...], expected: tuple[str, ...]) -> bool:
    return all(abs(a - Fraction(b)) <= HALF_TENTH for a, b in zip(found, expected, strict=True))


whole_parts = st.tuples(st.integers(1, 12), st.integers(1, 6), st.integers(1, 6)).map(
    lambda sizes: parts(*sizes)
)
volumes = st.fractions(1, 5000, max_denominator=20)


@pytest.mark.parametrize(
    ("total", "ratio", "expected"),
    [
        (600, (4, 1, 1), ("400.0", "100.0", "100.0")),
        (350, (3, 1, 1), ("210.0", "70.0", "70.0")),
        (900, (2, 1), ("600.0", "300.0", "0")),
        (500, (8, 2, 1), ("363.6", "90.9", "45.5")),
    ],
)
def test_a_total_splits_by_its_parts(total, ratio, expected):
    # arithmetic of parts
    assert near(split_total(Fraction(total), parts(*ratio)), expected)


@pytest.mark.parametrize(
    ("total", "ratio", "expected"),
    [
        (500, (2, 1), ("303.0", "151.5", "45.5")),
        (660, (4, 1), ("480.0", "120.0", "60.0")),
    ],
)
def test_percent_thinner_is_of_base_and_hardener_together(total, ratio, expected):
    # note on the 4:1:10 % mixing notation
    assert near(split_total_with_percent(Fraction(total), parts(*ratio), Fraction(10)), expected)


@pytest.mark.parametrize(
    ("base", "ratio", "expected"),
    [
        (300, (4, 1, 1), ("75.0", "75.0", "450.0")),
        (240, (2, 1, 0.5), ("120.0", "60.0", "420.0")),
        (275, (5, 1), ("55.0", "0", "330.0")),
    ],
)
def test_a_measured_base_gives_the_other_cans(base, ratio, expected):
    # arithmetic of parts
    assert near(amounts_from_base(Fraction(base), parts(*ratio)), expected)


@pytest.mark.parametrize(
    ("base", "ratio", "expected"),
    [
        (300, (4, 1, 1), ("300.0", "375.0", "450.0")),
        (200, (2, 1, 0.5), ("200.0", "300.0", "350.0")),
    ],
)
def test_cup_marks_are_a_running_sum(base, ratio, expected):
    # arithmetic of parts
    assert near(cup_marks(Fraction(base), parts(*ratio)), expected)


def test_largest_batch_fills_the_usable_cup():
    # arithmetic of parts
    batch = largest_batch(Fraction(650), parts(4, 1, 1))
    assert near(batch, ("433.3", "108.3", "108.3"))
    assert sum(batch) == 650


def test_half_up_would_overfill_the_cup_so_a_largest_batch_rounds_down():
    # common practice: a maximum is rounded down
    batch = largest_batch(Fraction(500), parts(1, 1, 1))
    one = Fraction(1)
    assert sum(round_to_step(amount, one, "half") for amount in batch) > 500
    facts = CATALOGUE["largest_batch"].facts
    assert set(facts.limit.values()) == {"maximum"}
    assert (
        sum(
            round_to_step(batch[i], one, facts.rounding[name])
            for i, name in enumerate(CATALOGUE["largest_batch"].results)
        )
        <= 500
    )


@given(volumes, whole_parts)
def test_a_split_adds_up_and_keeps_its_ratio(total, ratio):
    base, hardener, thinner = split_total(total, ratio)
    assert base + hardener + thinner == total
    assert base * ratio[1] == hardener * ratio[0]
    assert base * ratio[2] == thinner * ratio[0]


@given(volumes, whole_parts)
def test_splitting_the_total_of_a_base_gives_that_base_back(base, ratio):
    assert split_total(amounts_from_base(base, ratio).total, ratio).base == base


@given(volumes, whole_parts, st.integers(2, 9))
def test_a_ratio_means_the_same_when_all_parts_are_multiplied(total, ratio, factor):
    larger = tuple(part * factor for part in ratio)
    assert split_total(total, larger) == split_total(total, ratio)


@given(volumes, whole_parts, st.integers(0, 60))
def test_percent_thinner_adds_up_and_is_that_percentage(total, ratio, percent):
    base, hardener, thinner = split_total_with_percent(total, ratio[:2], Fraction(percent))
    assert base + hardener + thinner == total
    assert thinner * 100 == (base + hardener) * percent


@pytest.mark.parametrize("ratio", [(4,), (4, 1, 1, 1), (4, 0), (4, 1, 0), (-4, 1), ()])
def test_a_ratio_of_the_wrong_shape_is_refused(ratio):
    with pytest.raises(OutsideValidity, match="part"):
        split_total(Fraction(600), parts(*ratio))


@pytest.mark.parametrize("total", [0, -5])
def test_nothing_to_mix_is_refused(total):
    with pytest.raises(OutsideValidity, match="total must be above zero"):
        split_total(Fraction(total), parts(4, 1))


def test_thinner_given_twice_is_refused():
    with pytest.raises(OutsideValidity, match="base and hardener only"):
        split_total_with_percent(Fraction(600), parts(4, 1, 1), Fraction(10))
