"""How the VOC calculations of published checks are asked of the relations."""

from fractions import Fraction

from generator.quantities import Unit, unit_named
from tests.refinishing.published_adapter_inputs import CannotAdapt, Given
from tests.refinishing.published_adapter_relations import (
    Calculation,
    Direct,
    Results,
    ask,
    ask_one,
    of,
)

NOTHING = Fraction(0)
POOL = "voc voc_total total"


def mix(given: Given) -> Results:
    """VOC of any number of parts; volumes in one unit, whichever, as only their share counts."""
    volumes = given.numbers("volumes parts volume", "one") or given.numbers("volumes volume", "L")
    contents = given.numbers("voc", "g/L")
    if not 2 <= len(volumes) == len(contents):
        raise CannotAdapt("two or more volumes need as many VOC contents")
    volume, content = volumes[0], contents[0]
    for other, its_content in zip(volumes[1:], contents[1:], strict=True):
        content = ask_one(
            "voc_of_mix", volume_1=volume, voc_1=content, volume_2=other, voc_2=its_content
        )
        volume += other
    return {"voc": of(content, "g/L")}


def pool(given: Given) -> Results:
    """VOC of a pooled amount with and without its water, in the units of the inputs."""
    unit = pooled_unit(given, "coating")
    answer = ask(
        "voc_less_water",
        voc_mass=given.number(POOL, "g"),
        coating=given.number("coating volume", "L"),
        water_volume=given.number("water", "L", 0),
        exempt_volume=given.number("exempt", "L", 0),
    )
    return {
        "actual as_applied": answer["as_applied"].to(unit),
        "less_water": answer["less_water"].to(unit),
    }


def pooled_unit(given: Given, volume: str) -> Unit:
    """Return mass over volume in the units in which a check writes both."""
    mass, room = given.unit(POOL), given.unit(volume)
    pounds = mass is None or mass.name == "lb"
    gallons = room is None or room.name == "us_gal"
    if pounds and gallons:
        return unit_named("lb/us_gal")
    return unit_named("kg/L" if mass and mass.name == "kg" else "g/L")


def pool_per_solids(given: Given) -> Results:
    """VOC of a pooled amount over the volume of its solids, in the units of the inputs."""
    unit = pooled_unit(given, "solids")
    mass, solids = given.number(POOL, "g"), given.number("solids", "L")
    coating = given.number("coating volume", "L", solids)
    percent = 100 * solids / coating
    answer = ask("voc_over_solids", voc=mass / coating, volume_solids=percent)["voc_over_solids"]
    return {"lb_voc_per_gal_solids per_solids voc_solids solids": answer.to(unit)}


def multistage(given: Given) -> Results:
    """VOC of a system with up to two midcoats; any unit, as the average keeps it."""
    base, clear = given.number("basecoat voc_basecoat", "g/L"), given.number("clearcoat", "g/L")
    middle = given.numbers("midcoats voc_midcoats", "g/L")
    if len(middle) > 2:
        return {"voc_multi voc": of((base + sum(middle) + 2 * clear) / (len(middle) + 3), "g/L")}
    if not middle:
        answer = ask("voc_of_two_stages", basecoat=base, clearcoat=clear)["voc_of_two_stages"]
    else:
        names = {f"midcoat_{n}": value for n, value in enumerate(middle, 1)}
        answer = ask("voc_of_multistage", basecoat=base, clearcoat=clear, **names)[
            "voc_of_multistage"
        ]
    return {"voc_multi voc": answer}


def yearly(given: Given) -> Results:
    """What a shop could emit in a year, by its hours or its vehicles, for one or more products."""
    amounts = given.numbers("per_vehicle volume_per_vehicle", "us_gal")
    contents = given.numbers("voc content -", "lb/us_gal")
    if given.has("vehicles_per_year vehicles", "one"):
        vehicles = given.number("vehicles_per_year vehicles", "one")
    else:
        vehicles = ask(
            "potential_emission",
            open_hours=given.number("per_year hours_per_year", "h"),
            hours_per_vehicle=given.number("per_vehicle hours_per_vehicle", "h"),
            volume_per_vehicle=amounts[0],
            voc=contents[0],
        )["vehicles"].number
    parts = [
        ask_one("yearly_emission", vehicles=vehicles, volume_per_vehicle=amount, voc=content)
        for amount, content in zip(amounts, contents, strict=True)
    ]
    return {
        "vehicles_per_year vehicles": of(vehicles, "one"),
        "per_year emission total": of(sum(parts, NOTHING), "us_ton"),
    }


def summed(given: Given) -> Results:
    """Emission of several products together, summed before any rounding."""
    tons = given.numbers("per_year emissions -", "us_ton")
    if not tons:
        return yearly(given)
    return {"per_year emission total": of(sum(tons, NOTHING), "us_ton")}


def weight_percent(given: Given) -> Results:
    """VOC by weight of any number of parts: by mass, and averaged by volume as an agency did."""
    shares = given.numbers("mix volumes parts", "one")
    contents = given.numbers("voc_wt voc", "percent")
    densities = given.numbers("density densities", "lb/us_gal")
    total, density, by_mass, by_volume = shares[0], densities[0], contents[0], contents[0]
    for share, content, its_density in zip(shares[1:], contents[1:], densities[1:], strict=True):
        parts = {"parts": (total, share)}
        gallons = {"base_density": density, "hardener_density": its_density}
        answer = ask(
            "voc_weight_percent", **parts, base_voc=by_mass, hardener_voc=content, **gallons
        )
        simple = ask(
            "voc_weight_percent", **parts, base_voc=by_volume, hardener_voc=content, **gallons
        )
        by_volume = simple["by_volume_share"].number
        # the relation's density has no unit of its own here: pounds per gallon stay pounds
        density, by_mass = answer["mixed_density"].number, answer["by_mass"].number
        total += share
    return {
        "density mixed_density": of(density, "lb/us_gal"),
        "true_voc_wt by_mass": of(by_mass, "percent"),
        "simplified_voc_wt by_volume_share simple_voc_wt": of(by_volume, "percent"),
    }


THINNER = {"volume": "coating", "voc_mass": POOL, "thinner_voc": "thinner"}
CALCULATIONS: dict[str, Calculation] = {
    "voc.mix": mix,
    "voc.add_thinner": Direct("voc_after_thinner", THINNER),
    "voc.max_thinner": Direct("maximum_thinner", THINNER, {"maximum_thinner": "max_thinner"}),
    "voc.less_water_lb": Direct(
        "voc_from_weight_percent",
        {"solids": "weight_solids", "water": "weight_water", "water_density": "water"},
        {"as_applied": "voc_actual actual", "less_water": "voc_less_water voc_regulatory"},
    ),
    "voc.regulatory_gL": Direct(
        "regulatory_voc",
        {"water_volume": "water", "exempt_volume": "exempt"},
        {"as_applied": "voc_actual actual", "less_water": "voc_regulatory regulatory"},
        {"water": 0, "exempt": 0, "water_volume": 0, "exempt_volume": 0},
    ),
    "voc.less_water_pool": pool,
    "voc.per_solids_pool": pool_per_solids,
    "voc.multistage": multistage,
    "voc.per_solids": Direct(
        "voc_per_solids",
        {"solvent_density": "voc_density density"},
        {"voc_per_solids": "lb_voc_per_gal_solids voc_solids"},
    ),
    "voc.pte": yearly,
    "voc.pte_sum": summed,
    "voc.job_emission": Direct(
        "job_emission",
        {"sprayed": "volume volume_rts", "recovered": "recovered_of_cleanup"},
        {"job_emission": "voc"},
        {"cleanup": 0, "cleanup_voc": 0, "recovered": 100},
    ),
    "voc.wt_pct_mix_simplified": weight_percent,
    "units.lbgal_to_gL": Direct("pound_per_gallon_to_gram_per_litre"),
    "units.gL_to_lbgal": Direct("gram_per_litre_to_pound_per_gallon"),
}
