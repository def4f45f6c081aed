"""What a job costs and how long it takes."""

from fractions import Fraction
from typing import NamedTuple

from generator.diagnostics import OutsideValidity
from generator.refinishing.annotations import (
    Bare,
    Coats,
    Hour,
    Litre,
    Minute,
    Money,
    MoneyPerHour,
    MoneyPerLitre,
    MoneyPerSquareMetre,
    SquareMetrePerLitre,
)
from generator.refinishing.bounds import (
    require_above_zero,
    require_not_below_zero,
    require_whole_count,
)
from generator.refinishing.relation import relation

NOTHING = Fraction(0)


class JobCost(NamedTuple):
    """A job's cost: materials from the can, labour, and both with consumables."""

    materials: Money
    labour: Money
    total: Money


@relation(
    equation="materials = amount_1 × price_1 + amount_2 × price_2 + amount_3 × price_3"
    " + amount_4 × price_4; labour = labour_time × labour_rate; "
    "total = materials + labour + consumables",
    source="common_practice",
    place="amounts times prices, added up",
    status="definition",
)
def job_cost(
    labour_time: Hour,
    labour_rate: MoneyPerHour,
    consumables: Money,
    amount_1: Litre,
    price_1: MoneyPerLitre,
    amount_2: Litre = NOTHING,
    price_2: MoneyPerLitre = NOTHING,
    amount_3: Litre = NOTHING,
    price_3: MoneyPerLitre = NOTHING,
    amount_4: Litre = NOTHING,
    price_4: MoneyPerLitre = NOTHING,
) -> JobCost:
    """Return the cost of a job with one to four materials from the can.

    Valid: all from zero up; decimal hours, so a quarter of an hour is 0.25.
    Deviates: tax, waste and margins are left out.
    Checked: 0.35 L at 95, 0.5 L at 68, 2.4 h at 55 and 12.50 give 67.25, 132.00 and 211.75;
        arithmetic.
    """
    require_not_below_zero(labour=min(labour_time, labour_rate), consumables=consumables)
    amounts = (amount_1, amount_2, amount_3, amount_4)
    prices = (price_1, price_2, price_3, price_4)
    require_not_below_zero(amount=min(amounts), price=min(prices))
    materials = sum((a * p for a, p in zip(amounts, prices, strict=True)), NOTHING)
    labour = labour_time * labour_rate
    return JobCost(materials, labour, materials + labour + consumables)


@relation(
    equation="cost_per_area = price × coats ÷ practical_rate",
    source="common_practice",
    place="price over what a litre covers",
    status="definition",
)
def cost_per_area(
    price: MoneyPerLitre, practical_rate: SquareMetrePerLitre, coats: Coats
) -> MoneyPerSquareMetre:
    """Return what the paint on one square metre costs.

    Valid: price and spreading rate above zero; whole coats; the rate after losses, for a coat.
    Deviates: labour and consumables are left out.
    Checked: 68 a litre at 3.9 m²/L in 2 coats is 34.87; arithmetic.
    """
    require_above_zero(price=price, spreading_rate=practical_rate)
    require_whole_count(coats=coats)
    return price * coats / Fraction(practical_rate)


@relation(
    equation="process_time = coats × spray_time + (coats - 1 + flash_after_last) × flash_time"
    " + bake_time",
    source="common_practice",
    place="times in the order of the work",
    status="definition",
    rounding={"process_time": "up"},
)
def process_time(
    coats: Coats,
    spray_time: Minute,
    flash_time: Minute,
    bake_time: Minute,
    flash_after_last: Bare = NOTHING,
) -> Minute:
    """Return the time a job holds the booth: coats, flashes and bake.

    Valid: whole coats; times from zero up; flash_after_last is 1 where a flash follows the last
        coat and 0 where none does.
    Deviates: heating up, cooling down and clearing the booth come on top.
    Checked: 3 coats of 4 min, 10 min between, bake 45 min is 77 min; arithmetic.
    """
    require_whole_count(coats=coats)
    require_not_below_zero(time=min(spray_time, flash_time, bake_time))
    if flash_after_last not in (0, 1):
        raise OutsideValidity("Say 1 for a flash after the last coat and 0 for none.")
    return coats * spray_time + (coats - 1 + flash_after_last) * flash_time + bake_time
