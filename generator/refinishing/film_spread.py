"""How far paint goes, in metric and in US units."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import (
    Micrometre,
    Mil,
    Percent,
    SquareFoot,
    SquareFootPerUsGallon,
    SquareMetrePerLitre,
    UsGallon,
)
from generator.refinishing.bounds import (
    HUNDRED,
    require_above_zero,
    require_share,
)
from generator.refinishing.relation import relation

# the trade rounds 231 in³ × 1000 ÷ 144, which is 1604.17, to 1604 in every published table read
FT2_MIL_PER_US_GALLON = Fraction(1604)
M2_UM_PER_LITRE = Fraction(1000)


@relation(
    equation="spreading_rate = 1000 × volume_solids ÷ 100 % ÷ dry_film",
    source="film_slides",
    place="theoretical spreading rate",
    status="restated",
)
def spreading_rate(volume_solids: Percent, dry_film: Micrometre) -> SquareMetrePerLitre:
    """Return the area that one litre covers when nothing is lost.

    Valid: volume solids above 0 % and at most 100 %; dry film above zero.
    Deviates: none; a litre of pure solids covers 1000 m² at 1 µm.
    Checked: 65 % at 100 µm is 6.5 m²/L, at 125 µm 5.2 m²/L; slides and bulletin print the same.
    """
    require_share(volume_solids=volume_solids)
    require_above_zero(dry_film=dry_film)
    return M2_UM_PER_LITRE * volume_solids / HUNDRED / dry_film


@relation(
    equation="spreading_rate_us = 1604 × volume_solids ÷ 100 % ÷ dry_film",
    source="spread_guide",
    place="theoretical spreading rate with 1604",
    status="restated",
)
def spreading_rate_us(volume_solids: Percent, dry_film: Mil) -> SquareFootPerUsGallon:
    """Return the area that one US gallon covers when nothing is lost.

    Valid: volume solids above 0 % and at most 100 %; dry film above zero.
    Deviates: 1604 is the trade's rounding of 1604.17; one handbook rounds on to 1600.
    Checked: 65 % at 5 mil is 208.52 ft²/gal; the bulletin prints the same.
    """
    require_share(volume_solids=volume_solids)
    require_above_zero(dry_film=dry_film)
    return FT2_MIL_PER_US_GALLON * volume_solids / HUNDRED / dry_film


@relation(
    equation="area_covered_us = 1604 × volume × volume_solids ÷ 100 %"
    " × transfer_efficiency ÷ 100 % ÷ dry_film",
    source="coverage_2003",
    place="worked example of 52 % solids at 1.5 mil",
    status="read",
)
def area_covered_us(
    volume: UsGallon, volume_solids: Percent, transfer_efficiency: Percent, dry_film: Mil
) -> SquareFoot:
    """Return the area that a volume covers when part of the spray misses.

    Valid: volume and dry film above zero; solids and efficiency above 0 % and at most 100 %.
    Deviates: 1604 is the trade's rounding of 1604.17.
    Checked: 1 gal at 52 % and 30 % at 1.5 mil covers 167 ft²; the source prints the same, a
        later answer from the same place divides where it should multiply.
    """
    require_above_zero(volume=volume)
    require_share(transfer_efficiency=transfer_efficiency)
    return volume * spreading_rate_us(volume_solids, dry_film) * transfer_efficiency / HUNDRED


@relation(
    equation="practical_spreading_rate = theoretical × (100 % - loss) ÷ 100 %",
    source="film_slides",
    place="consumption with loss",
    status="restated",
)
def practical_spreading_rate(
    theoretical: SquareMetrePerLitre, loss: Percent
) -> SquareMetrePerLitre:
    """Return the area that one litre covers in practice.

    Valid: theoretical rate above zero; loss from 0 % to below 100 %.
    Deviates: the loss is a stated input; it is never a property of the paint.
    Checked: 6.5 m²/L with 40 % loss is 3.90 m²/L; the rule is published, the numbers are ours.
    """
    require_above_zero(theoretical_spreading_rate=theoretical)
    if not 0 <= loss < HUNDRED:
        raise OutsideValidity("The loss must be from 0 % to below 100 %.")
    return theoretical * (HUNDRED - loss) / HUNDRED


@relation(
    equation="wet_film_from_spread = 1000 ÷ spread",
    source="film_from_spread_article",
    place="wet film from the spread rate",
    status="restated",
)
def wet_film_from_spread(spread: SquareMetrePerLitre) -> Micrometre:
    """Return the wet film that a spreading rate means.

    Valid: spread above zero.
    Deviates: none.
    Checked: 8 m²/L is 125 µm wet; the article prints the same.
    """
    require_above_zero(spreading_rate=spread)
    return M2_UM_PER_LITRE / spread
