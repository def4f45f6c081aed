"""Cleaning, bare metal, filler and primers before the gun."""

from tests.questions.worked_apart.sums import (
    MICROMETRES_IN_A_MIL,
    Working,
    coats,
    dry,
    percent,
    wet,
)

WORKED: dict[str, Working] = {
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
    "filler/hardener_amount/ounces_of_paste": lambda v: (
        v["filler"] * percent(v["hardener_percent"])
    ),
    "filler/hardener_amount/percent_over_the_sheet_in_ounces": lambda v: (
        100 * v["paste"] / v["filler"] - v["allowed"]
    ),
}
