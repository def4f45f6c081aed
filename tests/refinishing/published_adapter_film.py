"""How the film, material and whole-job calculations of published checks are asked."""

from fractions import Fraction

from generator.quantities import Quantity, unit_named
from tests.refinishing.published_adapter_inputs import Given
from tests.refinishing.published_adapter_mixing import PARTS, blended
from tests.refinishing.published_adapter_relations import (
    Calculation,
    Direct,
    Results,
    ask,
    ask_one,
    matched,
    of,
)

THINNER = "thinner_added_by_volume thinner_added thinner_by_volume"
SOLIDS = {"volume_solids": "vs vs_mix solids"}
PER_COAT = "dft_per_coat dft dft_each"
RELATION_CONSTANT = 1604
CONSTANT = "constant_ft2_mil_per_gal constant"
HUNDRED = Fraction(100)


def solids_of_mix(given: Given) -> Results:
    """Volume solids of a mix of any number of parts."""
    parts = given.numbers(PARTS, "one") or given.ratio()
    solids = given.numbers("volume_solids solids", "percent")
    mixed = blended("solids_of_mix", "solids", parts, solids)
    return {"volume_solids_mix volume_solids": of(mixed, "percent")}


def scaled_by_constant(given: Given, number: Fraction) -> Fraction:
    """Scale to the constant a check states: the relations use 1604, handbooks also 1600."""
    constant = given.text(CONSTANT)
    return number * Fraction(constant) / RELATION_CONSTANT if constant else number


def spread_us(given: Given) -> Results:
    """Spreading rate in US units."""
    arguments = matched("spreading_rate_us", given, SOLIDS, {})
    rate = scaled_by_constant(given, ask_one("spreading_rate_us", **arguments))
    return {"spreading_rate": of(rate, "ft2/us_gal")}


def area_covered_us(given: Given) -> Results:
    """Area that an amount covers in US units, with the share that reaches the panel."""
    arguments = matched("area_covered_us", given, SOLIDS, {"volume": 1})
    area = scaled_by_constant(given, ask_one("area_covered_us", **arguments))
    return {"area area_covered": of(area, "ft2")}


def constant_us(given: Given) -> Results:
    """Square feet that a US gallon of pure solids covers at one mil, from the metric relation."""
    one_mil = ask_one("mil_to_um", film=Fraction(1))
    rate = ask("spreading_rate", volume_solids=HUNDRED, dry_film=one_mil)["spreading_rate"]
    value = rate.to(unit_named("ft2/us_gal")).number
    # a check may build the constant from another gallon than the US one
    value *= Fraction(given.text("in3_per_gal", "231")) / 231
    value *= 144 / Fraction(given.text("in2_per_ft2", "144"))
    value *= Fraction(given.text("mil_per_in", "1000")) / 1000
    return {"ft2_mil_per_gal constant": of(value, "one")}


def stack(given: Given) -> Results:
    """Film of any number of layers less what is sanded off."""
    layers = given.numbers("layers_dft layers dft", "um")
    sanded = given.numbers("sand_off sanded_off sanding", "um")
    # the relation adds two to four layers; more are added onto their sum
    total, rest = Fraction(0), [*layers]
    while rest:
        second, third, fourth = [*rest[:3], Fraction(0), Fraction(0), Fraction(0)][:3]
        total = ask_one("film_stack", first=total, second=second, third=third, fourth=fourth)
        rest = rest[3:]
    left = ask_one(
        "film_stack", first=total, second=Fraction(0), sanded_off=sum(sanded, Fraction(0))
    )
    return {"total stack film_stack": of(left, "um")}


def transfer_swap(given: Given) -> Results:
    """New amount and savings after a change of gun, in litres or any unit the check uses."""
    takes = {
        "old_amount": "litres_or_gal_old amount_old old volume_old",
        "old_efficiency": "te_old",
        "new_efficiency": "te_new",
    }
    unit = given.unit("old amount_old old_amount volume_old") or unit_named("L")
    answer = ask("transfer_swap", **matched("transfer_swap", given, takes, {}))
    price = given.number("price_per_unit price", "one", 0)
    return {
        "new_amount new": answer["new_amount"],
        "saved_amount saved": answer["saved"],
        "saved_money": of(price * answer["saved"].to(unit).number, "one"),
    }


def whole_job(given: Given) -> Results:
    """The amount to mix for a job with a margin, split by parts, and the fills of the cup."""
    takes = {"dry_film": PER_COAT, "cup": "gun_cup", "margin": "margin_of_total"}
    missing = {"coats": 1, "margin": 0, "transfer_efficiency": 100, "cup": 600}
    answer = ask("ready_to_spray", **matched("ready_to_spray", given, takes, missing))
    return {
        "rts total": answer["total"],
        "cup_fills fills": Quantity(answer["fills"].number, unit_named("one")),
        **{can: answer[can] for can in ("base", "hardener", "thinner")},
    }


CALCULATIONS: dict[str, Calculation] = {
    "film.wft_from_dft": Direct("wet_film", {"thinner": THINNER, **SOLIDS}),
    "film.dft_from_wft": Direct("dry_film", {"thinner": THINNER, **SOLIDS}),
    "film.vs_from_films": Direct(
        "volume_solids_from_films", {}, {"volume_solids_from_films": "volume_solids"}
    ),
    "film.vs_after_thinning": Direct(
        "solids_after_thinning",
        {"thinner": THINNER, **SOLIDS},
        {"solids_after_thinning": "volume_solids_after volume_solids"},
    ),
    "film.vs_of_mix": solids_of_mix,
    "film.spread_metric": Direct("spreading_rate", SOLIDS),
    "film.spread_us": spread_us,
    "film.spread_us_te": area_covered_us,
    "film.constant_us": constant_us,
    "film.practical_spread": Direct("practical_spreading_rate"),
    "film.litres_needed": Direct(
        "paint_needed",
        {"dry_film": PER_COAT, **SOLIDS},
        missing={"coats": 1, "transfer_efficiency": 100},
    ),
    "film.dft_from_volume_area": Direct(
        "film_from_volume", SOLIDS, {"wet": "wet_film", "dry": "dry_film"}
    ),
    "film.wft_from_spread": Direct("wet_film_from_spread", {"spread": "spreading_rate"}),
    "film.coats_needed": Direct(
        "coats_needed",
        {"target": "target_dft", "wet_per_coat": "max_wft_per_coat wft_per_coat", **SOLIDS},
        {"dry_per_coat": "dft_per_coat", "wet_per_equal_coat": "wft_per_equal_coat"},
    ),
    "film.stack": stack,
    "film.apply_for_sandoff": Direct(
        "film_for_sand_off",
        {"wanted": "dft_wanted_after_sanding dft_wanted", "sand_off": "sanded_off", **SOLIDS},
        {"dry": "dft_to_apply dft", "wet": "total_wft wft wft_to_apply"},
    ),
    "film.te_swap": transfer_swap,
    "film.mass_per_area": Direct("mass_per_area"),
    "job.rts_split": whole_job,
}
