"""What a filter mask can and cannot be asked to do; isocyanates are never settled by a sum."""

from fractions import Fraction
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Bare, MilligramPerCubicMetre, PartPerMillion, Percent
from generator.refinishing.bounds import require_above_zero, require_not_below_zero
from generator.refinishing.relation import relation

FILTER_MASKS = (10, 50)  # half mask, full facepiece
FILTER_FACTORS = (*FILTER_MASKS, 25, 1000)  # and fan-fed loose hood, fan-fed full facepiece
LEAST_OXYGEN, FRESH_AIR = Fraction("19.5"), Fraction("20.9")  # percent by volume
NOTHING = Fraction(0)
MASK_CAUTION = (
    "Protection against isocyanates is never chosen by arithmetic: the safety data sheet and an "
    "air-fed mask decide. A factor holds only with training, a fit test and a change schedule "
    "for the cartridges."
)


class ProtectionNeeded(NamedTuple):
    """How many times over its limit a vapour is, and the least factor that covers it."""

    hazard_ratio: Bare
    factor: Bare


@relation(
    equation="hazard_ratio = concentration ÷ exposure_limit; "
    "factor = mask in the table (10, 50) that is at or next above hazard_ratio",
    source="osha_134",
    place="Table 1, air-purifying half mask 10 and full facepiece 50",
    status="read",
    rounding={"hazard_ratio": "up", "factor": "up"},
    limit={"factor": "minimum"},
    caution=MASK_CAUTION,
)
def protection_needed(
    concentration: PartPerMillion,
    exposure_limit: PartPerMillion,
    immediate_danger: PartPerMillion,
    isocyanates: Bare,
    supplied_air_asked: Bare = NOTHING,
    oxygen: Percent = FRESH_AIR,
) -> ProtectionNeeded:
    """Return the least protection factor of a filter mask for a vapour.

    Valid: a vapour below the level immediately dangerous to life or health (IDLH), oxygen from
        19.5 % up, and 0 for isocyanates and for supplied air asked by the safety data sheet.
    Deviates: the quarter mask is left out; the factor alone chooses no cartridge.
    Checked: 900 over a limit of 50 is 18, so 50; factors 10 and 50 read, numbers ours.
    """
    require_not_below_zero(concentration=concentration)
    require_above_zero(limit=exposure_limit, level_of_immediate_danger=immediate_danger)
    require_filter_allowed(isocyanates, supplied_air_asked, oxygen)
    if concentration >= immediate_danger:
        raise OutsideValidity("At or above the IDLH level no filter mask may be worn.")
    ratio = Fraction(concentration) / exposure_limit
    enough = [factor for factor in FILTER_MASKS if factor >= ratio]
    if not enough:
        raise OutsideValidity("No filter mask in the series reaches this; the air must be cleaned.")
    return ProtectionNeeded(ratio, Fraction(enough[0]))


@relation(
    equation="maximum_use_concentration = least of (protection_factor × exposure_limit,"
    " immediate_danger, cartridge_limit)",
    source="osha_134_maximum_use",
    place="29 CFR 1910.134(d)(3)(i)(B)",
    status="restated",
    rounding={"maximum_use_concentration": "down"},
    limit={"maximum_use_concentration": "maximum"},
    caution=MASK_CAUTION,
)
def maximum_use_concentration(
    protection_factor: Bare,
    exposure_limit: PartPerMillion,
    immediate_danger: PartPerMillion,
    cartridge_limit: PartPerMillion,
    isocyanates: Bare,
    supplied_air_asked: Bare = NOTHING,
    oxygen: Percent = FRESH_AIR,
) -> PartPerMillion:
    """Return the highest concentration of a vapour in which a filter mask may be worn.

    Valid: factors 10, 25, 50 and 1000; oxygen from 19.5 % up; 0 for isocyanates and for supplied
        air asked by the safety data sheet.
    Deviates: factor times limit alone is not the answer; the least of the three is.
    Checked: 10 × 50 ppm, IDLH 1000, cartridge 300 ppm is 300 ppm; the two caps are from memory.
    """
    require_above_zero(level_of_immediate_danger=immediate_danger, cartridge_limit=cartridge_limit)
    require_filter_allowed(isocyanates, supplied_air_asked, oxygen)
    product = _factor_times_limit(protection_factor, exposure_limit)
    return min(product, Fraction(immediate_danger), Fraction(cartridge_limit))


@relation(
    equation="maximum_use_in_dust = least of (protection_factor × exposure_limit,"
    " immediate_danger)",
    source="osha_134_maximum_use",
    place="29 CFR 1910.134(d)(3)(i)(B)",
    status="restated",
    rounding={"maximum_use_in_dust": "down"},
    limit={"maximum_use_in_dust": "maximum"},
    caution=MASK_CAUTION,
)
def maximum_use_in_dust(
    protection_factor: Bare,
    exposure_limit: MilligramPerCubicMetre,
    immediate_danger: MilligramPerCubicMetre,
    oxygen: Percent = FRESH_AIR,
) -> MilligramPerCubicMetre:
    """Return the highest concentration of a dust in which a filter mask may be worn.

    Valid: factors 10, 25, 50 and 1000; oxygen from 19.5 % up; sanding dust without isocyanates.
    Deviates: dust of paint that has not cured may hold isocyanates; then no sum decides.
    Checked: 10 × 50 µg/m³ of lead is 500 µg/m³; summaries of the rule print the product, the
        cap is from memory.
    """
    require_above_zero(level_of_immediate_danger=immediate_danger)
    require_filter_allowed(NOTHING, NOTHING, oxygen)
    product = _factor_times_limit(protection_factor, exposure_limit)
    return min(product, Fraction(immediate_danger))


def require_filter_allowed(isocyanates: Fraction, supplied_air: Fraction, oxygen: Fraction) -> None:
    """Refuse every case in which no filter mask may be reckoned with."""
    if isocyanates != 0:
        raise OutsideValidity("With isocyanates protection is never chosen by arithmetic.")
    if supplied_air != 0:
        raise OutsideValidity("The safety data sheet asks for supplied air, so no filter will do.")
    if oxygen < LEAST_OXYGEN:
        raise OutsideValidity("Below 19.5 % oxygen no filter mask may be worn.")


def _factor_times_limit(factor: Fraction, exposure_limit: Fraction) -> Fraction:
    if factor not in FILTER_FACTORS:
        raise OutsideValidity("The protection factor must be 10, 25, 50 or 1000.")
    require_above_zero(limit=exposure_limit)
    return Fraction(factor) * exposure_limit
