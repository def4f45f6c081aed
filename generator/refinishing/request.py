"""A relation asked for by name with inputs as text: reading them, working it out, plain results."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from generator.diagnostics import OutsideValidity, did_you_mean
from generator.quantities import (
    Quantity,
    Unit,
    UnitsDisagree,
    UnknownUnit,
    read_number,
    short_quantity,
    unit_named,
)
from generator.refinishing.catalogue import CATALOGUE
from generator.refinishing.relation import Parameter, Relation

Argument = Fraction | tuple[Fraction, ...]


class RequestRefused(ValueError):
    """A request that cannot be answered; the text is one clear sentence."""


@dataclass(frozen=True, slots=True)
class Worked:
    """A relation worked out.

    inputs   each input with its unit, as read
    assumed  inputs given without a unit, which were taken in the relation's own
    results  exact numbers in the units of the relation
    """

    relation: Relation
    inputs: Mapping[str, str]
    assumed: tuple[str, ...]
    results: Mapping[str, Fraction]
    working: tuple[str, ...]

    def shown(self) -> tuple[str, ...]:
        """Return each result with its unit, to about five figures."""
        units = self.relation.results
        return tuple(f"{n}: {short_quantity(v, units[n])}" for n, v in self.results.items())

    def as_plain(self) -> dict[str, Any]:
        """Return the JSON form; values are not rounded."""
        units = self.relation.results
        return {
            "relation": self.relation.name,
            "inputs": dict(self.inputs),
            "results": {
                name: {"value": float(value), "unit": units[name].name}
                for name, value in self.results.items()
            },
            "working": list(self.working),
            "source": self.relation.facts.source,
            "place": self.relation.facts.place,
            "status": self.relation.facts.status,
            "caution": self.relation.facts.caution,
        }


def work_out(name: str, inputs: Mapping[str, str]) -> Worked:
    """Work a relation out for inputs such as {'dry_film': '60 um'}; raises RequestRefused."""
    if name not in CATALOGUE:
        hint = did_you_mean(name, CATALOGUE)
        raise RequestRefused(f"there is no relation '{name}'; {hint or 'ask for the list'}")
    relation = CATALOGUE[name]
    arguments, assumed = _read_all(relation, inputs)
    try:
        results = relation.call(arguments)
        working = relation.working(arguments, tuple(results))
    except OutsideValidity as error:
        raise RequestRefused(str(error)) from error
    shown = {
        parameter.name: _shown(arguments[parameter.name], parameter.unit)
        for parameter in relation.parameters
        if parameter.name in arguments
    }
    return Worked(relation, shown, assumed, results, working)


def _read_all(
    relation: Relation, inputs: Mapping[str, str]
) -> tuple[dict[str, Argument], tuple[str, ...]]:
    names = [parameter.name for parameter in relation.parameters]
    for name in inputs:
        if name not in names:
            hint = did_you_mean(name, names) or f"it takes {', '.join(names)}"
            raise RequestRefused(f"{relation.name} has no input '{name}'; {hint}")
    missing = [p.name for p in relation.parameters if p.name not in inputs and p.default is None]
    if missing:
        raise RequestRefused(f"{relation.name} also needs {', '.join(missing)}")
    arguments: dict[str, Argument] = {}
    assumed = []
    for parameter in relation.parameters:
        if parameter.name in inputs:
            arguments[parameter.name], bare = _read(parameter, inputs[parameter.name])
            if bare:
                assumed.append(parameter.name)
    return arguments, tuple(assumed)


def _read(parameter: Parameter, text: str) -> tuple[Argument, bool]:
    if parameter.unit is None:
        return _read_ratio(parameter, text), False
    number, unit_name = _number_and_unit(text.strip())
    value = read_number(number)
    if value is None:
        raise RequestRefused(
            f"'{text}' is not a number with a unit; write {parameter.name}=\"12.5 "
            f'{parameter.unit.name}"'
        )
    if not unit_name:
        return value, parameter.unit.name != "one"
    try:
        unit = unit_named(unit_name)
        return Quantity(value, unit).to(parameter.unit).number, False
    except UnknownUnit as error:
        raise RequestRefused(str(error)) from error
    except UnitsDisagree as error:
        raise RequestRefused(f"'{parameter.name}' is in {parameter.unit.name}: {error}") from error


def _number_and_unit(text: str) -> tuple[str, str]:
    # a mixed number such as 1 1/2 has a space of its own
    if read_number(text) is not None or " " not in text:
        return text, ""
    number, _, unit_name = text.rpartition(" ")
    return number.strip(), unit_name


def _read_ratio(parameter: Parameter, text: str) -> tuple[Fraction, ...]:
    parts = [read_number(part) for part in text.split(":")]
    if len(parts) < 2 or any(part is None for part in parts):
        raise RequestRefused(f"'{text}' is not a ratio; write {parameter.name}=4:1:1")
    return tuple(part for part in parts if part is not None)


def _shown(value: Argument, unit: Unit | None) -> str:
    if isinstance(value, tuple):
        return ":".join(str(part) for part in value)
    return short_quantity(value, unit) if unit else str(value)
