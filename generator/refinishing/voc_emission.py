"""Solvent that leaves a shop: from one job, from a year, and what a permit counts as possible."""

from fractions import Fraction
from typing import NamedTuple

from generator.refinishing.annotations import (
    Bare,
    GramPerLitre,
    Hour,
    Kilogram,
    Litre,
    Percent,
    PoundPerUsGallon,
    UsGallon,
    UsShortTon,
)
from generator.refinishing.bounds import (
    HUNDRED,
    require_above_zero,
    require_not_below_zero,
    require_share,
)
from generator.refinishing.relation import relation

GRAMS_PER_KILOGRAM = 1000
POUNDS_PER_SHORT_TON = 2000


class PotentialEmission(NamedTuple):
    """What a shop could give off if it never stopped."""

    vehicles: Bare
    emission: UsShortTon


@relation(
    equation="job_emission = (sprayed × voc + cleanup × cleanup_voc × (100 % - recovered)"
    " ÷ 100 %) ÷ 1000",
    source="common_practice",
    place="volume times VOC, less what is caught",
    status="definition",
)
def job_emission(
    sprayed: Litre,
    voc: GramPerLitre,
    cleanup: Litre,
    cleanup_voc: GramPerLitre,
    recovered: Percent,
) -> Kilogram:
    """Return the solvent that one job sends into the air, with the cleaning after it.

    Valid: amounts from zero up; VOC as applied, not less water; recovered above 0 % up to 100 %.
    Deviates: all that is not caught counts as gone into the air.
    Checked: 1.4 L at 420 g/L, 0.3 L at 860 g/L with 60 % caught is 0.691 kg; arithmetic.
    """
    require_not_below_zero(
        sprayed_amount=sprayed, voc=voc, cleaning_solvent=cleanup, voc_of_cleaning=cleanup_voc
    )
    require_share(recovered_share=recovered)
    lost = cleanup * cleanup_voc * (HUNDRED - recovered) / HUNDRED
    return (sprayed * voc + lost) / GRAMS_PER_KILOGRAM


@relation(
    equation="vehicles = open_hours ÷ hours_per_vehicle; "
    "emission = vehicles × volume_per_vehicle × voc ÷ 2000",
    source="shop_emission_template",
    place="potential to emit, coating line",
    status="restated",
)
def potential_emission(
    open_hours: Hour,
    hours_per_vehicle: Hour,
    volume_per_vehicle: UsGallon,
    voc: PoundPerUsGallon,
) -> PotentialEmission:
    """Return the vehicles and the short tons of solvent a shop could reach without a stop.

    Valid: all above zero; a short ton is 2000 lb.
    Deviates: a permit may cap hours or gallons; add products up before rounding.
    Checked: 8760 h at 2.5833 h, 0.5 gal and 1.39 lb/gal are 3391 vehicles and 1.18 tons; the
        template prints the same.
    """
    require_above_zero(open_hours=open_hours, hours_for_each_vehicle=hours_per_vehicle)
    vehicles = Fraction(open_hours) / hours_per_vehicle
    return PotentialEmission(vehicles, yearly_emission(vehicles, volume_per_vehicle, voc))


@relation(
    equation="yearly_emission = vehicles × volume_per_vehicle × voc ÷ 2000",
    source="shop_emission_template",
    place="potential to emit, further products",
    status="restated",
)
def yearly_emission(
    vehicles: Bare, volume_per_vehicle: UsGallon, voc: PoundPerUsGallon
) -> UsShortTon:
    """Return the short tons of solvent that a number of vehicles gives off.

    Valid: all above zero; a short ton is 2000 lb.
    Deviates: add products up before rounding.
    Checked: 3391 vehicles, 0.125 gal and 0.46 lb/gal are 0.10 tons; the template prints the same.
    """
    require_above_zero(number_of_vehicles=vehicles, volume_for_each_vehicle=volume_per_vehicle)
    require_above_zero(voc=voc)
    return Fraction(vehicles * volume_per_vehicle * voc) / POUNDS_PER_SHORT_TON
