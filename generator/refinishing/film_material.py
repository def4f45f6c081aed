"""How much paint a job takes and what a volume of it leaves."""

from fractions import Fraction
from typing import NamedTuple

from generator.refinishing.annotations import (
    Bare,
    GramPerMillilitre,
    GramPerSquareMetre,
    Litre,
    Micrometre,
    Percent,
    SquareMetre,
)
from generator.refinishing.bounds import (
    HUNDRED,
    require_above_zero,
    require_share,
    require_whole_count,
)
from generator.refinishing.film_spread import M2_UM_PER_LITRE, spreading_rate
from generator.refinishing.relation import relation


class FilmPair(NamedTuple):
    """The wet film and the dry film it leaves."""

    wet: Micrometre
    dry: Micrometre


class TransferSwap(NamedTuple):
    """Paint with another gun, and how much less that is."""

    new_amount: Litre
    saved: Litre


@relation(
    equation="paint_needed = area × dry_film × coats ÷ 1000 ÷ (volume_solids ÷ 100 %)"
    " ÷ (transfer_efficiency ÷ 100 %)",
    source="film_slides",
    place="consumption with loss",
    status="restated",
    rounding={"paint_needed": "up"},
)
def paint_needed(
    area: SquareMetre,
    dry_film: Micrometre,
    coats: Bare,
    volume_solids: Percent,
    transfer_efficiency: Percent,
) -> Litre:
    """Return the litres of ready-mixed paint for a job.

    Valid: area and dry film of each coat above zero; whole coats; solids of the mix as sprayed
        and efficiency above 0 % and at most 100 %; round the amount to mix up.
    Deviates: nothing is added for what stays in cup and gun.
    Checked: 500 m² at 200 µm, 85 % and 60 % takes 196 L; the slides print the same.
    """
    require_above_zero(area=area)
    require_whole_count(coats=coats)
    require_share(transfer_efficiency=transfer_efficiency)
    without_loss = area * coats / spreading_rate(volume_solids, dry_film)
    return without_loss * HUNDRED / transfer_efficiency


@relation(
    equation="wet = 1000 × volume ÷ area; dry = 1000 × volume ÷ area × volume_solids ÷ 100 %",
    source="inspector_exercises",
    place="20 L on 108 m² at 45 %",
    status="restated",
)
def film_from_volume(volume: Litre, area: SquareMetre, volume_solids: Percent) -> FilmPair:
    """Return the mean wet and dry film that a volume leaves on an area.

    Valid: volume and area above zero; volume solids above 0 % and at most 100 %.
    Deviates: volume is what lands, so take off what misses first.
    Checked: 20 L on 108 m² at 45 % is 185.19 µm wet and 83.33 µm dry; the sheet prints the
        same, an older key rounds the wet film first and misses.
    """
    require_above_zero(volume=volume, area=area)
    require_share(volume_solids=volume_solids)
    wet = M2_UM_PER_LITRE * volume / area
    return FilmPair(wet, wet * volume_solids / HUNDRED)


@relation(
    equation="new_amount = old_amount × old_efficiency ÷ new_efficiency; "
    "saved = old_amount - new_amount",
    source="transfer_clinic",
    place="0.66 at 30 % against 70 %",
    status="read",
)
def transfer_swap(
    old_amount: Litre, old_efficiency: Percent, new_efficiency: Percent
) -> TransferSwap:
    """Return the paint for the same job with a gun of another transfer efficiency.

    Valid: amount above zero; both efficiencies above 0 % and at most 100 %.
    Deviates: saved falls below zero when the new gun is the worse one.
    Checked: 0.66 at 30 % becomes 0.28 at 70 %; the source prints the same, but its money
        multiplies the rounded saving and misses by three cents.
    """
    require_above_zero(old_amount=old_amount)
    require_share(old_transfer_efficiency=old_efficiency, new_transfer_efficiency=new_efficiency)
    new_amount = Fraction(old_amount) * old_efficiency / new_efficiency
    return TransferSwap(new_amount, old_amount - new_amount)


@relation(
    equation="mass_per_area = wet_film × density",
    source="mass_per_area_note",
    place="150 µm at 1.1 kg/L",
    status="restated",
)
def mass_per_area(wet_film: Micrometre, density: GramPerMillilitre) -> GramPerSquareMetre:
    """Return the grams of wet paint on each square metre.

    Valid: wet film and density above zero.
    Deviates: none; 1 µm over 1 m² is 1 mL.
    Checked: 150 µm at 1.1 g/mL is 165 g/m²; the note prints the same.
    """
    require_above_zero(wet_film=wet_film, density=density)
    return Fraction(wet_film) * density
