"""From what leaves the gun to the film on the panel."""

from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Gram, Micrometre, Percent
from generator.refinishing.annotations_air_and_cure import (
    Centimetre,
    CentimetrePerSecond,
    MillilitrePerMinute,
)
from generator.refinishing.bounds import (
    HUNDRED,
    require_above_zero,
    require_not_below_zero,
    require_share,
)
from generator.refinishing.relation import relation

SECONDS_PER_MINUTE = 60
UM_PER_CM = 10_000

SPRAYING = (
    "Spray only in the running booth with the breathing protection the safety data sheet names; "
    "isocyanate paint on supplied air."
)


@relation(
    equation="measured_transfer_efficiency = solids_on_part ÷ (paint_sprayed × weight_solids"
    " ÷ 100 %) × 100",
    source="transfer_efficiency_answer",
    place="solids on the part over solids sprayed, by mass",
    status="restated",
    caution=SPRAYING,
)
def measured_transfer_efficiency(
    solids_on_part: Gram, paint_sprayed: Gram, weight_solids: Percent
) -> Percent:
    """Return the share of the sprayed solids that stays on the part.

    Valid: masses above zero; the part weighed dry; solids by weight, above 0 % and at most
        100 %; not more solids on the part than were sprayed.
    Deviates: it holds for one gun, part and painter.
    Checked: 42 g of 160 g at 45 % is 58.3 %, 30 g of 150 g at 52 % is 38.5 %; the rule is
        published, the numbers are ours.
    """
    require_above_zero(mass_of_solids_on_the_part=solids_on_part, paint_sprayed=paint_sprayed)
    require_share(weight_solids=weight_solids)
    sprayed = Fraction(paint_sprayed) * weight_solids / HUNDRED
    if solids_on_part > sprayed:
        raise OutsideValidity("More solids are on the part than were sprayed; weigh again.")
    return solids_on_part / sprayed * HUNDRED


@relation(
    equation="wet_film_from_gun = fluid_flow ÷ 60 × transfer_efficiency ÷ 100 %"
    " ÷ (gun_speed × fan_width × (100 % - overlap) ÷ 100 %) × 10000",
    source="spray_volume_balance",
    place="paint that lands spread over the area swept",
    status="from_memory",
    caution=SPRAYING,
)
def wet_film_from_gun(
    fluid_flow: MillilitrePerMinute,
    gun_speed: CentimetrePerSecond,
    fan_width: Centimetre,
    overlap: Percent,
    transfer_efficiency: Percent,
) -> Micrometre:
    """Return the wet film that one coat of even strokes would leave.

    Valid: flow, speed and fan above zero; overlap from 0 % and below 100 %; efficiency by
        volume, above 0 % and at most 100 %.
    Deviates: from memory; an ideal without solvent lost in flight, so a comb reads lower.
    Checked: 200 mL/min, 50 cm/s, 25 cm, 50 % and 65 % is 34.7 µm; derived apart, not published.
    """
    require_above_zero(speed_of_the_gun=gun_speed)
    return _landing(fluid_flow, fan_width, overlap, transfer_efficiency) / gun_speed * UM_PER_CM


@relation(
    equation="gun_speed_for_film = fluid_flow ÷ 60 × transfer_efficiency ÷ 100 %"
    " ÷ (wet_film × fan_width × (100 % - overlap) ÷ 100 %) × 10000",
    source="spray_volume_balance",
    place="paint that lands spread over the area swept, solved for speed",
    status="from_memory",
    caution=SPRAYING,
)
def gun_speed_for_film(
    fluid_flow: MillilitrePerMinute,
    wet_film: Micrometre,
    fan_width: Centimetre,
    overlap: Percent,
    transfer_efficiency: Percent,
) -> CentimetrePerSecond:
    """Return the speed of the gun that would leave a wanted wet film.

    Valid: as wet_film_from_gun; wanted film above zero.
    Deviates: from memory; an ideal without solvent lost in flight.
    Checked: 220 mL/min, 40 µm, 26 cm, 50 % and 65 % is 45.8 cm/s; derived apart, not published.
    """
    require_above_zero(wet_film=wet_film)
    return _landing(fluid_flow, fan_width, overlap, transfer_efficiency) / wet_film * UM_PER_CM


def _landing(flow: Fraction, fan: Fraction, overlap: Fraction, efficiency: Fraction) -> Fraction:
    """Return what lands in a second on each centimetre of index, in cm²/s."""
    require_above_zero(fluid_flow=flow, fan_width=fan)
    require_not_below_zero(overlap=overlap)
    require_share(transfer_efficiency=efficiency)
    if overlap >= HUNDRED:
        raise OutsideValidity("The overlap must be below 100 %, or the gun never moves on.")
    index = fan * (HUNDRED - overlap) / HUNDRED
    return Fraction(flow) / SECONDS_PER_MINUTE * efficiency / HUNDRED / index
