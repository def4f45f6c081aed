"""Mixing by parts: how much of each can goes into the cup."""

from fractions import Fraction
from typing import NamedTuple

from generator.refinishing.annotations import Millilitre, Parts, Percent
from generator.refinishing.bounds import (
    HUNDRED,
    require_above_zero,
    require_not_below_zero,
    three_parts,
    two_parts,
)
from generator.refinishing.relation import relation

ISOCYANATE = (
    "Some hardeners hold isocyanate; wear what the safety data sheet names before a can is opened."
)


class MixAmounts(NamedTuple):
    """Amounts of a mix, as volumes."""

    base: Millilitre
    hardener: Millilitre
    thinner: Millilitre


class AmountsBesideBase(NamedTuple):
    """What goes to a base that is already in the cup, and the total."""

    hardener: Millilitre
    thinner: Millilitre
    total: Millilitre


class CupMarks(NamedTuple):
    """Fill lines from the bottom of the cup, after each pour."""

    after_base: Millilitre
    after_hardener: Millilitre
    after_thinner: Millilitre


@relation(
    equation="base = total × base_part ÷ all_parts; "
    "hardener = total × hardener_part ÷ all_parts; "
    "thinner = total × thinner_part ÷ all_parts",
    source="common_practice",
    place="arithmetic of parts",
    status="definition",
    caution=ISOCYANATE,
)
def split_total(total: Millilitre, parts: Parts) -> MixAmounts:
    """Split a total volume into base, hardener and thinner by a mixing ratio.

    Valid: two or three parts by volume, all above zero; total above zero.
    Deviates: none; volumes are taken to add up.
    Checked: 600 mL at 4:1:1 gives 400, 100 and 100 mL; arithmetic.
    """
    require_above_zero(total=total)
    base, hardener, thinner = three_parts(parts)
    share = Fraction(total) / (base + hardener + thinner)
    return MixAmounts(share * base, share * hardener, share * thinner)


@relation(
    equation="base = total × 100 % ÷ (100 % + thinner_percent) × base_part ÷ all_parts; "
    "hardener = total × 100 % ÷ (100 % + thinner_percent) × hardener_part ÷ all_parts; "
    "thinner = total × thinner_percent ÷ (100 % + thinner_percent)",
    source="mix_notation",
    place="4:1:10 % example",
    status="restated",
    caution=ISOCYANATE,
)
def split_total_with_percent(
    total: Millilitre, parts: Parts, thinner_percent: Percent
) -> MixAmounts:
    """Split a total volume when the thinner is a percentage of base and hardener together.

    Valid: a ratio of base and hardener only; thinner from 0 % up.
    Deviates: a data sheet may count the percentage on the base alone; the sheet governs.
    Checked: 660 mL at 4:1 and 10 % gives 480, 120 and 60 mL; the note's convention.
    """
    require_above_zero(total=total)
    require_not_below_zero(thinner_percentage=thinner_percent)
    base, hardener = two_parts(parts)
    mixed = total * HUNDRED / (HUNDRED + thinner_percent)
    share = mixed / (base + hardener)
    return MixAmounts(share * base, share * hardener, total - mixed)


@relation(
    equation="hardener = base × hardener_part ÷ base_part; "
    "thinner = base × thinner_part ÷ base_part; "
    "total = base + hardener + thinner",
    source="common_practice",
    place="arithmetic of parts",
    status="definition",
    caution=ISOCYANATE,
)
def amounts_from_base(base: Millilitre, parts: Parts) -> AmountsBesideBase:
    """Return the hardener, thinner and total for a base that is already measured.

    Valid: two or three parts by volume, all above zero; base above zero.
    Deviates: none.
    Checked: 300 mL at 4:1:1 gives 75, 75 and 450 mL; arithmetic.
    """
    require_above_zero(amount_of_base=base)
    base_part, hardener_part, thinner_part = three_parts(parts)
    one_part = Fraction(base) / base_part
    hardener, thinner = one_part * hardener_part, one_part * thinner_part
    return AmountsBesideBase(hardener, thinner, base + hardener + thinner)


@relation(
    equation="after_base = base; "
    "after_hardener = base × (base_part + hardener_part) ÷ base_part; "
    "after_thinner = base × all_parts ÷ base_part",
    source="common_practice",
    place="running sum of the parts",
    status="definition",
    caution=ISOCYANATE,
)
def cup_marks(base: Millilitre, parts: Parts) -> CupMarks:
    """Return the lines to fill to in a straight-sided cup, one pour after another.

    Valid: two or three parts by volume; without thinner the last two lines are the same.
    Deviates: none; on a printed stick the marks already include the sum.
    Checked: 300 mL at 4:1:1 gives 300, 375 and 450 mL; arithmetic.
    """
    beside = amounts_from_base(base, parts)
    return CupMarks(Fraction(base), base + beside.hardener, beside.total)


@relation(
    equation="base = capacity × base_part ÷ all_parts; "
    "hardener = capacity × hardener_part ÷ all_parts; "
    "thinner = capacity × thinner_part ÷ all_parts",
    source="common_practice",
    place="arithmetic of parts",
    status="definition",
    rounding={"base": "down", "hardener": "down", "thinner": "down"},
    limit={"base": "maximum", "hardener": "maximum", "thinner": "maximum"},
    caution=ISOCYANATE,
)
def largest_batch(capacity: Millilitre, parts: Parts) -> MixAmounts:
    """Return the largest amounts that a cup can hold at a mixing ratio.

    Valid: capacity is what the cup may hold in use, not to the brim; round every amount down.
    Deviates: none.
    Checked: 650 mL at 4:1:1 gives 433.3, 108.3 and 108.3 mL; arithmetic.
    """
    return split_total(capacity, parts)
