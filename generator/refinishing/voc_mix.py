"""VOC of what is poured together, and how much thinner a limit leaves."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Gram, GramPerLitre, Litre, Parts
from generator.refinishing.bounds import require_above_zero, require_not_below_zero, three_parts
from generator.refinishing.relation import relation

NOT_HEALTH = (
    "A low VOC figure is no health figure: breathing protection stays as the safety data sheet "
    "says."
)
THINNER_CAUTION = (
    "Never thin past the data sheet, whatever a limit would still allow; extra thinner is more "
    "vapour to breathe and to burn."
)
NOTHING = Fraction(0)


@relation(
    equation="voc_of_mix = (volume_1 × voc_1 + volume_2 × voc_2 + volume_3 × voc_3"
    " + volume_4 × voc_4) ÷ (volume_1 + volume_2 + volume_3 + volume_4)",
    source="voc_guidebook",
    place="appendix on VOC in coatings, two-part example",
    status="read",
    caution=NOT_HEALTH,
)
def voc_of_mix(
    volume_1: Litre,
    voc_1: GramPerLitre,
    volume_2: Litre,
    voc_2: GramPerLitre,
    volume_3: Litre = NOTHING,
    voc_3: GramPerLitre = NOTHING,
    volume_4: Litre = NOTHING,
    voc_4: GramPerLitre = NOTHING,
) -> GramPerLitre:
    """Return the VOC of two to four materials poured together.

    Valid: two volumes above zero, the others from zero up; no water and no exempt solvent.
    Deviates: volumes are taken to add up; a laboratory test may find more.
    Checked: 1 gal at 2.5 and 0.25 gal at 6.8 lb/gal give 3.36; the guidebook prints the same.
    """
    require_above_zero(first_volume=volume_1, second_volume=volume_2)
    require_not_below_zero(volume=min(volume_3, volume_4), voc=min(voc_1, voc_2, voc_3, voc_4))
    mass = volume_1 * voc_1 + volume_2 * voc_2 + volume_3 * voc_3 + volume_4 * voc_4
    return Fraction(mass) / (volume_1 + volume_2 + volume_3 + volume_4)


@relation(
    equation="voc_ready_to_spray = (base_part × base_voc + hardener_part × hardener_voc"
    " + thinner_part × thinner_voc) ÷ all_parts",
    source="voc_guidebook",
    place="appendix on VOC in coatings, rule of the two-part example",
    status="read",
    caution=NOT_HEALTH,
)
def voc_ready_to_spray(
    parts: Parts,
    base_voc: GramPerLitre,
    hardener_voc: GramPerLitre,
    thinner_voc: GramPerLitre = NOTHING,
) -> GramPerLitre:
    """Return the VOC of a mix from its mixing ratio by volume.

    Valid: two or three parts above zero; no water and no exempt solvent; VOC from zero up.
    Deviates: as voc_of_mix.
    Checked: 4:1:1 at 420, 510 and 860 g/L gives 508.33 g/L; our numbers, published rule.
    """
    base, hardener, thinner = three_parts(parts)
    require_not_below_zero(voc=min(base_voc, hardener_voc, thinner_voc))
    mass = base * base_voc + hardener * hardener_voc + thinner * thinner_voc
    return mass / (base + hardener + thinner)


@relation(
    equation="voc_after_thinner = (voc_mass + thinner × thinner_voc) ÷ (volume + thinner)",
    source="voc_guidebook",
    place="appendix on VOC in coatings, example of thinning",
    status="read",
    caution=NOT_HEALTH,
)
def voc_after_thinner(
    volume: Litre, voc_mass: Gram, thinner: Litre, thinner_voc: GramPerLitre
) -> GramPerLitre:
    """Return the VOC of a mix after thinner went in.

    Valid: volume above zero, the rest from zero up; no water and no exempt solvent.
    Deviates: as voc_of_mix.
    Checked: 5 gal holding 15.9 lb with 0.25 gal of 6.4 lb/gal is 3.33 lb/gal; the guidebook
        prints the same.
    """
    _require_mix(volume, voc_mass, thinner_voc)
    require_not_below_zero(thinner=thinner)
    return (Fraction(voc_mass) + thinner * thinner_voc) / (volume + thinner)


@relation(
    equation="maximum_thinner = (limit × volume - voc_mass) ÷ (thinner_voc - limit)",
    source="voc_guidebook",
    place="appendix on VOC in coatings, rule of the thinning example turned round",
    status="read",
    rounding={"maximum_thinner": "down"},
    limit={"maximum_thinner": "maximum"},
    caution=THINNER_CAUTION,
)
def maximum_thinner(
    volume: Litre, voc_mass: Gram, thinner_voc: GramPerLitre, limit: GramPerLitre
) -> Litre:
    """Return the most thinner that keeps a mix within a VOC limit; round it down.

    Valid: a mix not over the limit, a thinner above it; no water and no exempt solvent.
    Deviates: who is bound by the limit differs from place to place.
    Checked: 4 gal holding 11 lb, thinner 6.8 and limit 3.5 lb/gal leave 0.90 gal; 0.91 breaks
        the limit; our numbers, published rule.
    """
    _require_mix(volume, voc_mass, thinner_voc)
    require_above_zero(limit=limit)
    if voc_mass > limit * volume:
        raise OutsideValidity("The mix is already over the limit, so no thinner may go in.")
    if thinner_voc <= limit:
        raise OutsideValidity("The thinner is not above the limit, so the limit sets no maximum.")
    return Fraction(limit * volume - voc_mass) / (thinner_voc - limit)


def _require_mix(volume: Fraction, voc_mass: Fraction, thinner_voc: Fraction) -> None:
    require_above_zero(volume=volume)
    require_not_below_zero(mass_of_solvent=voc_mass, voc_of_the_thinner=thinner_voc)
