"""Booth climate: dew point and margin (WMO-No. 8, annex 4.B), solvent vapour beside its limit."""

import math
from fractions import Fraction

from tests.questions.worked_apart.sums import (
    Working,
    celsius,
    fahrenheit,
    kelvins,
    percent,
)

PPM_IN_A_PERCENT = 10_000
# litres that a mole of vapour fills at 25 °C and one atmosphere, as the questions state
LITRES_IN_A_MOLE = Fraction("24.45")
STEPS_OF_FAHRENHEIT = 9


def dew_point(air: Fraction, humidity: Fraction) -> float:
    """Dew point in °C of air in °C."""
    t = float(air)
    g = math.log(humidity / 100) + 17.62 * t / (243.12 + t)
    return 243.12 * g / (17.62 - g)


def of_the_limit(content: Fraction, limit: Fraction) -> Fraction:
    """Return vapour in ppm as percent of an explosive limit in percent of the volume."""
    return 100 * content / (limit * PPM_IN_A_PERCENT)


DEW = "booth_climate/dew_margin"
FIRE = "booth_climate/ignition_sources"
WORKED: dict[str, Working] = {
    f"{DEW}/margin_over_the_dew_point": lambda v: v["coldest"] - v["dew"],
    f"{DEW}/margin_on_a_us_meter": lambda v: (
        (v["panel"] - v["dew"]) * v["five"] / STEPS_OF_FAHRENHEIT
    ),
    f"{DEW}/warming_the_panel_still_needs": lambda v: v["needed"] + v["dew"] - v["panel"],
    f"{DEW}/dew_point_of_the_booth_air": lambda v: dew_point(v["air"], v["humidity"]),
    f"{DEW}/dew_point_on_a_us_meter": lambda v: (
        1.8 * dew_point(celsius(v["air"]), v["humidity"]) + 32
    ),
    f"{DEW}/margin_from_air_and_panel": lambda v: (
        float(v["panel"]) - dew_point(v["air"], v["humidity"])
    ),
    f"{DEW}/short_of_the_margin": lambda v: (
        float(v["required"] - v["panel"]) + dew_point(v["air"], v["humidity"])
    ),
    f"{DEW}/margin_asked_in_fahrenheit": lambda v: (
        v["panel"] - v["dew"] - v["required"] * v["five"] / STEPS_OF_FAHRENHEIT
    ),
    f"{DEW}/lowest_panel_for_the_margin": lambda v: (
        dew_point(v["air"], v["humidity"]) + float(v["required"])
    ),
    f"{FIRE}/share_of_the_limit": lambda v: of_the_limit(v["content"], v["limit"]),
    f"{FIRE}/quarter_of_the_limit": lambda v: percent(v["share"]) * v["limit"] * PPM_IN_A_PERCENT,
    f"{FIRE}/fire_is_not_health": lambda v: v["limit"] * PPM_IN_A_PERCENT / 4 / v["health"],
    f"{FIRE}/room_to_the_alarm": lambda v: v["alarm"] - of_the_limit(v["content"], v["limit"]),
    f"{FIRE}/share_from_milligrams": lambda v: of_the_limit(
        v["content"] * LITRES_IN_A_MOLE / v["mass"], v["limit"]
    ),
    "curing/cold_weather/over_the_lowest_temperature": lambda v: celsius(v["bay"]) - v["lowest"],
    "curing/count_bake/schedule_from_a_us_sheet": lambda v: (
        (v["schedule"] - v["freezing"]) / (v["boiling"] - v["freezing"]) * 100
    ),
    "curing/count_bake/schedule_for_a_us_gauge": lambda v: (
        (v["schedule"] - v["freezing"]) / (v["boiling"] - v["freezing"]) * 180 + 32
    ),
    "curing/count_bake/oven_air_in_fahrenheit": lambda v: fahrenheit(v["metal"] + v["above"]),
    "curing/count_bake/missing_degrees": lambda v: fahrenheit(v["schedule"]) - v["reading"],
    "health_safety/breathing_protection/dew_point_of_breathing_air": lambda v: (
        v["shop"] - kelvins(v["gap"])
    ),
    "shop_air_tools/breathing_air/dry_enough_to_breathe": lambda v: v["shop"] - Fraction("5.6"),
}
