"""Film build: what to order, what a job costs, how long it holds the booth."""

from fractions import Fraction

from tests.questions.worked_apart.sums import (
    OUNCES_IN_A_GALLON,
    SQUARE_FEET_AT_A_MIL,
    Numbers,
    Working,
    millilitres_on,
    percent,
    whole_up,
)


def mix_of_a_job(v: Numbers) -> Fraction:
    """Litres of mix with what cup and line keep."""
    film = v["dry"] * v["coats"]
    used = millilitres_on(v["area"], film, v["volume_solids"], v["efficiency"])
    return used / 1000 * (1 + percent(v["margin"]))


def ounces_of_a_side(v: Numbers) -> Fraction:
    film = v["dry"] * v["coats"] / percent(v["volume_solids"]) / percent(v["efficiency"])
    gallons = v["area"] * film / SQUARE_FEET_AT_A_MIL
    return gallons * (1 + percent(v["margin"])) * OUNCES_IN_A_GALLON


def paint_and_extra(v: Numbers) -> Fraction:
    return v["primer"] * v["primer_price"] + v["clear"] * v["clear_price"] + v["extra"]


def cost(v: Numbers, rate: str = "rate") -> Fraction:
    return paint_and_extra(v) + v["time"] * v[rate]


def in_the_booth(v: Numbers) -> Fraction:
    return v["coats"] * (v["spray"] + v["flash"]) - v["flash"] + v["bake"]


ORDER = "film_build/order_material"

WORKED: dict[str, Working] = {
    "film_build/order_material/cup_fills": lambda v: v["total"] / v["cup"],
    "film_build/order_material/gun_swap": lambda v: (
        v["old_amount"] * v["old_share"] / v["new_share"]
    ),
    "film_build/order_material/job_base": lambda v: (
        v["paint"] * (1 + percent(v["margin"])) * v["parts"][0] / sum(v["parts"])
    ),
    "film_build/order_material/job_total": lambda v: (
        millilitres_on(v["area"], v["dry"] * v["coats"], v["volume_solids"], v["efficiency"])
        * (1 + percent(v["margin"]))
    ),
    f"{ORDER}/saved_paint": lambda v: (
        v["old_amount"] - v["old_amount"] * v["old_share"] / v["new_share"]
    ),
    f"{ORDER}/paint_cost_of_a_panel": lambda v: v["coats"] * v["price"] / v["rate"],
    f"{ORDER}/cost_of_the_job": lambda v: cost(v, "labour_rate"),
    f"{ORDER}/hours_written_in_minutes": lambda v: (
        (60 * v["whole"] + v["minutes"]) / 60 * v["rate"]
    ),
    f"{ORDER}/time_in_the_booth": in_the_booth,
    f"{ORDER}/share_of_labour": lambda v: 100 * v["time"] * v["rate"] / cost(v),
    f"{ORDER}/price_with_a_margin": lambda v: cost(v) * (1 + percent(v["margin"])),
    f"{ORDER}/booth_time_with_last_flash": lambda v: in_the_booth(v) + v["flash"],
    f"{ORDER}/booth_time_left": lambda v: 60 * v["free"] - v["jobs"] * in_the_booth(v),
    f"{ORDER}/money_saved_by_a_better_gun": lambda v: (
        v["old"] * (1 - v["first"] / v["second"]) * v["price"]
    ),
    f"{ORDER}/transfer_needed_for_a_saving": lambda v: v["old"] * v["first"] / v["wanted"],
    f"{ORDER}/fills_for_a_trailer_side": lambda v: whole_up(ounces_of_a_side(v) / v["cup"]),
    f"{ORDER}/cost_of_the_mix_for_a_job": lambda v: mix_of_a_job(v) * v["price"],
    f"{ORDER}/paint_cost_from_the_sheet": lambda v: (
        millilitres_on(Fraction(1), v["dry"] * v["coats"], v["volume_solids"], 100 - v["loss"])
        / 1000
        * v["price"]
    ),
    f"{ORDER}/paint_cost_of_a_trailer": lambda v: (
        v["area"] * v["coats"] / v["practical"] * v["price"]
    ),
}
