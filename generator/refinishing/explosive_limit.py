"""Vapour and fire: how near the air is to the lower explosive limit."""

from fractions import Fraction
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import (
    Bare,
    Celsius,
    CubicMetre,
    GramPerMillilitre,
    Millilitre,
    PartPerMillion,
    Percent,
)
from generator.refinishing.bounds import (
    HUNDRED,
    require_above_zero,
    require_not_below_zero,
    require_share,
)
from generator.refinishing.climate import require_shop_air
from generator.refinishing.relation import relation

PPM_PER_PERCENT = 10_000
GAS_CONSTANT = Fraction("8.31446261815324")  # joules for each mole and kelvin
ONE_ATMOSPHERE = 101_325  # pascals
ZERO_CELSIUS = Fraction("273.15")
ROOM = Fraction(20)
FIRE_FIGURE = (
    "A share of the lower explosive limit is a fire figure: 25 % of it is typically tens to over "
    "a hundred times the health limit. Keep sparks and flames out, and protect your breathing "
    "as the safety data sheet says."
)


class SpillVapour(NamedTuple):
    """What a spill becomes: its vapour, the share of the room's air, the share of the limit."""

    vapour: CubicMetre
    vapour_percent: Percent
    share_of_limit: Percent


@relation(
    equation="share_of_lower_limit = 100 % × concentration ÷ (10000 × lower_limit)",
    source="niosh_idlh_1994",
    place="entries with 10 % of the lower explosive limit in ppm",
    status="read",
    caution=FIRE_FIGURE,
)
def share_of_lower_limit(concentration: PartPerMillion, lower_limit: Percent) -> Percent:
    """Return a concentration as a share of the lower explosive limit.

    Valid: concentration from zero up; the limit in percent by volume from the safety data sheet.
    Deviates: sources print different limits for one solvent; the limit falls when it is hot.
    Checked: 1700 ppm at 1.7 % is 10 %; a NIOSH file prints the same.
    """
    require_not_below_zero(concentration=concentration)
    require_lower_limit(lower_limit)
    return HUNDRED * concentration / (PPM_PER_PERCENT * lower_limit)


@relation(
    equation="ppm_at_share = 10000 × lower_limit × share ÷ 100 %",
    source="niosh_idlh_1994",
    place="entries with 10 % of the lower explosive limit in ppm, rule turned round",
    status="read",
    rounding={"ppm_at_share": "down"},
    limit={"ppm_at_share": "maximum"},
    caution=FIRE_FIGURE,
)
def ppm_at_share(lower_limit: Percent, share: Percent) -> PartPerMillion:
    """Return the concentration at a share of the lower explosive limit; round it down.

    Valid: the limit in percent by volume from the safety data sheet; share above 0 % up to 100 %.
    Deviates: as share_of_lower_limit.
    Checked: 25 % of 1.5 % is 3750 ppm; our numbers, published rule.
    """
    require_lower_limit(lower_limit)
    require_share(share=share)
    return PPM_PER_PERCENT * lower_limit * share / HUNDRED


@relation(
    equation="vapour = 8.31446261815324 × volume × density × (273.15 + temperature)"
    " ÷ (molecular_mass × 101325); "
    "vapour_percent = 100 % × vapour ÷ room; "
    "share_of_limit = 100 % × vapour_percent ÷ lower_limit",
    source="ideal_gas",
    place="gas law at one atmosphere",
    status="from_memory",
    caution=FIRE_FIGURE,
)
def spill_vapour(
    volume: Millilitre,
    density: GramPerMillilitre,
    molecular_mass: Bare,
    room: CubicMetre,
    lower_limit: Percent,
    temperature: Celsius = ROOM,
) -> SpillVapour:
    """Return the vapour of a spill that has dried up, as a share of the room and of the limit.

    Valid: all evaporated and evenly mixed; all above zero; -45 to 60 °C; the vapour fits the room.
    Deviates: real vapour is heavier than air and pools low, so near the floor it is far more.
    Checked: 100 mL at 0.867 g/mL and molecular mass 92.14 in 60 m³ is 0.038 % and 3.4 % of a
        limit of 1.1 %; our numbers, gas law from memory.
    """
    require_above_zero(volume=volume, density=density, molecular_mass=molecular_mass, room=room)
    require_lower_limit(lower_limit)
    require_shop_air(temperature)
    moles = Fraction(volume * density) / molecular_mass
    vapour = GAS_CONSTANT * moles * (ZERO_CELSIUS + temperature) / ONE_ATMOSPHERE
    if vapour > room:
        raise OutsideValidity("That much vapour does not fit the room.")
    percent = HUNDRED * vapour / room
    return SpillVapour(vapour, percent, HUNDRED * percent / lower_limit)


def require_lower_limit(lower_limit: Fraction) -> None:
    """Refuse a lower explosive limit that no solvent of a paint shop has."""
    if not 0 < lower_limit < HUNDRED:
        raise OutsideValidity("The lower explosive limit must be above 0 % and below 100 %.")
