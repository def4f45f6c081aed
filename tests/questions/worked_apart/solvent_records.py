"""Environment records: VOC of a mix, beside water, by solids (40 CFR 59.104), and the logs."""

from fractions import Fraction

from tests.questions.worked_apart.sums import (
    OUNCES_IN_A_GALLON,
    QUARTS_IN_A_GALLON,
    Numbers,
    Working,
    mean_by,
    percent,
)

# stated in the questions
GRAMS_PER_LITRE = Fraction("119.83")
KILOGRAMS_IN_A_POUND = Fraction("0.45359")
POUNDS_IN_A_SHORT_TON = 2000


def mix(v: Numbers, *names: str) -> Fraction:
    return mean_by(v["parts"], (v[name] for name in names))


def three(v: Numbers) -> Fraction:
    return mix(v, "base", "hardener", "thinner")


def into_the_air(v: Numbers) -> Fraction:
    """Sprayed amount gives off all, cleaner what was not caught; amounts times contents."""
    return v["sprayed"] * v["voc"] + v["cleanup"] * v["cleanup_voc"] * (1 - percent(v["recovered"]))


def thinner_to_the_limit(v: Numbers, mass: Fraction) -> Fraction:
    """Thinner with which (mass + thinner x its VOC) / (volume + thinner) just meets the limit."""
    return (v["limit"] * v["volume"] - mass) / (v["thinner_voc"] - v["limit"])


def counted_volatiles(v: Numbers) -> Fraction:
    """VOC in g/L of what is neither water nor exempt, over the volume that is neither."""
    return (v["volatiles"] - v["water"] - v["exempt"]) / (
        v["coating"] - (v["water_volume"] + v["exempt_volume"]) / 1000
    )


def by_solids(voc: Fraction, solvent: Fraction) -> Fraction:
    """VOC for each volume of solids: what is not solvent, by volume, is solids."""
    return voc / (1 - voc / solvent)


def by_weight(v: Numbers) -> Fraction:
    """VOC less water of one gallon, from percents by weight."""
    solvent = percent(100 - v["solids"] - v["water"]) * v["density"]
    return solvent / (1 - percent(v["water"]) * v["density"] / v["water_density"])


def by_mass(v: Numbers) -> Fraction:
    names = ("base", "hardener", "thinner")
    masses = [part * v[f"{n}_density"] for part, n in zip(v["parts"], names, strict=True)]
    return mean_by(masses, (v[f"{n}_voc"] for n in names))


LOG = "environment_records/keep_logs"
VOC = "environment_records/voc_figures"
WORKED: dict[str, Working] = {
    f"{LOG}/solvent_from_one_job": lambda v: into_the_air(v) / 1000,
    f"{LOG}/a_month_in_kilograms": lambda v: v["amount"] * v["content"] * KILOGRAMS_IN_A_POUND,
    f"{LOG}/tons_in_a_year": lambda v: (
        v["vehicles"] * v["volume"] * v["content"] / POUNDS_IN_A_SHORT_TON
    ),
    f"{LOG}/shop_without_a_stop": lambda v: (
        v["open"] / v["each"] * v["volume"] * v["content"] / POUNDS_IN_A_SHORT_TON
    ),
    f"{LOG}/job_on_a_us_log": lambda v: into_the_air(v) / QUARTS_IN_A_GALLON,
    f"{LOG}/better_catch": lambda v: (
        v["jobs"] * v["cleanup"] * v["cleanup_voc"] * percent(v["new"] - v["old"]) / 1000
    ),
    f"{LOG}/saved_by_catching_the_cleaner": lambda v: (
        v["cleanup"] * v["cleanup_voc"] * percent(v["better"] - v["now"])
    ),
    f"{VOC}/mix_by_ratio": three,
    f"{VOC}/two_part_us": lambda v: mean_by(
        (v["base"], v["thinner"]), (v["base_voc"], v["thinner_voc"])
    ),
    f"{VOC}/after_thinning": lambda v: (
        (v["mass"] + v["thinner"] * v["thinner_voc"]) / (v["volume"] + v["thinner"])
    ),
    f"{VOC}/most_thinner": lambda v: 1000 * thinner_to_the_limit(v, v["volume"] * v["voc"]),
    f"{VOC}/most_thinner_us": lambda v: v["wanted"] - thinner_to_the_limit(v, v["mass"]),
    f"{VOC}/less_water_pool": lambda v: v["mass"] / (v["coating"] - v["water"]),
    f"{VOC}/waterborne_by_weight": by_weight,
    f"{VOC}/exempt_thinner": lambda v: counted_volatiles({"water": 0, "water_volume": 0, **v}),
    f"{VOC}/base_and_clear": lambda v: (v["base"] + 2 * v["clear"]) / 3,
    f"{VOC}/per_gallon_of_solids": lambda v: by_solids(v["voc"], v["solvent"]),
    f"{VOC}/thinned_per_solids": lambda v: (
        by_solids(v["second"], v["solvent"]) / by_solids(v["first"], v["solvent"])
    ),
    f"{VOC}/mix_by_mass": by_mass,
    f"{VOC}/mix_simplified": lambda v: mix(v, "base_voc", "hardener_voc", "thinner_voc"),
    f"{VOC}/pounds_to_grams": lambda v: v["content"] * GRAMS_PER_LITRE,
    f"{VOC}/mixed_for_a_us_form": lambda v: three(v) / GRAMS_PER_LITRE,
    f"{VOC}/mix_over_the_limit": lambda v: three(v) - v["limit"],
    f"{VOC}/most_thinner_in_ounces": lambda v: (
        OUNCES_IN_A_GALLON * thinner_to_the_limit(v, v["mass"])
    ),
    f"{VOC}/thinner_as_a_percentage": lambda v: (
        100 * thinner_to_the_limit(v, v["volume"] * v["voc"]) / v["volume"]
    ),
    f"{VOC}/rule_figure_with_water": counted_volatiles,
    f"{VOC}/rule_figure_in_pounds": lambda v: counted_volatiles(v) / GRAMS_PER_LITRE,
    f"{VOC}/pour_two_primers": lambda v: mean_by(
        (v["first"], v["second"]), (v["first_voc"], v["second_voc"])
    ),
    f"{VOC}/thinned_in_litres": lambda v: (
        (v["mass"] + v["thinner"] * v["thinner_voc"]) / (v["volume"] + v["thinner"])
    ),
    f"{VOC}/less_water_in_litres": lambda v: v["mass"] / (v["coating"] - v["water"]),
    f"{VOC}/per_litre_of_solids": lambda v: v["voc"] / percent(v["solids"]),
    f"{VOC}/solids_figure_in_grams": lambda v: by_solids(v["voc"], v["solvent"]) * GRAMS_PER_LITRE,
    f"{VOC}/us_can_under_a_limit": lambda v: v["limit"] - v["content"] * GRAMS_PER_LITRE,
    f"{VOC}/over_the_limit_as_mixed": lambda v: three(v) - v["limit"],
    f"{VOC}/waterborne_over_the_limit": lambda v: (
        1000 * v["mass"] / (v["coating"] - v["water"]) - v["limit"]
    ),
    f"{VOC}/voc_on_a_litre_of_solids": lambda v: v["voc"] / percent(v["solids"]),
    f"{VOC}/clear_allowed_under_a_system_limit": lambda v: (3 * v["limit"] - v["base"]) / 2,
    f"{VOC}/limit_in_pounds": lambda v: v["limit"] / v["pound"],
}
