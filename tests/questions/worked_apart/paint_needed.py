"""Film build: paint for an area, spreading rate, losses, and the weight of a coat."""

from fractions import Fraction

from tests.questions.worked_apart.sums import (
    QUARTS_IN_A_GALLON,
    SQUARE_FEET_AT_A_MIL,
    Numbers,
    Working,
    millilitres_on,
    percent,
)

# the trade's round figure for one gallon at one mil, stated in the questions
SQUARE_FEET_A_GALLON = 1604
SQUARE_CENTIMETRES_IN_A_SQUARE_METRE = 10_000


def litres_in_practice(v: Numbers) -> Fraction:
    return millilitres_on(v["area"], v["dry"], v["volume_solids"], 100 - v["loss"]) / 1000


NEED = "film_build/paint_needed"

WORKED: dict[str, Working] = {
    "film_build/paint_needed/millilitres_for_panels": lambda v: millilitres_on(
        v["area"], v["dry"] * v["coats"], v["volume_solids"], v["efficiency"]
    ),
    "film_build/paint_needed/spread_metric": lambda v: 10 * v["volume_solids"] / v["dry"],
    "film_build/paint_needed/spread_us": lambda v: (
        SQUARE_FEET_A_GALLON * percent(v["volume_solids"]) / v["dry"]
    ),
    "film_build/paint_needed/practical_spread": lambda v: (
        v["theoretical"] * (1 - percent(v["loss"]))
    ),
    "film_build/paint_needed/area_per_quart": lambda v: (
        v["volume"]
        / 4
        * SQUARE_FEET_A_GALLON
        * percent(v["volume_solids"])
        * percent(v["efficiency"])
        / v["dry"]
    ),
    "film_build/paint_needed/film_from_paint_used": lambda v: (
        v["volume"] * percent(v["volume_solids"]) / v["area"]
    ),
    f"{NEED}/film_behind_a_claim": lambda v: 1000 / v["claim"] * percent(v["volume_solids"]),
    f"{NEED}/litres_in_practice": litres_in_practice,
    f"{NEED}/loss_found_on_the_job": lambda v: (
        100 * (1 - v["area"] / (v["theoretical"] * v["volume"]))
    ),
    f"{NEED}/area_from_the_last_tin": lambda v: (
        v["volume"]
        * percent(v["volume_solids"])
        * percent(v["efficiency"])
        / (v["coats"] * v["dry"])
    ),
    f"{NEED}/film_from_a_quart": lambda v: (
        v["volume"]
        / QUARTS_IN_A_GALLON
        * percent(v["volume_solids"])
        * SQUARE_FEET_AT_A_MIL
        / v["area"]
    ),
    f"{NEED}/volume_behind_a_reading": lambda v: (
        v["sprayed"] - v["dry"] * v["area"] / percent(v["volume_solids"])
    ),
    f"{NEED}/wet_film_at_a_spread": lambda v: 1000 / v["spread"],
    f"{NEED}/mass_of_a_wet_coat": lambda v: v["wet"] * v["area"] * v["density"],
    f"{NEED}/film_from_a_weighed_card": lambda v: (
        v["gain"] / v["density"] / v["area"] * SQUARE_CENTIMETRES_IN_A_SQUARE_METRE
    ),
}
