"""VOC as the can holds it and as the rules count it: with and without water and exempt solvent."""

from fractions import Fraction
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import (
    Gram,
    GramPerLitre,
    Litre,
    Percent,
    PoundPerUsGallon,
)
from generator.refinishing.bounds import (
    HUNDRED,
    require_above_zero,
    require_not_below_zero,
    require_share,
)
from generator.refinishing.relation import relation
from generator.refinishing.voc_mix import NOT_HEALTH, NOTHING

WATER_DENSITY = Fraction("8.33")  # lb per US gallon


class VocFigures(NamedTuple):
    """The two figures of one coating: over all of it, and without water and exempt solvent."""

    as_applied: GramPerLitre
    less_water: GramPerLitre


class VocFiguresUs(NamedTuple):
    """The same two figures in pounds for each US gallon."""

    as_applied: PoundPerUsGallon
    less_water: PoundPerUsGallon


@relation(
    equation="as_applied = (volatiles - water - exempt) ÷ coating; "
    "less_water = (volatiles - water - exempt) ÷ (coating - water_volume - exempt_volume)",
    source="voc_refinish_rule",
    place="40 CFR 59.104(a)(1), as the Virginia rule prints it",
    status="read",
    caution=NOT_HEALTH,
)
def regulatory_voc(
    volatiles: Gram,
    water: Gram,
    exempt: Gram,
    coating: Litre,
    water_volume: Litre,
    exempt_volume: Litre,
) -> VocFigures:
    """Return the VOC of a coating from what evaporates, both as applied and less water and exempts.

    Valid: masses and volumes from zero up; water and exempt solvent are part of both.
    Deviates: the rules use the second figure; more water cannot make a coating comply.
    Checked: 620 g of volatiles with 450 g in 0.451 L of water in 1 L are 170.0 and 309.7 g/L;
        our numbers, published rule.
    """
    require_above_zero(volatiles=volatiles)
    require_not_below_zero(water=water, exempt_solvent=exempt)
    if water + exempt > volatiles:
        raise OutsideValidity("Water and exempt solvent weigh more than all that evaporates.")
    return voc_less_water(
        Fraction(volatiles - water - exempt), coating, water_volume, exempt_volume
    )


@relation(
    equation="as_applied = voc_mass ÷ coating; "
    "less_water = voc_mass ÷ (coating - water_volume - exempt_volume)",
    source="voc_answers",
    place="pooled example of 100 gallons",
    status="restated",
    caution=NOT_HEALTH,
)
def voc_less_water(
    voc_mass: Gram, coating: Litre, water_volume: Litre, exempt_volume: Litre = NOTHING
) -> VocFigures:
    """Return the VOC of a coating as applied and less water and exempts from the solvent it holds.

    Valid: coating above zero; water and exempt solvent together less than the coating.
    Deviates: as regulatory_voc.
    Checked: 33.2 lb in 100 gal with 62.4 gal of water are 0.332 and 0.883 lb/gal; printed.
    """
    require_above_zero(volume_of_coating=coating)
    require_not_below_zero(
        mass_of_solvent=voc_mass, volume_of_water=water_volume, volume_of_exempts=exempt_volume
    )
    counted = coating - water_volume - exempt_volume
    if counted <= 0:
        raise OutsideValidity("Water and exempt solvent must fill less than the whole coating.")
    return VocFigures(Fraction(voc_mass) / coating, Fraction(voc_mass) / counted)


@relation(
    equation="as_applied = (100 % - solids - water) × density ÷ 100 %; "
    "less_water = as_applied ÷ (1 - water × density ÷ (100 % × water_density))",
    source="voc_question_2004",
    place="worked answer, March 2004",
    status="read",
    caution=NOT_HEALTH,
)
def voc_from_weight_percent(
    solids: Percent,
    water: Percent,
    density: PoundPerUsGallon,
    water_density: PoundPerUsGallon = WATER_DENSITY,
) -> VocFiguresUs:
    """Return the VOC of a waterborne coating from its percentages by weight.

    Valid: solids above 0 %, water from 0 % up, together at most 100 %; no exempt solvent;
        water taken as 8.33 lb/gal unless another figure is given.
    Deviates: 8.33 and 8.34 lb/gal are both in use for water and move the last figure.
    Checked: 20.8 % solids, 53 % water, 8.52 lb/gal are 2.23 and 4.87 lb/gal;
        the answer prints the same.
    """
    require_share(solids_by_weight=solids)
    require_not_below_zero(water_by_weight=water)
    require_above_zero(density=density, density_of_water=water_density)
    if solids + water > HUNDRED:
        raise OutsideValidity("Solids and water together must not be over 100 % by weight.")
    solvent = (HUNDRED - solids - water) * density / HUNDRED
    water_share = water * density / (HUNDRED * water_density)
    if water_share >= 1:
        raise OutsideValidity("The water alone would fill the whole coating.")
    return VocFiguresUs(solvent, solvent / (1 - water_share))
