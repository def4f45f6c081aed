"""How the cure, heat and viscosity calculations of published checks are asked of the relations."""

from generator.refinishing.climate import exact_from
from generator.refinishing.flow_cups_iso import CURVES, iso_curve
from tests.refinishing.published_adapter_inputs import Given
from tests.refinishing.published_adapter_relations import (
    Bare,
    Calculation,
    Direct,
    Results,
    ask,
    matched,
    of,
)

TIMES = {
    "reference_time": "time_ref",
    "reference_temperature": "ref",
    "new_temperature": "new",
    "factor": "q10",
}
ENERGY = {**TIMES, "activation_energy": "Ea"}
LAMP = {"distance": "distance_ref distance_old", "new_distance": "distance_new"}
OVEN = {
    "oven_air": "air oven",
    "panel_start": "start_metal start",
    "panel_wanted": "target_metal target",
}
TEN = 10


def point_lamp(given: Given) -> Results:
    """Heat of a lamp seen as a point; without a size it is as small as the relation asks for."""
    near = given.number(f"distance {LAMP['distance']}", "mm")
    far = given.number(f"new_distance {LAMP['new_distance']}", "mm")
    radius = given.number("emitter_radius radius", "mm", min(near, far) / TEN)
    answer = ask("point_lamp_ratio", distance=near, new_distance=far, emitter_radius=radius)
    return {"intensity_ratio": answer["point_lamp_ratio"]}


def bare_inverse_square(given: Given) -> Results:
    """The ratio of the squared distances, at any distance."""
    near = given.number(f"distance {LAMP['distance']}", "mm")
    far = given.number(f"new_distance {LAMP['new_distance']}", "mm")
    return {"intensity_ratio": of((near / far) ** 2, "one")}


def bare_ten_degrees(given: Given) -> Results:
    """The ten-degree rule over any step and at any temperature."""
    time = given.number("time_ref reference_time", "min")
    cold, warm = given.number("ref", "degC"), given.number("new", "degC")
    factor = given.number("q10 factor", "one", 2)
    new = float(time) * float(factor) ** float((cold - warm) / TEN)
    return {"time_new": of(exact_from(new), "min")}


def oven(given: Given) -> Results:
    """Minutes in the oven; a check without a hold asks for the heating only."""
    has_hold = given.has("hold hold_time", "min")
    answer = ask("oven_time", **matched("oven_time", given, OVEN, {"hold": 1}))
    total = answer["total"] if has_hold else answer["heat_up"]
    return {"heat_up": answer["heat_up"], "total": total}


def ford(given: Given) -> Results:
    """Viscosity from a Ford cup; the two small cups stand on another source than the others."""
    cup, time = given.number("cup cup_number", "one"), given.number("time seconds", "s")
    relation = "ford_small_cup_viscosity" if cup <= 2 else "ford_cup_viscosity"
    return {"viscosity": ask(relation, cup_number=cup, time=time)[relation]}


def bare_iso(given: Given) -> Results:
    """The line of an ISO cup at any time, or solved for the time."""
    orifice = given.number("orifice cup", "mm")
    if given.has("seconds", "s"):
        time = given.number("seconds time", "s")
        return {"viscosity": of(iso_curve(orifice, time), "mm2/s")}
    a, b = CURVES[int(orifice)]
    viscosity = float(given.number("mm2_per_s viscosity", "mm2/s"))
    time = exact_from((viscosity + (viscosity**2 + float(4 * a * b)) ** 0.5) / float(2 * a))
    return {"seconds time": of(time, "s")}


def four_cup(given: Given) -> Results:
    """The four-cup in the direction that the check asks for."""
    if given.has("seconds time", "s"):
        answer = ask("four_cup_viscosity", time=given.number("seconds time", "s"))
        return {"viscosity": answer["four_cup_viscosity"]}
    answer = ask("four_cup_seconds", viscosity=given.number("mm2_per_s viscosity", "mm2/s"))
    return {"seconds time": answer["four_cup_seconds"]}


def warmer(given: Given) -> Results:
    """Viscosity of warmer paint; the fall is for each kelvin or for each degree Fahrenheit."""
    viscosity = given.number("mm2_per_s viscosity", "mm2/s")
    if given.has("pct_fall_per_F", "one"):
        fall = given.number("pct_fall_per_F", "one")
        step = given.number("delta warming", "degF_diff")
        relation = "viscosity_when_warmer_us"
        answer = ask(relation, viscosity=viscosity, fall_per_degree=fall, warming=step)
    else:
        fall = given.number("pct_fall_per_C pct_fall_per_K", "one")
        step = given.number("delta warming", "K")
        relation = "viscosity_when_warmer"
        answer = ask(relation, viscosity=viscosity, fall_per_kelvin=fall, warming=step)
    return {"compound viscosity": answer[relation]}


ISO_RANGE = (
    "The standard's working range of every ISO cup is 30 to 100 s and the relation refuses beyond"
    " it; the printed range ends of a cup maker, such as 21 and 17 s, test the line only."
)
BARE = {
    "visc.iso2431": Bare(ISO_RANGE, bare_iso),
    "visc.iso_seconds_from_nu": Bare(ISO_RANGE, bare_iso),
    "cure.q10": Bare(
        "The relation keeps the ten-degree rule to steps of 15 K between 0 and 50 °C; a check"
        " beyond tests the power only.",
        bare_ten_degrees,
    ),
    "cure.ir_inverse_square": Bare(
        "The relation refuses the inverse square close to a lamp; such a check tests the squares"
        " only.",
        bare_inverse_square,
    ),
}
CALCULATIONS: dict[str, Calculation] = {
    "cure.q10": Direct("cure_time_at", TIMES, {"cure_time_at": "time_new"}),
    "cure.pot_life": Direct("pot_life_at", {**TIMES, "reference_life": "time_ref life_ref"}),
    "cure.arrhenius": Direct("cure_time_by_energy", ENERGY, {"cure_time_by_energy": "time_new"}),
    "cure.Ea_for_doubling": Direct(
        "energy_for_doubling",
        {"low_temperature": "low", "high_temperature": "high"},
        {"energy_for_doubling": "Ea"},
    ),
    "cure.oven_time": oven,
    "units.F_to_C": Direct("fahrenheit_to_celsius"),
    "units.C_to_F": Direct("celsius_to_fahrenheit"),
    "cure.ir_inverse_square": point_lamp,
    "cure.ir_disc_source": Direct("disc_lamp_ratio", LAMP, {"disc_lamp_ratio": "intensity_ratio"}),
    "visc.ford": ford,
    "visc.iso2431": Direct("iso_cup_viscosity"),
    "visc.iso_seconds_from_nu": Direct("iso_cup_seconds"),
    "visc.din4": Direct("din_cup_viscosity"),
    "visc.zahn": Direct("zahn_cup_viscosity", {"cup_number": "cup"}),
    "visc.gbt1723": four_cup,
    "visc.temperature": warmer,
    "visc.dynamic": Direct("dynamic_viscosity"),
}
