"""Air that a rule asks for to keep solvent vapour at a quarter of the lower explosive limit."""

from fractions import Fraction

from generator.refinishing.annotations import (
    CubicFootPerMinute,
    CubicFootPerUsGallon,
    Minute,
    Percent,
    UsGallon,
)
from generator.refinishing.bounds import HUNDRED, require_above_zero
from generator.refinishing.explosive_limit import FIRE_FIGURE, require_lower_limit
from generator.refinishing.relation import relation

QUARTERS = 4  # a quarter of the limit needs four times the air


@relation(
    equation="dilution_air = 4 × (100 % - lower_limit) × vapour_per_gallon ÷ lower_limit",
    source="osha_94_dilution",
    place="29 CFR 1910.94(c)(6)(ii), example and Table G-11",
    status="from_memory",
    rounding={"dilution_air": "up"},
    limit={"dilution_air": "minimum"},
    caution=FIRE_FIGURE,
)
def dilution_air(
    vapour_per_gallon: CubicFootPerUsGallon, lower_limit: Percent
) -> CubicFootPerUsGallon:
    """Return the air the rule asks for with each US gallon evaporated; round it up.

    Valid: vapour of a gallon above zero; the limit in percent by volume, above 0 %.
    Deviates: the rule's own arithmetic; an exact dilution needs 1 to 2 % more air, and the
        limit falls when it is hot.
    Checked: 30.4 ft³ at 1.4 % needs 8565 ft³; rule and rows are from memory.
    """
    require_above_zero(vapour_of_a_gallon=vapour_per_gallon)
    require_lower_limit(lower_limit)
    return QUARTERS * (HUNDRED - lower_limit) * vapour_per_gallon / lower_limit


@relation(
    equation="dilution_air_flow = 4 × (100 % - lower_limit) × vapour_per_gallon × evaporated"
    " ÷ (lower_limit × time)",
    source="osha_94_dilution",
    place="29 CFR 1910.94(c)(6)(ii), example and Table G-11",
    status="from_memory",
    rounding={"dilution_air_flow": "up"},
    limit={"dilution_air_flow": "minimum"},
    caution=FIRE_FIGURE,
)
def dilution_air_flow(
    vapour_per_gallon: CubicFootPerUsGallon,
    lower_limit: Percent,
    evaporated: UsGallon,
    time: Minute,
) -> CubicFootPerMinute:
    """Return the air flow the rule asks for while solvent evaporates; round it up.

    Valid: as dilution_air; gallons and minutes above zero; an even rate of evaporation.
    Deviates: as dilution_air; a booth's face velocity is a rule of its own.
    Checked: 30.4 ft³, 1.4 %, 0.5 gal in 60 min needs 71.4 cfm; our numbers.
    """
    require_above_zero(evaporated_solvent=evaporated, time=time)
    return dilution_air(vapour_per_gallon, lower_limit) * evaporated / Fraction(time)
