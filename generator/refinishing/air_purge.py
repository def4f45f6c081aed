"""How long moving air takes to thin out what hangs in a room."""

from fractions import Fraction
from math import log

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import (
    Bare,
    CubicFootPerMinute,
    CubicMetre,
    Hour,
    Minute,
    PartPerMillion,
    Percent,
)
from generator.refinishing.annotations_air_and_cure import (
    AirChangesPerHour,
    CubicFoot,
    CubicMetrePerHour,
)
from generator.refinishing.bounds import HUNDRED, require_above_zero
from generator.refinishing.climate import exact_from
from generator.refinishing.relation import relation

MINUTES_PER_HOUR = 60
WORST_MIXING = 10

NEVER_MASK_OFF = (
    "A figure for evenly mixed air, never a time to take a mask off. Isocyanate booths use the "
    "measured, posted clearance time, and the mask stays on until you are outside."
)


@relation(
    equation="removal_time = mixing_factor × 60 ÷ changes × ln(100 % ÷ (100 % - removal)), with"
    " ln the natural logarithm",
    source="mmwr_1994",
    place="table S3-1 and its note on the mixing factor",
    status="read",
    rounding={"removal_time": "up"},
    limit={"removal_time": "minimum"},
    caution=NEVER_MASK_OFF,
)
def removal_time(
    changes: AirChangesPerHour, removal: Percent, mixing_factor: Bare = Fraction(1)
) -> Minute:
    """Return how long air changes take to remove a share of what hangs in the air; round it up.

    Valid: air changes above zero; removal above 0 % and below 100 %; nothing new is given off;
        mixing factor from 1, perfect, to 10, poor: it multiplies the time.
    Deviates: other guides write an efficiency of at most 1 that divides the time.
    Checked: 6 an hour and 99 % is 46.05 min, 12 and 99 % 23.03, 20 and 99.9 % 20.7; the table
        prints 46, 23 and 21, rounded half up.
    """
    require_above_zero(air_changes=changes)
    if not 0 < removal < HUNDRED:
        raise OutsideValidity("The share removed must be above 0 % and below 100 %.")
    if not 1 <= mixing_factor <= WORST_MIXING:
        raise OutsideValidity("The mixing factor is from 1, perfect, to 10; it multiplies time.")
    left = float((HUNDRED - removal) / HUNDRED)
    return exact_from(-log(left) * MINUTES_PER_HOUR * float(mixing_factor) / float(changes))


@relation(
    equation="dilution_time = volume ÷ (flow × mixing_efficiency) × ln(start_level ÷ end_level),"
    " with ln the natural logarithm",
    source="dilution_note",
    place="purge of a room",
    status="restated",
    rounding={"dilution_time": "up"},
    limit={"dilution_time": "minimum"},
    caution=NEVER_MASK_OFF,
)
def dilution_time(
    volume: CubicFoot,
    flow: CubicFootPerMinute,
    start_level: PartPerMillion,
    end_level: PartPerMillion,
    mixing_efficiency: Bare = Fraction(1),
) -> Minute:
    """Return how long fresh air takes to bring a vapour down to a level; round it up.

    Valid: start level above the end level, both above zero; nothing new is given off; mixing
        efficiency above 0 and at most 1: it divides the time.
    Deviates: other tables use a mixing factor from 1 to 10 that multiplies the time.
    Checked: 3024 ft³, 9000 cfm, 400 to 20 ppm is 1.01 min, and 3.36 min at an efficiency of
        0.3; the rule is published, the numbers are ours.
    """
    require_above_zero(volume=volume, air_flow=flow, end_level=end_level)
    if not start_level > end_level:
        raise OutsideValidity("The level at the start must be above the level at the end.")
    if not 0 < mixing_efficiency <= 1:
        raise OutsideValidity("The mixing efficiency is above 0 and at most 1; it divides time.")
    fresh = float(flow) * float(mixing_efficiency)
    return exact_from(float(volume) / fresh * log(float(start_level) / float(end_level)))


@relation(
    equation="flow_from_half_life = ln 2 × volume ÷ half_life, with ln 2 about 0.6931",
    source="tracer_article",
    place="tracer-gas example, half gone in 1.4 h",
    status="restated",
    caution=NEVER_MASK_OFF,
)
def flow_from_half_life(volume: CubicMetre, half_life: Hour) -> CubicMetrePerHour:
    """Return the fresh air of a room from how long a harmless tracer takes to halve.

    Valid: volume and half-life above zero; the tracer evenly mixed.
    Deviates: it counts only the air that mixes; dead corners are left out.
    Checked: 20 m³ and 1.4 h is 9.9 m³/h, as the article prints.
    """
    require_above_zero(volume=volume, half_life=half_life)
    return exact_from(log(2) * float(volume) / float(half_life))
