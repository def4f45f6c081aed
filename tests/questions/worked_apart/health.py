"""Health: masks (29 CFR 1910.134), vapour over a day (1910.1000), noise (1910.95, NIOSH 98-126)."""

from fractions import Fraction

from tests.questions.worked_apart.sums import Numbers, Working, doubled, percent

# litres that a mole of vapour fills at 25 °C and one atmosphere, as the questions state
LITRES_IN_A_MOLE = Fraction("24.45")
DAY = 8


def reference(level: Fraction) -> Fraction:
    """Hours of a full dose in the US count."""
    return 8 / doubled((level - 90) / 5)


def milligrams(content: Fraction, mass: Fraction) -> Fraction:
    return content * mass / LITRES_IN_A_MOLE


def two_spells(v: Numbers) -> Fraction:
    return (v["high"] * v["first"] + v["low"] * v["second"]) / DAY


BREATH = "health_safety/breathing_protection"
AIR = "health_safety/noise_and_vapour"
SUPPLY = "shop_air_tools/breathing_air"
WORKED: dict[str, Working] = {
    f"{BREATH}/times_over_the_limit": lambda v: v["content"] / v["limit"],
    f"{BREATH}/extraction_first": lambda v: v["content"] * (1 - percent(v["share"])) / v["limit"],
    f"{BREATH}/air_for_a_crew": lambda v: v["tight"] * v["per_tight"] + v["loose"] * v["per_loose"],
    f"{SUPPLY}/air_for_masks": lambda v: v["tight"] * 115 + v["loose"] * 170,
    f"{SUPPLY}/air_for_masks_us": lambda v: v["tight"] * 4 + v["loose"] * 6,
    f"{SUPPLY}/air_left_for_one_more_hood": lambda v: (
        v["supply"] - v["tight"] * 115 - v["loose"] * 170
    ),
    f"{AIR}/reference_time": lambda v: reference(v["level"]),
    f"{AIR}/advised_time": lambda v: 480 / doubled((v["level"] - 85) / 3),
    f"{AIR}/dose_for_the_programme": lambda v: (
        100 * (v["loud"] / 4 + v["middle"] / 8 + v["low"] / 16)
    ),
    f"{AIR}/dose_for_the_limit": lambda v: 100 * (v["loud"] / 4 + v["middle"] / 8),
    f"{AIR}/average_of_a_day": lambda v: (
        (v["high"] * v["first"] + v["middle"] * v["second"] + v["low"] * v["third"]) / DAY
    ),
    f"{AIR}/long_shift_average": lambda v: v["content"] * v["shift"] / DAY,
    f"{AIR}/dust_of_a_day": lambda v: (v["sanding"] * v["first"] + v["rest"] * v["second"]) / DAY,
    f"{AIR}/two_vapours": lambda v: sum(
        v[name] / v[f"{name}_limit"] for name in ("first", "second", "third")
    ),
    f"{AIR}/parts_to_milligrams": lambda v: milligrams(v["content"], v["mass"]),
    f"{AIR}/milligrams_to_parts": lambda v: v["content"] * LITRES_IN_A_MOLE / v["mass"],
    f"{AIR}/share_of_one_spell": lambda v: 100 * v["time"] / (60 * reference(v["level"])),
    f"{AIR}/time_to_a_full_dose": lambda v: percent(100 - v["used"]) * 60 * reference(v["level"]),
    f"{AIR}/programme_dose_of_one_level": lambda v: 100 * v["time"] / 16,
    f"{AIR}/limit_dose_of_two_levels": lambda v: 100 * (v["loud"] / 2 + v["low"] / 8),
    f"{AIR}/two_doses_of_one_shift": lambda v: 100 * v["low"] / 16,
    f"{AIR}/shares_of_two_vapours": lambda v: (
        v["first"] / v["first_limit"] + v["second"] / v["second_limit"]
    ),
    f"{AIR}/mixture_over_a_day": lambda v: (
        v["first"] * v["time"] / DAY / v["first_limit"] + v["second"] / v["second_limit"]
    ),
    f"{AIR}/milligrams_of_a_day": lambda v: milligrams(two_spells(v), v["mass"]),
    f"{AIR}/vapour_in_the_room": lambda v: milligrams(v["content"], v["mass"]) * v["room"] / 1000,
    f"{AIR}/share_of_the_dose_from_one_task": lambda v: 100 * v["time"] / reference(v["level"]),
    f"{AIR}/two_counts_of_the_same_noise": lambda v: 100 * v["low"] / 16,
    f"{AIR}/times_over_the_limit_in_a_day": lambda v: two_spells(v) / v["limit"],
    f"{AIR}/parts_against_a_limit_in_milligrams": lambda v: (
        v["limit"] * v["volume"] / v["mass"] - v["reading"]
    ),
}
