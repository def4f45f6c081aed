"""Numeric items of the bank worked a second time, in plain fractions, from the trade's own sums.

Nothing here knows the items' formulas or the relations. Each entry takes the drawn numbers in the
units the item draws them in, and gives the answer in the answer's unit. Percents are numbers out
of 100. Metric and US sizes: 1 in = 25.4 mm, 1 US gallon = 231 cubic inches (NIST SP 811, B.8).
"""

from collections.abc import Callable, Mapping
from fractions import Fraction
from typing import Any

MICROMETRES_IN_A_MIL = Fraction(254, 10)
LITRES_IN_A_GALLON = 231 * Fraction(254, 100) ** 3 / 1000
# the trade's round figure for one gallon at one mil, stated in the questions
SQUARE_FEET_A_GALLON = 1604


def percent(number: Fraction) -> Fraction:
    return number / 100


def wet(dry: Fraction, solids: Fraction, thinner: Fraction = Fraction(0)) -> Fraction:
    """Wet film that leaves a dry film: thinner swells the volume and brings no solids."""
    return dry * (100 + thinner) / solids


def dry(wet_film: Fraction, solids: Fraction, thinner: Fraction = Fraction(0)) -> Fraction:
    return wet_film * solids / (100 + thinner)


def coats(target: Fraction, wet_film: Fraction, solids: Fraction) -> Fraction:
    """Fewest whole coats: the quotient when it is whole, else the next whole number."""
    return Fraction(-(-target * 100 // (wet_film * solids)))


def litres_on(area: Fraction, dry_film: Fraction, solids: Fraction, efficiency: Fraction) -> Any:
    """Square metres times micrometres make millilitres; losses and solids divide."""
    return area * dry_film / percent(solids) / percent(efficiency)


Numbers = Mapping[str, Any]
WORKED_APART: dict[str, Callable[[Numbers], Fraction]] = {
    "abrasives/block_and_pad/area_ratio": lambda v: (v["large"] / v["small"]) ** 2,
    "abrasives/extraction/dust_cut": lambda v: 100 - 100 * v["dust_after"] / v["dust_before"],
    "cleaning/chemical_strip/stripper_for_two_coats": lambda v: v["area"] / v["rate"] * v["coats"],
    "cleaning/cleaner_choice/concentrate_for_a_wash": lambda v: (
        v["total"] / (v["parts"][0] + v["parts"][1]) * v["parts"][0]
    ),
    "cleaning/two_cloth_wipe/wipe_sections": lambda v: v["area"] / v["section"],
    "filler/hardener_amount/paste_for_batch": lambda v: (
        v["filler"] * percent(v["hardener_percent"])
    ),
    "filler/hardener_amount/percent_on_scale": lambda v: 100 * v["paste"] / v["filler"],
    "filler/hardener_amount/percent_with_board": lambda v: (
        100 * v["paste"] / (v["with_filler"] - v["board"])
    ),
    "filler/hardener_amount/filler_for_paste": lambda v: v["paste"] * 100 / v["hardener_percent"],
    "filler/hardener_amount/paste_still_missing": lambda v: (
        v["filler"] * percent(v["hardener_percent"]) - v["paste_there"]
    ),
    "filler/mix/batch_for_low": lambda v: (
        v["low_length"] * v["low_width"] * v["low_depth"] / 10 * v["filler_density"]
    ),
    "film_build/coats/coats_to_target": lambda v: coats(v["target"], v["wet"], v["volume_solids"]),
    "film_build/coats/equal_wet_coats": lambda v: wet(
        v["target"] / coats(v["target"], v["wet"], v["volume_solids"]), v["volume_solids"]
    ),
    "film_build/convert_units/mil_to_micrometre": lambda v: v["film"] * MICROMETRES_IN_A_MIL,
    "film_build/convert_units/micrometre_to_mil": lambda v: v["film"] / MICROMETRES_IN_A_MIL,
    "film_build/convert_units/us_gallon_in_litres": lambda v: v["volume"] * LITRES_IN_A_GALLON,
    "film_build/convert_units/temperature_margin_in_kelvin": lambda v: v["difference"] * 5 / 9,
    "film_build/convert_units/dew_margin": lambda v: v["panel"] - v["dew"],
    "film_build/dry_from_wet/dry_film_unthinned": lambda v: dry(v["wet"], v["volume_solids"]),
    "film_build/dry_from_wet/dry_film_thinned": lambda v: dry(
        v["wet"], v["volume_solids"], v["thinner"]
    ),
    "film_build/dry_from_wet/wet_film_for_target": lambda v: wet(v["dry"], v["volume_solids"]),
    "film_build/dry_from_wet/wet_film_for_target_thinned": lambda v: wet(
        v["dry"], v["volume_solids"], v["thinner"]
    ),
    "film_build/dry_from_wet/wet_film_in_mils": lambda v: wet(v["dry"], v["volume_solids"]),
    "film_build/dry_from_wet/solids_after_thinner": lambda v: (
        v["volume_solids"] / (1 + percent(v["thinner"]))
    ),
    "film_build/dry_from_wet/solids_of_a_three_part_mix": lambda v: (
        (v["parts"][0] * v["base_solids"] + v["parts"][1] * v["hardener_solids"]) / sum(v["parts"])
    ),
    "film_build/dry_from_wet/solids_from_two_readings": lambda v: 100 * v["dry"] / v["wet"],
    "film_build/order_material/cup_fills": lambda v: v["total"] / v["cup"],
    "film_build/order_material/gun_swap": lambda v: (
        v["old_amount"] * v["old_share"] / v["new_share"]
    ),
    "film_build/order_material/job_base": lambda v: (
        v["paint"] * (1 + percent(v["margin"])) * v["parts"][0] / sum(v["parts"])
    ),
    "film_build/order_material/job_total": lambda v: (
        litres_on(v["area"], v["dry"] * v["coats"], v["volume_solids"], v["efficiency"])
        * (1 + percent(v["margin"]))
    ),
    "film_build/paint_needed/millilitres_for_panels": lambda v: litres_on(
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
    "film_build/read_gauges/zero_error": lambda v: v["reading"] - v["bare"],
    "film_build/read_gauges/panel_mean": lambda v: sum(v.values()) / len(v),
    "film_build/total_build/film_on_the_panel": lambda v: (
        v["first"] + v["second"] - v["sanded"] + v["third"] + v["fourth"]
    ),
    "film_build/total_build/film_to_spray_for_blocking": lambda v: wet(
        v["wanted"] + v["sanded"], v["volume_solids"]
    ),
    "film_build/total_build/room_for_new_film": lambda v: (
        v["build_limit"] - (v["existing"] - v["sanded"])
    ),
    "metal_preparation/etch_primer/activator_for_one_to_one": lambda v: v["total"] / 2,
    "metal_preparation/etch_primer/wash_primer_mil_to_um": lambda v: (
        v["high"] * MICROMETRES_IN_A_MIL
    ),
    "metal_preparation/etch_primer/wet_comb_for_etch": lambda v: wet(
        v["dry_film"], v["volume_solids"]
    ),
    "metal_preparation/prompt_priming/minutes_left_in_the_window": lambda v: (
        60 * v["window"] - v["cleaning"] - v["masking"] - v["mixing"]
    ),
    "mixing/by_weight/hardener_on_the_scale": lambda v: (
        v["base_mass"] / v["base_density"] * v["parts"][1] / v["parts"][0] * v["hardener_density"]
    ),
    "mixing/by_weight/mass_of_the_batch": lambda v: sum(
        v[f"{name}_volume"] * v[f"{name}_density"] for name in ("base", "hardener", "thinner")
    ),
    "mixing/by_weight/density_from_a_full_tin": lambda v: (
        (v["gross"] - v["tin"]) / (1000 * v["volume"])
    ),
    "mixing/by_weight/mixed_density_check": lambda v: (
        (v["parts"][0] * v["base_density"] + v["parts"][1] * v["hardener_density"])
        / sum(v["parts"])
    ),
    "mixing/percent_or_parts/thinner_on_base": lambda v: v["base"] * percent(v["reduction"]),
    "mixing/percent_or_parts/thinner_on_base_and_hardener": lambda v: (
        v["base"] * (1 + v["parts"][1] / v["parts"][0]) * percent(v["reduction"])
    ),
    "mixing/percent_or_parts/base_in_percent_style_mix": lambda v: (
        v["total"] / (1 + percent(v["thinner"])) * v["parts"][0] / (v["parts"][0] + v["parts"][1])
    ),
    "mixing/percent_or_parts/parts_as_reduction": lambda v: (
        100 * v["thinner_parts"] / v["base_parts"]
    ),
    "mixing/percent_or_parts/hardener_share_of_mix": lambda v: (
        100 * v["parts"][1] / sum(v["parts"])
    ),
    "mixing/percent_or_parts/thinner_share_of_mix": lambda v: (
        100 * v["reduction"] / (100 + v["reduction"])
    ),
    "mixing/pot_life/spraying_minutes_left": lambda v: v["pot_life"] - v["stirring"] - v["loading"],
    "mixing/ratio_to_amounts/base_from_total": lambda v: (
        v["total"] / sum(v["parts"]) * v["parts"][0]
    ),
    "mixing/ratio_to_amounts/thinner_from_total_us": lambda v: (
        v["total"] / sum(v["parts"]) * v["parts"][2]
    ),
    "mixing/ratio_to_amounts/hardener_from_base": lambda v: (
        v["base"] / v["parts"][0] * v["parts"][1]
    ),
    "mixing/ratio_to_amounts/hardener_two_part": lambda v: (
        v["total"] / sum(v["parts"]) * v["parts"][1]
    ),
    "mixing/ratio_to_amounts/fill_line_after_hardener": lambda v: (
        v["base"] / v["parts"][0] * (v["parts"][0] + v["parts"][1])
    ),
    "mixing/ratio_to_amounts/fill_line_after_thinner": lambda v: (
        v["base"] / v["parts"][0] * sum(v["parts"])
    ),
    "mixing/ratio_to_amounts/largest_batch_base": lambda v: (
        v["capacity"] / sum(v["parts"]) * v["parts"][0]
    ),
    "mixing/ratio_to_amounts/overpoured_hardener": lambda v: (
        v["over"] * v["parts"][0] / v["parts"][1]
    ),
    "mixing/ratio_to_amounts/overpoured_base": lambda v: (
        (v["base"] + v["over"]) * v["parts"][1] / v["parts"][0]
    ),
    "mixing/weigh_formula/scaled_toner": lambda v: v["toner"] / v["formula_total"] * v["wanted"],
    "mixing/weigh_formula/running_total_reading": lambda v: (
        (v["first"] + v["second"]) / v["formula_total"] * v["wanted"]
    ),
    "mixing/weigh_formula/toner_overpour": lambda v: v["poured"] / v["planned"] * v["total"],
    "primers/block/left_after_blocking": lambda v: (
        dry(2 * v["wet"], v["volume_solids"]) - v["sand_off"]
    ),
    "primers/mix_and_strain/mark_after_hardener": lambda v: (
        v["base"] * (1 + v["parts"][1] / v["parts"][0])
    ),
    "primers/reprime/stack_after_spot": lambda v: (
        v["old"] * MICROMETRES_IN_A_MIL + v["repair"] - v["sand_off"]
    ),
    "primers/spray_surfacer/coats_for_target": lambda v: coats(
        v["target"], v["wet_per_coat"], v["volume_solids"]
    ),
    "primers/spray_surfacer/wet_for_sand_off": lambda v: wet(
        v["wanted"] + v["sand_off"], v["volume_solids"]
    ),
}
"""The second working of each item by its name."""
