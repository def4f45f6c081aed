"""How the air and spraying calculations of published checks are asked of the relations."""

from fractions import Fraction

from generator.quantities import Quantity, unit_named
from generator.refinishing.gun_pressure import LOWEST_CAP
from tests.refinishing.published_adapter_inputs import CannotAdapt, Given, exact_number
from tests.refinishing.published_adapter_relations import (
    Calculation,
    Direct,
    Results,
    ask,
    ask_one,
    matched,
    of,
)

NOTHING = Fraction(0)
HUNDRED = Fraction(100)


def purge_time(given: Given) -> Results:
    """Minutes to thin a room's air; volume and flow may be in any units that go together."""
    takes = {
        "flow": "flow_per_min",
        "mixing_efficiency": "mixing_efficiency_K K efficiency",
        "start_level": "c_start start",
        "end_level": "c_end end",
    }
    answer = ask("dilution_time", **matched("dilution_time", given, takes, {}))
    return {"time": answer["dilution_time"]}


def filter_gauge(given: Given) -> Results:
    """Rise over a filter, and whether it must go by the booth's limit."""
    clean = given.number("dp_clean clean", "in_wg")
    now = given.number("dp_now now", "in_wg")
    if given.has("change_out_rise change_rise max_rise", "in_wg"):
        limit = given.number("change_out_rise change_rise max_rise", "in_wg")
        answer = ask("filter_by_rise", clean=clean, now=now, change_rise=limit)
    else:
        limit = given.number("change_out change_at limit", "in_wg")
        answer = ask("filter_by_reading", clean=clean, now=now, change_at=limit)
    return {
        "rise": answer["rise"],
        "left": answer["left"],
        "now": of(now, "in_wg"),
        "change": answer["left"].number <= 0,
    }


def hose_chain(given: Given) -> Results:
    """Pressure left after any number of drops in a row."""
    start = given.number("start start_pressure supply", "psi")
    drops = list(given.numbers("drops drop", "psi"))
    inlet, total = start, NOTHING
    while drops:
        names = ("first_drop", "second_drop", "third_drop", "fourth_drop")
        chunk = dict(zip(names, drops[:4], strict=False))
        answer = ask("gun_inlet_pressure", start_pressure=inlet, **chunk)
        inlet, total = answer["inlet"].number, total + answer["total_drop"].number
        drops = drops[4:]
    return {"gun_inlet inlet": of(inlet, "psi"), "total_drop": of(total, "psi")}


def compressor(given: Given) -> Results:
    """Air for any number of tools, each with its flow, share of the time and count."""
    used = NOTHING
    for tool in given.rows("tools tools_cfm"):
        flow, duty, count = [*map(exact_number, tool), Fraction(1), Fraction(1)][:3]
        used += ask_one("tool_air", flow=flow, duty=duty * HUNDRED, count=count)
    other = given.number("misc other misc_air", "cfm", 0)
    answer = ask(
        "compressor_demand", first_tools=used, other_air=other, margin=extra_percent(given)
    )
    return {"average": answer["average"], "required": answer["required"]}


def extra_percent(given: Given) -> Fraction:
    """Return the margin as a percentage on top; checks write 1.25 or 25 %."""
    if given.has("margin_pct", "one"):
        return given.number("margin_pct", "one")
    return (given.number("margin factor", "one", 1) - 1) * HUNDRED


def hvlp(given: Given) -> Results:
    """Whether a cap pressure is inside the limits, judged in the unit of the rule."""
    pressure = given.number("cap cap_pressure", "psi")
    if pressure < LOWEST_CAP:
        # the relation refuses to speak of a gun that gets no air
        return {"is_hvlp": False}
    left = ask("cap_pressure_left", cap_pressure=pressure)["cap_pressure_left"]
    return {"is_hvlp": left.number >= 0, "left": left}


def passes(given: Given) -> Results:
    """Strokes over a panel; where the first one starts follows from the overlap."""
    given.text("first_pass_centred_on_edge")
    takes = {"panel_height": "panel height", "fan_width": "fan"}
    answer = ask("spray_passes", **matched("spray_passes", given, takes, {}))
    return {
        "index spacing": answer["spacing"],
        "passes": counted(answer["passes"]),
        "layers_at_a_point layers": counted(answer["layers"]),
        "start_outside": answer["start_outside"],
    }


def counted(quantity: Quantity) -> Quantity:
    """Return a count as a bare number."""
    return Quantity(quantity.number, unit_named("one"))


def removal(given: Given) -> Results:
    """Minutes until a share of what floats in the air has gone."""
    if not given.has("removal removal_pct", "percent"):
        raise CannotAdapt("no input means removal")
    answer = ask("removal_time", **matched("removal_time", given, {}, {}))
    return {"time": answer["removal_time"]}


CALCULATIONS: dict[str, Calculation] = {
    "air.cfm": Direct("air_flow_needed"),
    "air.velocity": Direct("face_velocity"),
    "air.ach": Direct("air_changes"),
    "air.purge_ach": removal,
    "air.purge_time": purge_time,
    "air.flow_from_halflife": Direct("flow_from_half_life"),
    "air.filter_dp": filter_gauge,
    "air.hose_chain": hose_chain,
    "air.hose_scale_length": Direct(
        "hose_drop_for_length",
        {
            "drop": "drop_old drop_ref",
            "length": "length_old length_ref",
            "new_length": "length_new",
        },
        {"hose_drop_for_length": "drop_new drop"},
    ),
    "air.hose_scaling": Direct(
        "hose_drop_ratio",
        {"bore": "bore_old", "new_bore": "bore_new", "flow": "old", "new_flow": "new"},
        {"hose_drop_ratio": "drop_ratio"},
    ),
    "air.pump_up_cfm": Direct("pump_up_flow", {"air_pressure": "atm"}),
    "air.compressor_demand": compressor,
    "air.fan_law": Direct(
        "fan_at_speed",
        {"speed": "old", "new_speed": "new", "flow": "old", "pressure": "sp_old", "power": "old"},
        {"new_flow": "new", "new_pressure": "sp_new", "new_power": "new"},
        # what a check leaves out it does not ask about either
        {"flow": 1, "pressure": 1, "power": 1},
    ),
    "air.hvlp_ok": hvlp,
    "spray.transfer_efficiency": Direct(
        "measured_transfer_efficiency",
        {"solids_on_part": "solids_deposited", "paint_sprayed": "liquid_sprayed"},
        {"measured_transfer_efficiency": "te"},
    ),
    "spray.wet_film": Direct("wet_film_from_gun", {"fluid_flow": "fluid"}),
    "spray.gun_speed_for_film": Direct("gun_speed_for_film", {"fluid_flow": "fluid"}),
    "spray.passes": passes,
    "spray.fan_at_distance": Direct(
        "fan_at_distance",
        {"fan_width": "fan fan_old", "distance": "distance_old", "new_distance": "distance_new"},
        {"new_fan_width": "fan fan_new"},
    ),
}
