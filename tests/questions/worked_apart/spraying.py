"""Spray gun and finish: strokes, transfer, pressure and air, cups, colour and gloss."""

import math
from fractions import Fraction

from tests.questions.worked_apart.sums import Numbers, Working, percent, whole_up

# stated in the questions
PSI_IN_A_BAR = Fraction("14.504")
KILOPASCALS_IN_A_PSI = Fraction("6.8948")
LITRES_IN_A_CUBIC_FOOT = Fraction("28.32")


def step(v: Numbers) -> Fraction:
    return v["fan"] * (1 - percent(v["overlap"]))


def strokes(v: Numbers) -> Fraction:
    """One stroke on the top edge, then steps until the bottom edge is met or passed."""
    return 1 + whole_up(v["height"] / step(v))


def landed(sprayed: Fraction, solids: Fraction, gained: Fraction) -> Fraction:
    return 100 * gained / (sprayed * percent(solids))


def lost(v: Numbers) -> Fraction:
    return v["coupler"] + v["hose"] + v["last"]


def cup(v: Numbers, seconds: Fraction) -> Fraction:
    return v["slope"] * (seconds - v["start"])


def warmed(v: Numbers) -> Fraction:
    """Each degree takes the same share of what is left."""
    viscosity = v["viscosity"]
    for _ in range(int(v["warming"])):
        viscosity -= viscosity * percent(v["fall"])
    return viscosity


def gloss_level(reading: Fraction) -> Fraction:
    """Levels 5 to 7 of the scheme on the sheet."""
    return Fraction(5 if reading <= 70 else 6 if reading <= 85 else 7)


GUNS = "spray_gun/allowed_guns"
STROKE = "spray_gun/gun_stroke"
AIR = "spray_gun/set_pressure"
CUP = "spray_gun/settings_and_faults"
CARD = "sealer_topcoat/sprayed_card"
WORKED: dict[str, Working] = {
    f"{GUNS}/cap_pressure_below_the_limit": lambda v: v["limit"] - v["cap"],
    f"{GUNS}/measured_efficiency": lambda v: landed(v["sprayed"], v["solids"], v["gained"]),
    f"{GUNS}/efficiency_in_ounces": lambda v: landed(v["sprayed"], v["solids"], v["gained"]),
    f"{GUNS}/paint_to_spray_for_a_gain": lambda v: (
        v["gain"] / percent(v["efficiency"]) / percent(v["solids"])
    ),
    f"{GUNS}/solids_that_missed": lambda v: v["sprayed"] * percent(v["solids"]) - v["gain"],
    f"{STROKE}/strokes_at_half_overlap": strokes,
    f"{STROKE}/strokes_in_inches": strokes,
    f"{STROKE}/how_far_down_between_strokes": step,
    f"{STROKE}/spraying_time_of_a_job": lambda v: (
        strokes(v) * v["coats"] * v["length"] / v["speed"]
    ),
    f"{AIR}/pressure_left_at_the_gun": lambda v: v["wall"] - lost(v),
    f"{AIR}/wall_pressure_for_the_gun": lambda v: v["inlet"] + v["couplers"] + v["hose"],
    f"{AIR}/bar_on_a_psi_gauge": lambda v: v["inlet"] * PSI_IN_A_BAR,
    f"{AIR}/air_of_one_kind_of_tool": lambda v: v["count"] * v["flow"] * percent(v["duty"]),
    f"{AIR}/compressor_for_a_shop": lambda v: (
        (2 * v["sander"] * percent(v["sanding"]) + v["gun"] * percent(v["spraying"]) + v["other"])
        * (1 + percent(v["margin"]))
    ),
    f"{AIR}/compressor_for_a_metric_shop": lambda v: (
        (v["sanders"] + v["guns"] + v["other"]) * (1 + percent(v["margin"]))
    ),
    f"{AIR}/free_air_from_a_pump_up": lambda v: (
        v["tank"] * 231 / 1728 * v["rise"] / Fraction("14.7") * 60 / v["time"]
    ),
    f"{AIR}/inlet_in_bar": lambda v: (v["wall"] - lost(v)) / PSI_IN_A_BAR,
    f"{AIR}/short_at_the_inlet": lambda v: v["wanted"] - (v["wall"] - lost(v)),
    f"{AIR}/wall_gauge_in_psi": lambda v: v["inlet"] * PSI_IN_A_BAR + v["drop"],
    f"{AIR}/gauge_in_kilopascals": lambda v: v["cap"] * KILOPASCALS_IN_A_PSI,
    f"{AIR}/gun_air_in_litres": lambda v: v["flow"] * LITRES_IN_A_CUBIC_FOOT,
    f"{AIR}/share_of_pressure_lost": lambda v: 100 * lost(v) / v["wall"],
    f"{CUP}/small_ford_cup": lambda v: cup(v, v["time"]),
    f"{CUP}/zahn_cup_at_the_tank": lambda v: cup(v, v["time"]),
    f"{CUP}/zahn_cup_three": lambda v: cup(v, v["time"]),
    f"{CUP}/two_zahn_readings": lambda v: cup(v, v["first"]) - cup(v, v["second"]),
    f"{CUP}/from_a_ford_cup_to_a_four_cup": lambda v: (
        Fraction("0.223") * Fraction("1.44") * (v["time"] - v["start"]) + v["base"]
    ),
    f"{CUP}/four_cup_to_viscosity": lambda v: (v["time"] - v["base"]) / v["slope"],
    f"{CUP}/warmer_mix": warmed,
    f"{CUP}/warmer_mix_us": warmed,
    f"{CUP}/cold_mix_before_it_is_thinned": lambda v: warmed(v) - v["wanted"],
    f"{CUP}/dynamic_from_kinematic": lambda v: v["viscosity"] * v["density"],
    f"{CARD}/plain_distance": lambda v: math.hypot(v["light"], v["red"], v["yellow"]),
    f"{CARD}/lightness_only": lambda v: abs(v["second"] - v["first"]),
    f"{CARD}/gloss_of_the_trailer": lambda v: gloss_level(v["reading"]),
    f"{CARD}/gloss_of_a_satin_card": lambda v: Fraction(4 if v["at_85"] >= 35 else 3),
}
