"""How the abrasive and climate calculations of published checks are asked of the relations."""

import re
from fractions import Fraction

from tests.refinishing.published_adapter_inputs import Given
from tests.refinishing.published_adapter_relations import (
    Calculation,
    Direct,
    Results,
    ask,
    ask_one,
    matched,
    of,
)

RATIO_TO = re.compile(r"ratio_to_([0-9.]+)_mm")
USUAL_MARGIN = 3  # kelvins
HIGHEST_HUMIDITY = 100
AIR = "air temperature"
DELTA = "delta difference margin"
PANEL = "surface panel substrate metal"


def cami_grade(given: Given) -> Results:
    """The P grade nearest to a CAMI grade, and the CAMI grade's mean size."""
    grade = given.number("cami cami_grade grade", "one")
    nearest = ask_one("nearest_p_grade", cami_grade=grade)
    return {
        "nearest_p p_grade": of(nearest, "one"),
        "cami mean": ask("cami_size", cami_grade=grade)["cami_size"],
        "p p_mean": ask("grade_size", p_grade=nearest)["grade_size"],
    }


def disc_area(given: Given) -> Results:
    """Area of a disc, and its ratio to any other disc that a check names."""
    diameter = given.number("diameter", "mm")
    results: Results = {"area disc_area": ask("disc_area", diameter=diameter)["disc_area"]}
    for other in given.wanted:
        match = RATIO_TO.fullmatch(other)
        if match:
            size = Fraction(match[1])
            ratio = ask_one("disc_area_ratio", diameter=diameter, other_diameter=size)
            results[other] = of(ratio, "one")
    return results


def humidity(given: Given) -> Results:
    """Relative humidity from two thermometers, and the dew point that follows."""
    takes = {"dry_bulb": "dry air", "wet_bulb": "wet"}
    arguments = matched("humidity_from_wet_bulb", given, takes, {})
    percent = ask_one("humidity_from_wet_bulb", **arguments)
    dew = ask("dew_point", air_temperature=arguments["dry_bulb"], humidity=percent)
    return {"humidity": of(percent, "percent"), "dew_point": dew["dew_point"]}


def dew_margin(given: Given) -> Results:
    """Margin over the dew point, and whether margin and humidity let the painter go on."""
    air = given.number(AIR, "degC")
    percent = given.number("humidity", "percent")
    panel = given.number(PANEL, "degC")
    required = given.number("required_margin required margin_required", "K", USUAL_MARGIN)
    highest = given.number("max_rh rh_limit humidity_limit", "percent", HIGHEST_HUMIDITY)
    answer = ask(
        "dew_margin_met",
        air_temperature=air,
        humidity=percent,
        panel_temperature=panel,
        required=required,
    )
    dew = ask("dew_point", air_temperature=air, humidity=percent)
    return {
        "margin dew_margin": answer["margin"],
        "short_by": answer["short_by"],
        "dew_point": dew["dew_point"],
        "ok_to_paint margin_ok ok": answer["margin"].number >= required and percent <= highest,
    }


def difference(given: Given) -> Results:
    """A temperature difference in the other unit; only the size of the degree counts."""
    written = given.unit(DELTA)
    if written and written.name == "degF":
        size = given.number(DELTA, "degF_diff")
        return {"delta": ask("difference_to_kelvin", difference=size)["difference_to_kelvin"]}
    return {"delta": of(given.number(DELTA, "K"), "K")}


CALCULATIONS: dict[str, Calculation] = {
    "abrasive.p_to_micron": Direct("grade_size", {"p_grade": "p grade"}, {"grade_size": "mean"}),
    "abrasive.cami_to_micron": Direct(
        "cami_size", {"cami_grade": "cami grade"}, {"cami_size": "mean cami"}
    ),
    "abrasive.cami_to_nearest_p": cami_grade,
    "abrasive.step": Direct(
        "grade_step",
        {"from_grade": "from_p from", "to_grade": "to_p to"},
        {"grades_between": "grades_skipped_in_table grades_skipped"},
    ),
    "abrasive.rim_speed": Direct("rim_speed"),
    "abrasive.max_rpm": Direct("highest_speed", {"rim_limit": "max"}, {"highest_speed": "max"}),
    "abrasive.orbit_speed": Direct("orbit_speed", {"orbit": "orbit_diameter diameter"}),
    "abrasive.disc_area": disc_area,
    "climate.dew_point": Direct("dew_point", {"air_temperature": AIR}),
    "climate.dew_point_F": Direct("dew_point", {"air_temperature": AIR}),
    "climate.rh_from_wet_bulb": humidity,
    "climate.dew_margin": dew_margin,
    "climate.delta_convert": difference,
}
