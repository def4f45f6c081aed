"""Worked examples: a relation of the catalogue with numbers put in."""

from fractions import Fraction

from generator.bank.models import SourceTag
from generator.diagnostics import OutsideValidity
from generator.quantities import (
    UNITS,
    Quantity,
    Unit,
    number_text,
    quantity_text,
    read_number,
)
from generator.refinishing import CATALOGUE, Parameter, Relation
from generator.website.context.page_context import PageContext
from generator.website.context.site_context import SiteContext

Argument = Fraction | tuple[Fraction, ...]
_BY_SYMBOL = {unit.symbol: unit for unit in UNITS.values() if unit.symbol}


def worked_example(name: str, body: str, draft: PageContext, desk: SiteContext) -> str:
    """Work a relation through; a wrong name or number becomes a problem of the page."""
    relation = CATALOGUE.get(name)
    if relation is None:
        draft.report("lesson-block", f"there is no relation named '{name}'")
        return ""
    try:
        given = arguments_from(relation, body)
        results = relation.call(given)
    except (ValueError, TypeError, OutsideValidity) as refused:
        draft.report("worked-example", f"{name}: {refused}")
        return ""
    return desk.fill(
        "blocks/worked.html",
        draft,
        relation=relation,
        given=_shown(relation, given),
        lines=relation.working(given, results),
        tags=relation_tags(relation),
    )


def arguments_from(relation: Relation, body: str) -> dict[str, Argument]:
    """Read lines such as 'dry_film: 70 um'; numbers come back in the declared units."""
    parameters = {parameter.name: parameter for parameter in relation.parameters}
    given: dict[str, Argument] = {}
    for line in filter(str.strip, body.splitlines()):
        name, colon, text = (part.strip() for part in line.partition(":"))
        if not colon or name not in parameters:
            raise ValueError(f"'{line.strip()}' does not begin with one of {', '.join(parameters)}")
        given[name] = _argument(parameters[name], text)
    return given


def relation_tags(relation: Relation) -> tuple[SourceTag, ...]:
    """Return the relation's source as a tag."""
    return (SourceTag(relation.facts.source, relation.facts.place),)


def readable(name: str) -> str:
    """Write a name as words."""
    return name.replace("_", " ")


def _argument(parameter: Parameter, text: str) -> Argument:
    if parameter.unit is None:
        return tuple(_number(part) for part in text.split(":"))
    number, _, symbol = text.partition(" ")
    unit = _unit(symbol.strip(), parameter.unit)
    return Quantity(_number(number), unit).to(parameter.unit).number


def _unit(symbol: str, declared: Unit) -> Unit:
    if not symbol:
        return declared
    unit = UNITS.get(symbol) or _BY_SYMBOL.get(symbol)
    if unit is None:
        raise ValueError(f"there is no unit '{symbol}'")
    return unit


def _number(text: str) -> Fraction:
    number = read_number(text)
    if number is None:
        raise ValueError(f"'{text}' is not a number")
    return number


def _shown(relation: Relation, given: dict[str, Argument]) -> list[tuple[str, str]]:
    return [
        (readable(parameter.name), _shown_value(parameter, given[parameter.name]))
        for parameter in relation.parameters
        if parameter.name in given
    ]


def _shown_value(parameter: Parameter, value: Argument) -> str:
    if isinstance(value, tuple):
        return " : ".join(number_text(part) for part in value)
    return quantity_text(value, parameter.unit) if parameter.unit else number_text(value)
