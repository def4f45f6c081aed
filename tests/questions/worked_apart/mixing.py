"""Mixing: parts by volume, percents of a part, parts on a scale, pours gone wrong."""

from fractions import Fraction

from tests.questions.worked_apart.sums import Numbers, Working, mean_by, percent


def mixed_density(v: Numbers) -> Fraction:
    return mean_by(v["parts"], (v["base_density"], v["hardener_density"]))


WORKED: dict[str, Working] = {
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
    "mixing/by_weight/mixed_density_in_pounds": mixed_density,
    "mixing/by_weight/weight_of_a_full_cup": lambda v: v["volume"] * mixed_density(v) + v["cup"],
    "mixing/by_weight/volume_on_the_scale": lambda v: v["wanted"] - v["shown"] / v["density"],
    "mixing/by_weight/pounds_in_the_tins": lambda v: (
        v["tins"] * (v["volume"] * v["density"] + v["tin"])
    ),
    "mixing/percent_or_parts/base_for_a_total_us": lambda v: (
        v["total"] / (1 + percent(v["reduction"]))
    ),
    "mixing/ratio_to_amounts/base_for_the_hardener_left": lambda v: (
        v["hardener"] / v["parts"][1] * v["parts"][0]
    ),
    "mixing/ratio_to_amounts/base_line_for_a_full_cup": lambda v: (
        v["full"] / sum(v["parts"]) * v["parts"][0]
    ),
    "mixing/ratio_to_amounts/overpoured_base_thinner": lambda v: (
        (v["poured"] - v["base"]) / v["base"] * v["thinner"]
    ),
}
