"""Noise of a whole shift as a dose; two counts of US law differ in where they start."""

from fractions import Fraction
from math import log10
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Decibel, Hour, Percent
from generator.refinishing.bounds import HUNDRED, require_not_below_zero
from generator.refinishing.climate import exact_from
from generator.refinishing.noise_duration import HEARING, LOUDEST, reference_duration
from generator.refinishing.relation import relation

NOTHING = Fraction(0)
PROGRAMME_THRESHOLD, LIMIT_THRESHOLD = 80, 90  # dBA
LONGEST_DAY = 24  # hours

_EQUATION = (
    "share_1 = 100 % × time_1 ÷ T, with T = 8 h ÷ 2^((level_1 - 90) ÷ 5); "
    "share_2 = 100 % × time_2 ÷ T, with T = 8 h ÷ 2^((level_2 - 90) ÷ 5); "
    "share_3 = 100 % × time_3 ÷ T, with T = 8 h ÷ 2^((level_3 - 90) ÷ 5); "
    "share_4 = 100 % × time_4 ÷ T, with T = 8 h ÷ 2^((level_4 - 90) ÷ 5); "
    "dose = share_1 + share_2 + share_3 + share_4; "
    "average = 90 + 16.61 × log10(dose ÷ 100 %)"
)


class NoiseDose(NamedTuple):
    """The share of each spell, the dose, and the even 8-hour level with the same dose."""

    share_1: Percent
    share_2: Percent
    share_3: Percent
    share_4: Percent
    dose: Percent
    average: Decibel


@relation(
    equation=_EQUATION,
    source="osha_95",
    place="29 CFR 1910.95(d) and appendix A; levels from 80 dBA count",
    status="read",
    caution=HEARING,
)
def noise_dose_programme(
    level_1: Decibel,
    time_1: Hour,
    level_2: Decibel = NOTHING,
    time_2: Hour = NOTHING,
    level_3: Decibel = NOTHING,
    time_3: Hour = NOTHING,
    level_4: Decibel = NOTHING,
    time_4: Hour = NOTHING,
) -> NoiseDose:
    """Return the noise dose that decides on the hearing programme; levels from 80 dBA count.

    Valid: one to four spells, up to 130 dBA, 24 h together; quieter spells add nothing.
    Deviates: the dose for the 90 dBA limit leaves out all below 90 dBA and is smaller.
    Checked: 95, 90, 85 dBA for 2, 3, 3 h is 106.25 % (90.4 dBA); 92 dBA for 8 h is 131.95 %,
        printed as 131 because the rounded T of 6.1 h was used.
    """
    levels, times = (level_1, level_2, level_3, level_4), (time_1, time_2, time_3, time_4)
    return _dose(levels, times, PROGRAMME_THRESHOLD)


@relation(
    equation=_EQUATION,
    source="osha_95",
    place="29 CFR 1910.95(a) and appendix A; levels from 90 dBA count",
    status="read",
    caution=HEARING,
)
def noise_dose_limit(
    level_1: Decibel,
    time_1: Hour,
    level_2: Decibel = NOTHING,
    time_2: Hour = NOTHING,
    level_3: Decibel = NOTHING,
    time_3: Hour = NOTHING,
    level_4: Decibel = NOTHING,
    time_4: Hour = NOTHING,
) -> NoiseDose:
    """Return the noise dose for the limit of 90 dBA; only levels from 90 dBA count.

    Valid: one to four spells, up to 130 dBA, 24 h together; quieter spells add nothing.
    Deviates: the dose for the hearing programme counts from 80 dBA and is larger.
    Checked: 95, 90, 85 dBA for 2, 3, 3 h is 87.5 %, against 106.25 % from 80 dBA; our numbers,
        published rule.
    """
    levels, times = (level_1, level_2, level_3, level_4), (time_1, time_2, time_3, time_4)
    return _dose(levels, times, LIMIT_THRESHOLD)


def _dose(levels: tuple[Fraction, ...], times: tuple[Fraction, ...], threshold: int) -> NoiseDose:
    require_not_below_zero(noise_level=min(levels), time=min(times))
    if max(levels) > LOUDEST:
        raise OutsideValidity("A noise level must be at most 130 dBA.")
    if sum(times) > LONGEST_DAY:
        raise OutsideValidity("The spells must not be longer than 24 h together.")
    first, second, third, fourth = (
        HUNDRED * time / reference_duration(level) if level >= threshold else NOTHING
        for level, time in zip(levels, times, strict=True)
    )
    dose = first + second + third + fourth
    if dose == 0:
        raise OutsideValidity(f"No spell reaches {threshold} dBA, so there is no dose.")
    average = exact_from(90 + 16.61 * log10(float(dose) / 100))
    return NoiseDose(first, second, third, fourth, dose, average)
