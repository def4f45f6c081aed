"""Curing: the rule of thumb for a reaction, hold times, the recoat window, a small lamp.

The rule: a step warmer halves the time, a step colder doubles it (common practice).
"""

from fractions import Fraction

from tests.questions.worked_apart.sums import Numbers, Working, celsius, doubled

FAHRENHEIT_STEP = 18


def colder(v: Numbers, place: str) -> Fraction:
    return v["reference"] - v[place]


COLD = "curing/cold_weather"
REACTION = "curing/loss_or_reaction"
WORKED: dict[str, Working] = {
    f"{COLD}/cure_ten_kelvins_colder": lambda v: v["time"] * doubled(colder(v, "bay") / v["step"]),
    f"{COLD}/cure_a_few_kelvins_colder": lambda v: (
        v["time"] * doubled(colder(v, "bay") / v["step"])
    ),
    f"{COLD}/cure_on_a_us_sheet": lambda v: v["time"] * doubled(colder(v, "bay") / FAHRENHEIT_STEP),
    f"{COLD}/from_a_cold_trial_to_the_sheet": lambda v: (
        v["measured"] / doubled(colder(v, "cold") / v["step"])
    ),
    f"{COLD}/short_of_time_at_the_end_of_a_shift": lambda v: (
        v["time"] * doubled(colder(v, "bay") / v["step"]) - v["left"]
    ),
    f"{COLD}/cure_at_a_us_reading": lambda v: (
        v["time"] * doubled((v["reference"] - celsius(v["bay"])) / v["step"])
    ),
    "curing/count_bake/whole_time_in_oven": lambda v: v["heat_up"] + v["hold"],
    "curing/count_bake/hold_still_to_run": lambda v: v["hold"] - (v["in_oven"] - v["heat_up"]),
    f"{REACTION}/pot_life_ten_kelvins_warmer": lambda v: (
        v["life"] * doubled(colder(v, "room") / v["step"])
    ),
    f"{REACTION}/pot_life_a_few_kelvins_warmer": lambda v: (
        v["life"] * doubled(colder(v, "room") / v["step"])
    ),
    f"{REACTION}/pot_life_on_a_us_sheet": lambda v: (
        v["life"] * doubled(colder(v, "room") / FAHRENHEIT_STEP)
    ),
    f"{REACTION}/spray_time_left_in_the_cup": lambda v: (
        v["life"] * doubled(colder(v, "room") / v["step"]) - v["mixing"] - v["coats_done"]
    ),
    "curing/recoat_window/minutes_left_in_the_window": lambda v: v["closes"] * 60 - v["gone"],
    "curing/recoat_window/latest_start_of_the_next_coat": lambda v: (
        v["closes"] * 60 - v["mixing"] - v["spraying"]
    ),
    "curing/set_lamp/small_lamp_moved_back": lambda v: 100 * (v["near"] / v["far"]) ** 2,
    "curing/set_lamp/small_lamp_moved_nearer_in_inches": lambda v: (v["far"] / v["near"]) ** 2,
}
