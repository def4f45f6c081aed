"""Putting an over-poured mix back on its ratio."""

from fractions import Fraction
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import Millilitre
from generator.refinishing.bounds import require_above_zero, require_not_below_zero
from generator.refinishing.relation import relation

REBALANCE = (
    "Rebalance only if the data sheet allows it, the pot life has hardly begun and the cup has "
    "room; otherwise treat the mix as hazardous waste."
)


class OverpouredBase(NamedTuple):
    """What the other cans must come to when too much base went in."""

    hardener: Millilitre
    thinner: Millilitre
    hardener_extra: Millilitre
    thinner_extra: Millilitre
    total: Millilitre


class OverpouredHardener(NamedTuple):
    """What the other cans must come to when too much hardener went in."""

    base: Millilitre
    thinner: Millilitre
    base_extra: Millilitre
    thinner_extra: Millilitre
    total: Millilitre


@relation(
    equation="hardener = planned_hardener × poured_base ÷ planned_base; "
    "thinner = planned_thinner × poured_base ÷ planned_base; "
    "hardener_extra = hardener - planned_hardener; "
    "thinner_extra = thinner - planned_thinner; "
    "total = poured_base + hardener + thinner",
    source="common_practice",
    place="arithmetic of parts",
    status="definition",
    caution=REBALANCE,
)
def overpour_base(
    planned_base: Millilitre,
    poured_base: Millilitre,
    planned_hardener: Millilitre,
    planned_thinner: Millilitre,
) -> OverpouredBase:
    """Return the hardener and thinner that bring an over-poured base back on its ratio.

    Valid: planned base and hardener above zero; poured base not less than planned.
    Deviates: no published worked example was found; derived from the ratio alone.
    Checked: 430 mL poured for 400:100:100 asks for 107.5 mL of each; arithmetic.
    """
    require_above_zero(planned_base=planned_base, planned_hardener=planned_hardener)
    require_not_below_zero(planned_thinner=planned_thinner)
    scale = _scale(poured_base, planned_base)
    hardener, thinner = scale * planned_hardener, scale * planned_thinner
    return OverpouredBase(
        hardener,
        thinner,
        hardener - planned_hardener,
        thinner - planned_thinner,
        poured_base + hardener + thinner,
    )


@relation(
    equation="base = planned_base × poured_hardener ÷ planned_hardener; "
    "thinner = planned_thinner × poured_hardener ÷ planned_hardener; "
    "base_extra = base - planned_base; "
    "thinner_extra = thinner - planned_thinner; "
    "total = base + poured_hardener + thinner",
    source="common_practice",
    place="arithmetic of parts",
    status="definition",
    caution=REBALANCE,
)
def overpour_hardener(
    planned_base: Millilitre,
    planned_hardener: Millilitre,
    poured_hardener: Millilitre,
    planned_thinner: Millilitre,
) -> OverpouredHardener:
    """Return the base and thinner that bring an over-poured hardener back on its ratio.

    Valid: planned base and hardener above zero; poured hardener not less than planned.
    Deviates: no published worked example was found; derived from the ratio alone.
    Checked: 120 mL poured for 400:100:100 asks for 480 and 120 mL; arithmetic.
    """
    require_above_zero(planned_base=planned_base, planned_hardener=planned_hardener)
    require_not_below_zero(planned_thinner=planned_thinner)
    scale = _scale(poured_hardener, planned_hardener)
    base, thinner = scale * planned_base, scale * planned_thinner
    return OverpouredHardener(
        base,
        thinner,
        base - planned_base,
        thinner - planned_thinner,
        base + poured_hardener + thinner,
    )


def _scale(poured: Fraction, planned: Fraction) -> Fraction:
    if poured < planned:
        raise OutsideValidity("Less was poured than planned, so top that can up instead.")
    return Fraction(poured) / planned
