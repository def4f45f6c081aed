"""How the mixing calculations of published checks are asked of the relations."""

from fractions import Fraction

from generator.quantities import Quantity
from tests.refinishing.published_adapter_inputs import CannotAdapt, Given
from tests.refinishing.published_adapter_relations import (
    Calculation,
    Direct,
    Results,
    ask,
    ask_one,
    of,
)

CANS = ("base", "hardener", "thinner")
PARTS = "parts parts_by_volume mix_parts volume_parts"


def masses(given: Given) -> Results:
    """Masses, mixed density and parts by mass of two or three volumes."""
    volumes = given.numbers("volumes volume", "mL")
    densities = given.numbers("densities density", "g/mL")
    if not 2 <= len(volumes) == len(densities) <= 3:
        raise CannotAdapt("two or three volumes need as many densities")
    # an absent thinner weighs nothing, whatever its density
    volumes, densities = (*volumes, Fraction(0)), (*densities, Fraction(1))
    arguments = {f"{can}_volume": v for can, v in zip(CANS, volumes, strict=False)}
    arguments |= {f"{can}_density": d for can, d in zip(CANS, densities, strict=False)}
    answer = ask("masses_from_volumes", **arguments)
    return {
        **{f"{can} {can}_mass": answer[can] for can in (*CANS, "total")},
        "mixed_density density": answer["mixed_density"],
        "hardener_per_100_base_by_mass hardener_per_100": answer["hardener_per_100"],
        "thinner_per_100_base_by_mass thinner_per_100": answer["thinner_per_100"],
    }


def blended(
    relation: str, property_of: str, parts: tuple[Fraction, ...], values: tuple[Fraction, ...]
) -> Fraction:
    """Blend a property of any number of parts, two at a time."""
    if len(parts) != len(values) or len(parts) < 2:
        raise CannotAdapt("two or more parts need as many values")
    total, value = parts[0], values[0]
    for part, other in zip(parts[1:], values[1:], strict=True):
        names = {f"base_{property_of}": value, f"hardener_{property_of}": other}
        value = ask_one(relation, parts=(total, part), **names)
        total += part
    return value


def mixed_density(given: Given) -> Results:
    """Density of a mix of any number of parts."""
    parts = given.numbers(PARTS + " volumes", "one") or given.ratio()
    densities = given.numbers("densities density specific_gravities", "g/mL")
    mixed = blended("mixed_density", "density", parts, densities)
    return {"mixed_density density specific_gravity": of(mixed, "g/mL")}


def largest_batch(given: Given) -> Results:
    """The largest batch that a cup holds."""
    parts = given.ratio()
    capacity = given.number("usable_capacity capacity cup cup_capacity", "mL")
    answer = ask("largest_batch", capacity=capacity, parts=parts)
    total = sum((amount.number for amount in answer.values()), Fraction(0))
    return {
        **{f"{can}_max {can}": answer[can] for can in CANS},
        "total_max total": of(total, "mL"),
    }


def overpour(given: Given) -> Results:
    """A mix put back on its ratio after one can went in too far, and whether the cup holds it."""
    planned = [*given.numbers("planned plan", "mL"), Fraction(0)][:3]
    poured = given.number("actually_poured poured actual", "mL")
    which = given.text("overpoured overpoured_part")
    amounts, total = rebalanced(which, planned, poured)
    results: Results = {"new_total total": of(total, "mL")}
    for can, amount, plan in zip(CANS, amounts, planned, strict=True):
        results[f"{can}_needed {can}"] = of(amount, "mL")
        results[f"{can}_extra_vs_plan {can}_extra"] = of(amount - plan, "mL")
    if given.has("cup_capacity capacity cup", "mL"):
        left = given.number("cup_capacity capacity cup", "mL") - total
        results["fits_in_cup fits"] = left >= 0
        results["room_left left"] = of(left, "mL")
    return results


def rebalanced(
    which: str, planned: list[Fraction], poured: Fraction
) -> tuple[tuple[Fraction, ...], Fraction]:
    """Return the new amounts of base, hardener and thinner with their total, in mL."""
    base, hardener, thinner = planned
    arguments = {"planned_base": base, "planned_hardener": hardener, "planned_thinner": thinner}
    if which == "base":
        answer = ask("overpour_base", poured_base=poured, **arguments)
        return (poured, answer["hardener"].number, answer["thinner"].number), answer["total"].number
    if which == "hardener":
        answer = ask("overpour_hardener", poured_hardener=poured, **arguments)
        return (answer["base"].number, poured, answer["thinner"].number), answer["total"].number
    if which == "thinner":
        # no relation starts from the thinner; the base that belongs to it sets the rest
        answer = ask("amounts_from_base", base=base * poured / thinner, parts=tuple(planned))
        amounts = (base * poured / thinner, answer["hardener"].number, answer["thinner"].number)
        return amounts, answer["total"].number
    raise CannotAdapt("the over-poured can is base, hardener or thinner")


def filler_hardener(given: Given) -> Results:
    """Hardener for an amount of filler, and both together."""
    filler = given.number("filler", "g")
    percent = given.number("hardener_of_filler hardener hardener_percent", "percent")
    hardener = ask_one("filler_hardener", filler=filler, hardener_percent=percent)
    return {"hardener filler_hardener": of(hardener, "g"), "total": of(filler + hardener, "g")}


def filler_percent(given: Given) -> Results:
    """Percent of hardener in a filler, and whether it is inside the common band of 1 to 3 %."""
    filler, hardener = given.number("filler", "g"), given.number("hardener", "g")
    percent = ask_one("filler_hardener_percent", filler=filler, hardener=hardener)
    return {
        "hardener_of_filler hardener filler_hardener_percent": Quantity(
            percent, of(percent, "percent").unit
        ),
        "in_1_to_3_pct in_band": 1 <= percent <= 3,
    }


CALCULATIONS: dict[str, Calculation] = {
    "mix.split_total": Direct("split_total"),
    "mix.split_total_pct": Direct(
        "split_total_with_percent",
        {"thinner_percent": "thinner_of_base_plus_hardener thinner_of_base_and_hardener thinner"},
    ),
    "mix.from_base": Direct("amounts_from_base"),
    "mix.percent_reduction": Direct(
        "percent_reduction",
        {"reduction": "reduction_of_base"},
        {
            "share_of_mix": "thinner_of_mix",
            "parts_per_part": "parts_thinner_per_part_base",
        },
    ),
    "mix.percent_reduction_of_mix": Direct(
        "percent_reduction_of_mix", {"reduction": "reduction_of_base_plus_hardener"}
    ),
    "mix.parts_to_percent": Direct("parts_to_percent"),
    "mix.parts_to_reduction_pct": Direct(
        "parts_to_reduction",
        {},
        {"reduction": "reduction_of_base", "share_of_mix": "thinner_of_mix"},
    ),
    "mix.mass_from_volume": masses,
    "mix.mixed_density": mixed_density,
    "mix.mass_of_volume": Direct("mass_of_volume", {"density": "specific_gravity sg"}),
    "mix.density": Direct("density_of"),
    "mix.cup_marks": Direct(
        "cup_marks", {}, {f"after_{can}": f"fill_to_after_{can} {can}" for can in CANS}
    ),
    "mix.scale_to_cup": largest_batch,
    "mix.overpour": overpour,
    "mix.filler_hardener": filler_hardener,
    "mix.filler_pct": filler_percent,
}
