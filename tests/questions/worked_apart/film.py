"""Film build: wet and dry film, volume solids, coats, what a build leaves room for."""

from fractions import Fraction

from tests.questions.worked_apart.sums import (
    QUARTS_IN_A_GALLON,
    Numbers,
    Working,
    coats,
    dry,
    mean_by,
    percent,
    wet,
)


def mixed_solids(v: Numbers) -> Fraction:
    """Base and hardener bring solids, a third part brings none."""
    parts = v["parts"]
    known = (v["base_solids"], v["hardener_solids"], Fraction(0))
    return mean_by(parts, known[: len(parts)])


def coats_and_minutes(v: Numbers) -> Fraction:
    number = coats(v["target"], v["wet"], v["volume_solids"])
    return number * v["spray"] + (number - 1) * v["flash"]


def blocked(v: Numbers) -> Fraction:
    film = v["wanted"] + v["sanded"]
    return wet(film, v["volume_solids"]) / coats(film, v["wet"], v["volume_solids"])


FILM = "film_build/dry_from_wet"

WORKED: dict[str, Working] = {
    "film_build/coats/coats_to_target": lambda v: coats(v["target"], v["wet"], v["volume_solids"]),
    "film_build/coats/equal_wet_coats": lambda v: wet(
        v["target"] / coats(v["target"], v["wet"], v["volume_solids"]), v["volume_solids"]
    ),
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
    "film_build/coats/coats_and_minutes": coats_and_minutes,
    f"{FILM}/wet_mils_for_each_coat": lambda v: wet(
        v["target"] / v["coats"], v["volume_solids"], v["thinner"]
    ),
    f"{FILM}/dry_mils_short_of_the_sheet": lambda v: (
        v["wanted"] - v["coats"] * dry(v["wet"], v["volume_solids"])
    ),
    f"{FILM}/solids_from_two_mil_readings": lambda v: 100 * v["dry"] / v["wet"],
    f"{FILM}/solids_below_the_sheet": lambda v: v["sheet_solids"] - 100 * v["dry"] / v["wet"],
    f"{FILM}/dry_film_after_thinning": lambda v: (
        v["coats"] * dry(v["wet"], v["volume_solids"], v["thinner"])
    ),
    f"{FILM}/solids_with_a_quart_of_thinner": lambda v: (
        v["paint"] * v["volume_solids"] / (v["paint"] + v["thinner"] / QUARTS_IN_A_GALLON)
    ),
    f"{FILM}/wet_film_of_a_two_part_mix": lambda v: wet(v["dry"], mixed_solids(v)),
    f"{FILM}/dry_mils_of_a_mix": lambda v: dry(v["wet"], mixed_solids(v)),
    "film_build/total_build/coats_for_a_blocked_primer": blocked,
}
