"""Thinner as a percentage: of what, and how much that is."""

from fractions import Fraction
from typing import NamedTuple

from generator.refinishing.annotations import Bare, Millilitre, Parts, Percent
from generator.refinishing.bounds import (
    HUNDRED,
    require_above_zero,
    require_not_below_zero,
    three_parts,
)
from generator.refinishing.relation import relation


class Reduction(NamedTuple):
    """Thinner for a base, said in four ways."""

    thinner: Millilitre
    total: Millilitre
    share_of_mix: Percent
    parts_per_part: Bare


class ReductionOfMix(NamedTuple):
    """Thinner for a mix of base and hardener."""

    thinner: Millilitre
    total: Millilitre


class MixShares(NamedTuple):
    """What share of the whole mix each can is."""

    base: Percent
    hardener: Percent
    thinner: Percent


class ReductionShares(NamedTuple):
    """One thinning, as a percentage of the base and of the whole mix."""

    reduction: Percent
    share_of_mix: Percent


@relation(
    equation="thinner = base × reduction ÷ 100 %; "
    "total = base + thinner; "
    "share_of_mix = 100 % × reduction ÷ (100 % + reduction); "
    "parts_per_part = reduction ÷ 100 %",
    source="common_practice",
    place="definition of percent reduction, of the base",
    status="definition",
)
def percent_reduction(base: Millilitre, reduction: Percent) -> Reduction:
    """Return the thinner for a base when the percentage is of the base.

    Valid: base above zero; reduction from 0 % up, also above 100 %.
    Deviates: some sheets count the percentage on base and hardener; see percent_reduction_of_mix.
    Checked: 1000 mL at 25 % gives 250 mL, 1250 mL in all, 20 % of the mix; arithmetic.
    """
    require_above_zero(amount_of_base=base)
    require_not_below_zero(reduction=reduction)
    thinner = base * reduction / HUNDRED
    share = HUNDRED * reduction / (HUNDRED + reduction)
    return Reduction(thinner, base + thinner, share, reduction / HUNDRED)


@relation(
    equation="thinner = (base + hardener) × reduction ÷ 100 %; total = base + hardener + thinner",
    source="mix_notation",
    place="4:1:10 % example",
    status="restated",
)
def percent_reduction_of_mix(
    base: Millilitre, hardener: Millilitre, reduction: Percent
) -> ReductionOfMix:
    """Return the thinner when the percentage is of base and hardener together.

    Valid: base above zero; hardener and reduction from zero up.
    Deviates: this is one convention; the question states it and the data sheet governs.
    Checked: 480 mL and 120 mL at 10 % give 60 mL, 660 mL in all; the note's convention.
    """
    require_above_zero(amount_of_base=base)
    require_not_below_zero(amount_of_hardener=hardener, reduction=reduction)
    thinner = (base + hardener) * reduction / HUNDRED
    return ReductionOfMix(thinner, base + hardener + thinner)


@relation(
    equation="base = 100 % × base_part ÷ all_parts; "
    "hardener = 100 % × hardener_part ÷ all_parts; "
    "thinner = 100 % × thinner_part ÷ all_parts",
    source="common_practice",
    place="arithmetic of parts",
    status="definition",
)
def parts_to_percent(parts: Parts) -> MixShares:
    """Return what percentage of the whole mix each part is.

    Valid: two or three parts by volume, all above zero.
    Deviates: none.
    Checked: 4:1:1 gives 66.7, 16.7 and 16.7 %; arithmetic.
    """
    base, hardener, thinner = three_parts(parts)
    one_part = HUNDRED / (base + hardener + thinner)
    return MixShares(base * one_part, hardener * one_part, thinner * one_part)


@relation(
    equation="reduction = 100 % × thinner_parts ÷ base_parts; "
    "share_of_mix = 100 % × thinner_parts ÷ (base_parts + thinner_parts)",
    source="common_practice",
    place="definition of percent reduction, of the base",
    status="definition",
)
def parts_to_reduction(base_parts: Bare, thinner_parts: Bare) -> ReductionShares:
    """Turn parts of base and thinner into a percent reduction and a share of the mix.

    Valid: base parts above zero; thinner parts from zero up; no hardener in the mix.
    Deviates: none.
    Checked: 3 parts to 1 is a reduction of 33.3 % and 25 % of the mix; arithmetic.
    """
    require_above_zero(parts_of_base=base_parts)
    require_not_below_zero(parts_of_thinner=thinner_parts)
    thinner = HUNDRED * Fraction(thinner_parts)
    return ReductionShares(thinner / base_parts, thinner / (base_parts + thinner_parts))
