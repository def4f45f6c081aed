"""Volume solids: the share of the paint that stays on the panel."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Micrometre, Parts, Percent
from generator.refinishing.bounds import (
    HUNDRED,
    require_above_zero,
    require_not_below_zero,
    require_share,
    three_parts,
)
from generator.refinishing.relation import relation


@relation(
    equation="volume_solids_from_films = 100 % × dry_film ÷ wet_film",
    source="inspector_exercises",
    place="volume solids from 53 and 110 µm",
    status="restated",
)
def volume_solids_from_films(dry_film: Micrometre, wet_film: Micrometre) -> Percent:
    """Return the volume solids of the paint as sprayed from its wet and dry film.

    Valid: both films above zero; the dry film not thicker than the wet film.
    Deviates: none.
    Checked: 53 µm from 110 µm is 48.18 %; the exercise sheet prints the same.
    """
    require_above_zero(dry_film=dry_film, wet_film=wet_film)
    if dry_film > wet_film:
        raise OutsideValidity("A dry film is never thicker than the wet film it came from.")
    return HUNDRED * dry_film / wet_film


@relation(
    equation="solids_after_thinning = 100 % × volume_solids ÷ (100 % + thinner)",
    source="thinned_solids_article",
    place="one gallon at 60 % with one quart of thinner",
    status="restated",
)
def solids_after_thinning(volume_solids: Percent, thinner: Percent) -> Percent:
    """Return the volume solids that are left after thinning.

    Valid: volume solids above 0 % and at most 100 %; thinner in percent by volume of the
        unthinned paint.
    Deviates: volumes are taken to add up.
    Checked: 60 % thinned 25 % is 48 %, 65 % thinned 20 % is 54.17 %; article and slides agree.
    """
    require_share(volume_solids=volume_solids)
    require_not_below_zero(thinner=thinner)
    return HUNDRED * volume_solids / (HUNDRED + thinner)


@relation(
    equation="solids_of_mix = (base_part × base_solids + hardener_part × hardener_solids"
    " + thinner_part × thinner_solids) ÷ all_parts",
    source="common_practice",
    place="mean of the parts by volume",
    status="definition",
)
def solids_of_mix(
    parts: Parts,
    base_solids: Percent,
    hardener_solids: Percent,
    thinner_solids: Percent = Fraction(0),
) -> Percent:
    """Return the volume solids of a mix from those of its cans.

    Valid: parts above zero; base solids above 0 %; no can above 100 %.
    Deviates: ideal mixing, volumes are taken to add up.
    Checked: 4:1:1 of 52, 45 and 0 % is 42.17 %; arithmetic.
    """
    require_share(volume_solids_of_the_base=base_solids)
    require_not_below_zero(solids_of_the_hardener=hardener_solids)
    require_not_below_zero(solids_of_the_thinner=thinner_solids)
    if max(hardener_solids, thinner_solids) > HUNDRED:
        raise OutsideValidity("Volume solids cannot be above 100 %.")
    base, hardener, thinner = three_parts(parts)
    solids = base * base_solids + hardener * hardener_solids + thinner * thinner_solids
    return solids / (base + hardener + thinner)
