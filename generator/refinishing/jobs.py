"""A whole job worked through, from area and film to cans and cup fills."""

from fractions import Fraction
from math import ceil
from typing import NamedTuple

from generator.refinishing.annotations import (
    Bare,
    Fills,
    Micrometre,
    Millilitre,
    Parts,
    Percent,
    SquareMetre,
)
from generator.refinishing.bounds import HUNDRED, require_above_zero, require_not_below_zero
from generator.refinishing.film_material import paint_needed
from generator.refinishing.mixing import ISOCYANATE, split_total
from generator.refinishing.relation import relation

ML_PER_LITRE = 1000


class ReadyToSpray(NamedTuple):
    """What to mix for a job and how often the gun's cup is filled."""

    total: Millilitre
    base: Millilitre
    hardener: Millilitre
    thinner: Millilitre
    fills: Fills


@relation(
    equation="total = area × dry_film × coats ÷ (volume_solids ÷ 100 %)"
    " ÷ (transfer_efficiency ÷ 100 %) × (100 % + margin) ÷ 100 %; "
    "base = total × base_part ÷ all_parts; "
    "hardener = total × hardener_part ÷ all_parts; "
    "thinner = total × thinner_part ÷ all_parts; "
    "fills = total ÷ cup, rounded up",
    source="film_slides",
    place="consumption with loss, then split by parts",
    status="restated",
    rounding={"total": "up", "base": "up", "hardener": "up", "thinner": "up", "fills": "up"},
    caution=ISOCYANATE,
)
def ready_to_spray(
    area: SquareMetre,
    dry_film: Micrometre,
    coats: Bare,
    volume_solids: Percent,
    transfer_efficiency: Percent,
    margin: Percent,
    parts: Parts,
    cup: Millilitre,
) -> ReadyToSpray:
    """Return the ready-mixed paint for a job, split into its cans, and the cup fills.

    Valid: area, dry film of each coat and cup above zero; whole coats; solids of the mix as
        sprayed and efficiency above 0 % and at most 100 %; margin from 0 % up.
    Deviates: amounts rounded up one by one drift off the ratio by up to a millilitre; on a
        scale use the total and the ratio.
    Checked: 2.2 m², 2 coats of 25 µm, 42 %, 65 %, 10 %, 4:1:1 is 443.2 mL in one fill;
        arithmetic on the published consumption rule.
    """
    require_above_zero(size_of_the_cup=cup)
    require_not_below_zero(margin=margin)
    litres = paint_needed(area, dry_film, coats, volume_solids, transfer_efficiency)
    total = litres * ML_PER_LITRE * (HUNDRED + margin) / HUNDRED
    mix = split_total(total, parts)
    return ReadyToSpray(total, *mix, Fraction(ceil(total / cup)))
