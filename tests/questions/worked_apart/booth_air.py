"""Booth air: flow through a face, air changes, clearing a room of vapour, the filter gauge."""

import math
from fractions import Fraction

from tests.questions.worked_apart.sums import Numbers, Working, percent

METRES_IN_A_FOOT = Fraction("0.3048")
PASCALS_IN_AN_INCH_OF_WATER = Fraction("249.09")


def face(v: Numbers) -> Fraction:
    return v["width"] * v["height"]


def room(v: Numbers) -> Fraction:
    return v["length"] * v["width"] * v["height"]


def falls(v: Numbers) -> float:
    """Count how often the air must be moved once until start is down to end."""
    return math.log(v["start"] / v["end"])


AIR = "booth_climate/prepare_booth"
GAUGE = "booth_climate/read_manometer"
WORKED: dict[str, Working] = {
    f"{AIR}/air_for_an_open_face": lambda v: face(v) * v["velocity"],
    f"{AIR}/air_for_an_open_face_metric": lambda v: face(v) * v["velocity"] * 3600,
    f"{AIR}/velocity_from_a_measured_flow": lambda v: v["flow"] / face(v),
    f"{AIR}/air_changes_of_a_booth": lambda v: v["flow"] * v["hour"] / room(v),
    f"{AIR}/air_changes_metric": lambda v: v["flow"] / room(v),
    f"{AIR}/air_missing_to_the_code": lambda v: face(v) * v["velocity"] - v["flow"],
    f"{AIR}/time_for_99_percent": lambda v: 60 / v["changes"] * v["log"],
    f"{AIR}/time_for_99_percent_poorly_mixed": lambda v: 60 / v["changes"] * v["log"] * v["factor"],
    f"{AIR}/vapour_down_to_a_level": lambda v: (
        v["volume"] / (v["flow"] * v["efficiency"]) * falls(v)
    ),
    f"{AIR}/vapour_down_to_a_level_metric": lambda v: v["volume"] / v["flow"] * 60 * falls(v),
    f"{AIR}/fresh_air_from_a_tracer": lambda v: (
        Fraction("0.6931") * v["volume"] / v["half_life"] * 60
    ),
    f"{AIR}/fan_for_two_faces": lambda v: (
        v["count"] * face(v) * v["velocity"] / (1 - percent(v["loss"]))
    ),
    f"{AIR}/velocity_in_metres": lambda v: v["flow"] / face(v) * METRES_IN_A_FOOT / 60,
    f"{AIR}/velocity_with_loaded_filters": lambda v: v["flow"] * (1 - percent(v["loss"])) / face(v),
    f"{AIR}/air_changes_in_a_purge": lambda v: v["flow"] * v["time"] / v["volume"],
    f"{AIR}/room_with_dead_corners": lambda v: v["factor"] * room(v) / v["flow"] * v["log"],
    f"{AIR}/minutes_still_to_run": lambda v: (
        v["volume"] / (v["flow"] * v["efficiency"]) * falls(v) - v["run"]
    ),
    f"{AIR}/flow_for_the_wanted_changes": lambda v: room(v) * v["changes"],
    f"{AIR}/percent_gone_from_the_fan": lambda v: room(v) / v["flow"] * v["log"],
    f"{AIR}/minutes_lost_to_poor_mixing": lambda v: (
        (1 / percent(v["efficiency"]) - 1) * v["volume"] / v["flow"] * 60 * v["log"]
    ),
    f"{GAUGE}/rise_over_clean": lambda v: v["limit"] - (v["now"] - v["clean"]),
    f"{GAUGE}/reading_in_pascals": lambda v: v["limit"] - v["now"],
    f"{GAUGE}/inches_of_water_to_pascals": lambda v: v["limit"] * PASCALS_IN_AN_INCH_OF_WATER,
    f"{GAUGE}/days_until_the_change": lambda v: (
        (v["limit"] - v["now"]) / (v["now"] - v["clean"]) * v["used"]
    ),
    "booth_climate/report_booth/average_of_readings_below_the_code": lambda v: (
        v["needed"] - (v["one"] + v["two"] + v["three"] + v["four"]) / 4
    ),
}
