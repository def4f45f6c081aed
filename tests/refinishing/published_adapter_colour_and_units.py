"""How the colour, gloss and unit calculations of published checks are asked of the relations."""

from generator.quantities import Quantity
from generator.refinishing.catalogue import CATALOGUE
from tests.refinishing.published_adapter_inputs import CannotAdapt, Given
from tests.refinishing.published_adapter_relations import Calculation, Direct, Results, ask
from tests.refinishing.published_adapter_units import unit_spelled

CONVERSIONS = tuple(name for name in CATALOGUE if "_to_" in name)


def colour_difference(given: Given) -> Results:
    """Colour difference of two readings by both formulas."""
    names = ("lightness", "red_green", "yellow_blue")
    arguments = {
        f"{name}_{place}": value
        for place in (1, 2)
        for name, value in zip(names, given.numbers(f"lab{place} lab_{place}", "one"), strict=True)
    }
    return {
        "dE_2000 dE2000": ask("colour_difference_2000", **arguments)["colour_difference_2000"],
        "dE_76 dE76": ask("colour_difference_1976", **arguments)["colour_difference_1976"],
    }


def convert(given: Given) -> Results:
    """A value in another unit, by the relation for those two units where there is one."""
    start, end = unit_spelled(given.text("from")), unit_spelled(given.text("to"))
    if start is None or end is None:
        raise CannotAdapt("the units to turn from and to are not known")
    value = Quantity(given.number("value", "one"), start)
    for name in CONVERSIONS:
        relation = CATALOGUE[name]
        first, result = relation.parameters[0], next(iter(relation.results.values()))
        if len(relation.parameters) == 1 and first.unit == start and result.agrees_with(end):
            return {"value result": ask(name, **{first.name: value.number})[name].to(end)}
    return {"value result": value.to(end)}


CALCULATIONS: dict[str, Calculation] = {
    "colour.delta_e": colour_difference,
    "gloss.level": Direct("gloss_level", {"gloss_60": "gloss60 60", "gloss_85": "gloss85 85"}),
    "units.convert": convert,
}
