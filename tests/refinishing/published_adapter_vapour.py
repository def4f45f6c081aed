"""How the fire and respirator calculations of published checks are asked of the relations."""

from generator.quantities import Quantity, Unit, unit_named
from tests.refinishing.published_adapter_inputs import Given
from tests.refinishing.published_adapter_relations import (
    Bare,
    Calculation,
    Direct,
    Results,
    ask,
    matched,
)
from tests.refinishing.published_adapter_units import unit_spelled

OEL = "oel pel exposure_limit limit"
LIMIT = {"lower_limit": "lel_vol lel"}


def spill(given: Given) -> Results:
    """Vapour of a spill in a room."""
    takes = {"molecular_mass": "mol_weight", "lower_limit": "lel_vol lel", "volume": "-"}
    answer = ask("spill_vapour", **matched("spill_vapour", given, takes, {}))
    return {
        "vapour": answer["vapour"],
        "vol vapour_percent": answer["vapour_percent"],
        "of_lel share_of_limit": answer["share_of_limit"],
    }


def maximum_use(given: Given) -> Results:
    """The most a mask may be used in; a level of danger that a check leaves out never binds."""
    unit = mask_unit(given)
    in_dust = unit.name != "ppm"
    own = "mg/m3" if in_dust else "ppm"
    factor = given.number("apf protection_factor", "one")
    limit = Quantity(given.number(OEL, unit.name), unit)
    product = factor * limit.to(unit_named(own)).number
    danger = given.number("idlh immediate_danger", own, product)
    arguments = {
        "protection_factor": factor,
        "exposure_limit": limit.to(unit_named(own)).number,
        "immediate_danger": danger,
    }
    if in_dust:
        most = ask("maximum_use_in_dust", **arguments)["maximum_use_in_dust"]
    else:
        cartridge = given.number("cartridge_limit cartridge", "ppm", product)
        isocyanates = given.number("isocyanates", "one", 0)
        most = ask(
            "maximum_use_concentration",
            **arguments,
            cartridge_limit=cartridge,
            isocyanates=isocyanates,
        )["maximum_use_concentration"]
    return {"muc maximum_use": most.to(unit)}


def mask_unit(given: Given) -> Unit:
    """Return the unit of a limit: of its name, else of the check's own word, else ppm."""
    written = given.text("unit units")
    stated = unit_spelled(written.replace("µ", "u")) if written else None
    return stated or given.unit(OEL) or unit_named("ppm")


def protection(given: Given) -> Results:
    """How many times over its limit a vapour is, and the least factor that covers it."""
    # the relation speaks of ppm; a ratio of two masses in the air is the same number
    own = "ppm" if mask_unit(given).name == "ppm" else "mg/m3"
    concentration = given.number("concentration conc", own)
    limit = given.number(OEL, own)
    danger = given.number("idlh immediate_danger", own, concentration + 1)
    answer = ask(
        "protection_needed",
        concentration=concentration,
        exposure_limit=limit,
        immediate_danger=danger,
        isocyanates=given.number("isocyanates", "one", 0),
    )
    return {
        "hazard_ratio": answer["hazard_ratio"],
        "min_apf_in_table min_apf factor": answer["factor"],
    }


def bare_maximum_use(given: Given) -> Results:
    """The factor times the limit, at most the level of danger where one is given."""
    unit = mask_unit(given)
    product = given.number("apf protection_factor", "one") * given.number(OEL, unit.name)
    danger = given.number("idlh immediate_danger", unit.name, product)
    return {"muc maximum_use": Quantity(min(product, danger), unit)}


BARE = {
    "respirator.muc": Bare(
        "The relation leaves the quarter mask and other factors out of its series; such a check"
        " tests the product only.",
        bare_maximum_use,
    ),
}
CALCULATIONS: dict[str, Calculation] = {
    "lel.percent": Direct(
        "share_of_lower_limit",
        {**LIMIT, "concentration": "conc vol"},
        {"share_of_lower_limit": "of_lel"},
    ),
    "lel.ppm_at_fraction": Direct("ppm_at_share", {**LIMIT, "share": "fraction"}),
    "lel.spill": spill,
    "lel.dilution_per_gal": Direct(
        "dilution_air", {**LIMIT, "vapour_per_gallon": "vapour"}, {"dilution_air": "air"}
    ),
    "respirator.muc": maximum_use,
    "respirator.required_pf": protection,
    "respirator.sar_air": Direct(
        "supplied_air_flow",
        {"loose_fitting": "loose_hood loose_hoods hoods"},
        {"flow": "min", "flow_us": "min"},
        {"tight_fitting": 0, "loose_fitting": 0},
    ),
}
