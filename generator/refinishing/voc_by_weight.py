"""VOC of a mix in percent by weight: true to mass, and as a simplified sheet averages it."""

from fractions import Fraction
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import GramPerMillilitre, Parts, Percent
from generator.refinishing.bounds import HUNDRED, require_above_zero, three_parts
from generator.refinishing.relation import relation
from generator.refinishing.voc_mix import NOTHING


class WeightPercent(NamedTuple):
    """VOC of a mix by weight: true to mass, and averaged by volume share as a simplified sheet."""

    mixed_density: GramPerMillilitre
    by_mass: Percent
    by_volume_share: Percent


@relation(
    equation="mixed_density = (base_part × base_density + hardener_part × hardener_density"
    " + thinner_part × thinner_density) ÷ all_parts; "
    "by_mass = (base_part × base_density × base_voc + hardener_part × hardener_density"
    " × hardener_voc + thinner_part × thinner_density × thinner_voc)"
    " ÷ (all_parts × mixed_density); "
    "by_volume_share = (base_part × base_voc + hardener_part × hardener_voc"
    " + thinner_part × thinner_voc) ÷ all_parts",
    source="agency_mix_sheet",
    place="multi-part coating example",
    status="read",
)
def voc_weight_percent(
    parts: Parts,
    base_voc: Percent,
    hardener_voc: Percent,
    base_density: GramPerMillilitre,
    hardener_density: GramPerMillilitre,
    thinner_voc: Percent = NOTHING,
    thinner_density: GramPerMillilitre = NOTHING,
) -> WeightPercent:
    """Return the VOC of a mix in percent by weight, true to mass and by the simplified average.

    Valid: parts by volume; VOC in percent by weight of each; densities above zero.
    Deviates: percent by weight averaged by volume share is not true to mass; name which.
    Checked: 60:30:10 at 62, 100, 49 % and 10.5, 7.5, 6.75 lb/gal is 70.3 % by mass; the sheet
        prints the simplified 72.1 from the same inputs.
    """
    base, hardener, thinner = three_parts(parts)
    require_above_zero(density_of_base=base_density, density_of_hardener=hardener_density)
    if thinner:
        require_above_zero(density_of_thinner=thinner_density)
    shares = (base_voc, hardener_voc, thinner_voc)
    if min(shares) < 0 or max(shares) > HUNDRED:
        raise OutsideValidity("VOC by weight must be from 0 % to 100 %.")
    masses = (base * base_density, hardener * hardener_density, thinner * thinner_density)
    volumes = (base, hardener, thinner)
    return WeightPercent(
        sum(masses, NOTHING) / sum(volumes), _average(masses, shares), _average(volumes, shares)
    )


def _average(weights: tuple[Fraction, ...], values: tuple[Fraction, ...]) -> Fraction:
    return sum((w * v for w, v in zip(weights, values, strict=True)), NOTHING) / sum(weights)
