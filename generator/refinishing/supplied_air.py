"""Air for air-fed masks: the least flow, and how dry breathing air from a compressor must be."""

from fractions import Fraction
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Bare, Celsius, CubicFootPerMinute, LitrePerMinute
from generator.refinishing.bounds import require_not_below_zero
from generator.refinishing.climate import require_shop_air
from generator.refinishing.relation import relation

TIGHT, LOOSE = 115, 170  # litres a minute at the inlet
TIGHT_US, LOOSE_US = 4, 6  # cubic feet a minute, as printed beside them
DRYER_BY = Fraction(50, 9)  # 10 Fahrenheit degrees
AIR_CAUTION = (
    "These are approval minima, at most 425 L/min for each mask, and no compressor size; "
    "breathing-air quality is tested apart and the maker's figure for the mask governs."
)


class SuppliedAir(NamedTuple):
    """The least air for all masks together, in both of the printed units."""

    flow: LitrePerMinute
    flow_us: CubicFootPerMinute


@relation(
    equation="flow = 115 × tight_fitting + 170 × loose_fitting; "
    "flow_us = 4 × tight_fitting + 6 × loose_fitting",
    source="niosh_approval_table_8",
    place="42 CFR 84 subpart J, Table 8",
    status="read",
    rounding={"flow": "up", "flow_us": "up"},
    limit={"flow": "minimum", "flow_us": "minimum"},
    caution=AIR_CAUTION,
)
def supplied_air_flow(tight_fitting: Bare, loose_fitting: Bare) -> SuppliedAir:
    """Return the least air that a number of air-fed masks needs together.

    Valid: whole numbers of masks, at least one; tight-fitting facepieces, loose-fitting hoods.
    Deviates: the two printed units are rounded pairs, so each is summed on its own.
    Checked: 1 facepiece and 2 hoods need 455 L/min or 16 cfm; figures read, sum ours.
    """
    require_not_below_zero(number_of_masks=min(tight_fitting, loose_fitting))
    if tight_fitting % 1 or loose_fitting % 1 or tight_fitting + loose_fitting < 1:
        raise OutsideValidity("Give whole numbers of masks, at least one.")
    return SuppliedAir(
        Fraction(TIGHT * tight_fitting + LOOSE * loose_fitting),
        Fraction(TIGHT_US * tight_fitting + LOOSE_US * loose_fitting),
    )


@relation(
    equation="breathing_air_dew_point = shop_temperature - 50 ÷ 9",
    source="wac_61605",
    place="breathing air from compressors, 10 °F below the surroundings",
    status="read",
    rounding={"breathing_air_dew_point": "down"},
    limit={"breathing_air_dew_point": "maximum"},
    caution=AIR_CAUTION,
)
def breathing_air_dew_point(shop_temperature: Celsius) -> Celsius:
    """Return the highest dew point that breathing air from a compressor may have.

    Valid: -45 to 60 °C; dew point at one atmosphere.
    Deviates: one of several limits of the grade; oil, carbon monoxide and oxygen have their own.
    Checked: 20 °C allows 14.4 °C; 10 °F read, sum ours.
    """
    require_shop_air(shop_temperature)
    return shop_temperature - DRYER_BY
