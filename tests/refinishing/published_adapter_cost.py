"""How the cost and time calculations of published checks are asked of the relations."""

from fractions import Fraction

from tests.refinishing.published_adapter_inputs import CannotAdapt, Given
from tests.refinishing.published_adapter_relations import Calculation, Direct, Results, ask, of

NOTHING = Fraction(0)


def job(given: Given) -> Results:
    """Cost of a job with any number of products."""
    amounts = given.numbers("amounts volume volumes litres -", "L")
    prices = given.numbers("price prices price_per_litre", "money/L")
    if not 1 <= len(amounts) == len(prices):
        raise CannotAdapt("every amount needs its price")
    answer = ask(
        "job_cost",
        labour_time=given.number("labour labour_time hours", "h", 0),
        labour_rate=given.number("rate labour_rate rate_per_h", "money/h", 0),
        consumables=given.number("consumables", "money", 0),
        amount_1=amounts[0],
        price_1=prices[0],
    )
    materials, total = answer["materials"].number, answer["total"].number
    for amount, price in zip(amounts[1:], prices[1:], strict=True):
        more = ask(
            "job_cost",
            labour_time=NOTHING,
            labour_rate=NOTHING,
            consumables=NOTHING,
            amount_1=amount,
            price_1=price,
        )
        materials, total = materials + more["materials"].number, total + more["total"].number
    return {
        "materials": of(materials, "money"),
        "labour": answer["labour"],
        "total": of(total, "money"),
    }


CALCULATIONS: dict[str, Calculation] = {
    "cost.job": job,
    "cost.per_m2": Direct("cost_per_area", {"practical_rate": "practical"}, missing={"coats": 1}),
    "time.process": Direct(
        "process_time",
        {
            "spray_time": "spray_each spray",
            "flash_time": "flash_each flash",
            "bake_time": "bake_total bake",
        },
        missing={"bake_time": 0, "flash_time": 0},
    ),
}
