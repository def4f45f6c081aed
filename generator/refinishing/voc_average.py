"""VOC of a whole paint system, and for each volume of solids."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import (
    GramPerLitre,
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
from generator.refinishing.voc_mix import NOTHING

SOLVENT_DENSITY = Fraction("7.36")  # lb per US gallon, the value the rule sets


@relation(
    equation="voc_of_two_stages = (basecoat + 2 × clearcoat) ÷ 3",
    source="district_rule_423",
    place="average of a basecoat and clearcoat system",
    status="read",
)
def voc_of_two_stages(basecoat: GramPerLitre, clearcoat: GramPerLitre) -> GramPerLitre:
    """Return the average VOC of a base and clear system; the clear counts twice.

    Valid: both from zero up, both less water and exempts.
    Deviates: many rules allow no averaging at all.
    Checked: 700 and 420 g/L give 513.3 g/L; our numbers, published rule.
    """
    require_not_below_zero(voc_of_the_basecoat=basecoat, voc_of_the_clearcoat=clearcoat)
    return Fraction(basecoat + 2 * clearcoat) / 3


@relation(
    equation="voc_of_multistage = (basecoat + midcoat_1 + midcoat_2 + 2 × clearcoat) ÷ (M + 3),"
    " with M midcoats",
    source="voc_refinish_multistage",
    place="40 CFR 59.104(a)(2)",
    status="from_memory",
)
def voc_of_multistage(
    basecoat: GramPerLitre,
    clearcoat: GramPerLitre,
    midcoat_1: GramPerLitre = NOTHING,
    midcoat_2: GramPerLitre = NOTHING,
) -> GramPerLitre:
    """Return the average VOC of base, midcoats and clear; the clear counts twice.

    Valid: from zero up, all less water and exempts; a midcoat of zero is not there.
    Deviates: the rule's equation is an image that was not read, so its form is from memory.
    Checked: 680, one midcoat of 640 and clear 440 g/L give 550 g/L; our numbers.
    """
    require_not_below_zero(voc=min(basecoat, clearcoat, midcoat_1, midcoat_2))
    midcoats = sum(midcoat > 0 for midcoat in (midcoat_1, midcoat_2))
    return Fraction(basecoat + midcoat_1 + midcoat_2 + 2 * clearcoat) / (midcoats + 3)


@relation(
    equation="voc_per_solids = voc ÷ (1 - voc ÷ solvent_density)",
    source="voc_density_rule",
    place="5 CCR 1001-29, appendix E, table of VOC per gallon of solids",
    status="read",
)
def voc_per_solids(
    voc: PoundPerUsGallon, solvent_density: PoundPerUsGallon = SOLVENT_DENSITY
) -> PoundPerUsGallon:
    """Return the VOC for each gallon of solids from the VOC less water and exempts.

    Valid: VOC from zero up and below the density of the solvent, set as 7.36 lb/gal.
    Deviates: never put in the figure over the whole coating; it leaves the water in.
    Checked: 2.8, 3.7 and 4.2 lb/gal are 4.5, 7.4 and 9.8; the table prints the same.
    """
    require_not_below_zero(voc=voc)
    require_above_zero(density_of_the_solvent=solvent_density)
    if voc >= solvent_density:
        raise OutsideValidity("The VOC must be below the density of the solvent itself.")
    return Fraction(voc) / (1 - Fraction(voc) / solvent_density)


@relation(
    equation="voc_over_solids = 100 % × voc ÷ volume_solids",
    source="common_practice",
    place="mass of solvent over volume of solids",
    status="definition",
)
def voc_over_solids(voc: GramPerLitre, volume_solids: Percent) -> GramPerLitre:
    """Return the VOC for each litre of solids from VOC and volume solids of the same coating.

    Valid: VOC from zero up; both figures of the whole coating; solids above 0 % up to 100 %.
    Deviates: voc_per_solids works the solids out from a set solvent density instead.
    Checked: 420 g/L at 42 % is 1000 g for each litre of solids; arithmetic.
    """
    require_not_below_zero(voc=voc)
    require_share(volume_solids=volume_solids)
    return HUNDRED * voc / volume_solids
