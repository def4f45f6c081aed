"""Noise durations and doses against 29 CFR 1910.95 and a table of the NIOSH criterion."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.quantities import acceptance_band
from generator.refinishing.noise_dose import noise_dose_limit, noise_dose_programme
from generator.refinishing.noise_duration import (
    permissible_duration,
    recommended_duration,
    reference_duration,
)
from tests.refinishing.asked import exact

LEVELS = st.integers(80, 125).map(Fraction)
TIMES = st.fractions("1/4", 6, max_denominator=4)
SHIFT = exact(95, 2, 90, 3, 85, 3)


@pytest.mark.parametrize(
    ("level", "printed"),
    [
        (80, "32"), (82, "24.3"), (83, "21.1"), (85, "16"), (90, "8"), (92, "6.1"),
        (95, "4.0"), (100, "2"), (105, "1"),
    ],
)  # fmt: skip
def test_the_reference_duration_as_printed_in_table_g16a(level, printed):
    # 29 CFR 1910.95 appendix A, Table G-16a
    assert abs(reference_duration(Fraction(level)) - Fraction(printed)) <= Fraction("0.05")


def test_the_current_page_prints_one_row_a_tenth_off():
    # Table G-16a at 83 dBA: 21.2 on the current page, 21.1 in the older text and by formula
    assert abs(reference_duration(Fraction(83)) - Fraction("21.2")) > Fraction("0.05")


def test_the_permissible_duration_is_another_table_than_the_reference():
    # Table G-16: 6 h at 92 dBA; Table G-16a: 6.1 h
    level = Fraction(92)
    assert permissible_duration(level) == 6
    assert reference_duration(level) > permissible_duration(level)


@pytest.mark.parametrize("level", [90, 95, 100, 105, 110, 115])
def test_both_tables_agree_where_the_levels_are_five_apart(level):
    # 8 h halved with every 5 dB
    assert permissible_duration(Fraction(level)) == reference_duration(Fraction(level))


@pytest.mark.parametrize(("level", "printed"), [(100, "15"), (95, "47.617"), (103, "7.5")])
def test_the_recommended_duration_as_printed(level, printed):
    # table of the NIOSH criterion: 15 min, 47 min 37 s, 7 min 30 s
    assert abs(recommended_duration(Fraction(level)) - Fraction(printed)) <= Fraction("0.3")


@given(LEVELS)
def test_the_advice_is_never_longer_than_the_reference_of_the_law(level):
    assert recommended_duration(level) <= 60 * reference_duration(level)


@given(LEVELS)
def test_three_and_five_decibels_halve_the_time(level):
    assert abs(recommended_duration(level + 3) * 2 - recommended_duration(level)) < Fraction(
        1, 10**6
    )
    assert abs(reference_duration(level + 5) * 2 - reference_duration(level)) < Fraction(1, 10**6)


def test_one_shift_has_two_doses_in_law():
    # appendix A: from 80 dBA for the programme, from 90 dBA for the limit
    programme, limit = noise_dose_programme(*SHIFT), noise_dose_limit(*SHIFT)
    assert programme.dose == Fraction("106.25")
    assert abs(programme.average - Fraction("90.4")) <= Fraction("0.1")
    assert limit.dose == Fraction("87.5")
    assert limit.share_3 == 0


def test_a_rounded_reference_gives_the_printed_dose_and_the_formula_does_not():
    # an example prints 131 % for 92 dBA over 8 h, with T rounded to 6.1 h; exactly it is 131.95
    found = noise_dose_programme(*exact(92, 8))
    assert abs(found.dose - Fraction("131.95")) <= Fraction("0.05")
    assert abs(found.average - 92) <= Fraction("0.1")
    with_rounded_reference = 8 / Fraction("6.1") * 100
    assert found.dose - with_rounded_reference > Fraction("0.5")


def test_a_full_day_at_ninety_is_the_whole_dose():
    found = noise_dose_limit(*exact(90, 8))
    assert (found.dose, found.average) == (100, 90)


@given(LEVELS, TIMES, LEVELS, TIMES)
def test_the_order_of_the_spells_does_not_matter(level_1, time_1, level_2, time_2):
    one = noise_dose_programme(level_1, time_1, level_2, time_2)
    other = noise_dose_programme(level_2, time_2, level_1, time_1)
    assert one.dose == other.dose


@given(st.integers(90, 120).map(Fraction), TIMES, LEVELS, TIMES)
def test_the_limit_never_counts_more_than_the_programme(level_1, time_1, level_2, time_2):
    spells = (level_1, time_1, level_2, time_2)
    assert noise_dose_limit(*spells).dose <= noise_dose_programme(*spells).dose


@given(st.integers(90, 120).map(Fraction), TIMES)
def test_longer_in_the_same_noise_is_a_larger_dose(level, time):
    assert noise_dose_limit(level, time + 1).dose > noise_dose_limit(level, time).dose


def test_a_longer_time_than_the_advice_never_passes():
    # 95 dBA: the key is 47 min, and 47.8 min would be past the advice
    longest = recommended_duration(Fraction(95))
    band = acceptance_band(longest, Fraction(1), "down", Fraction(1, 2), "maximum")
    assert band.holds(Fraction(47))
    assert not band.holds(Fraction("47.8"))


@pytest.mark.parametrize(
    ("call", "numbers", "words"),
    [
        (reference_duration, (79,), "from 80 to 130"),
        (recommended_duration, (131,), "from 80 to 130"),
        (permissible_duration, (93,), "no row"),
        (noise_dose_programme, (79, 8), "No spell reaches 80"),
        (noise_dose_limit, (89, 8), "No spell reaches 90"),
        (noise_dose_limit, (95, 25), "24 h"),
        (noise_dose_limit, (131, 1), "at most 130"),
        (noise_dose_limit, (95, -1), "time must not be below zero"),
    ],
)
def test_noise_outside_the_tables_is_refused(call, numbers, words):
    with pytest.raises(OutsideValidity, match=words):
        call(*exact(*numbers))
