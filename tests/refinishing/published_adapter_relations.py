"""Asking the public relations for what a published check calculates."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from generator.diagnostics import OutsideValidity
from generator.quantities import Quantity, Unit, unit_named
from generator.refinishing.catalogue import CATALOGUE
from generator.refinishing.relation import Parameter
from tests.refinishing.published_adapter_inputs import CannotAdapt, Given, kind, means
from tests.refinishing.published_adapter_units import readings

# the names of a result, parted by spaces, to its value
Results = dict[str, Quantity | bool]
Calculation = Callable[[Given], Results]
Argument = Fraction | tuple[Fraction, ...]


def ask(relation: str, **arguments: Argument) -> dict[str, Quantity]:
    """Ask a relation of the catalogue; give its results with their units."""
    entry = CATALOGUE[relation]
    return {n: Quantity(v, entry.results[n]) for n, v in entry.call(arguments).items()}


def ask_one(relation: str, **arguments: Argument) -> Fraction:
    """Ask a relation with one result; give its number in the relation's own unit."""
    return ask(relation, **arguments)[relation].number


def of(number: Fraction, unit: str) -> Quantity:
    """Return a quantity in a unit of that name."""
    return Quantity(Fraction(number), unit_named(unit))


@dataclass(frozen=True, slots=True)
class Direct:
    """A calculation that one relation does.

    takes    input of the relation to the names it goes by in checks, parted by spaces
    gives    result of the relation to its names
    missing  what an input is when the check leaves it out
    """

    relation: str
    takes: Mapping[str, str] = field(default_factory=dict)
    gives: Mapping[str, str] = field(default_factory=dict)
    missing: Mapping[str, int] = field(default_factory=dict)

    def __call__(self, given: Given) -> Results:
        """Match the inputs by name, then by being the only one left of their kind."""
        arguments = matched(self.relation, given, self.takes, self.missing)
        results = ask(self.relation, **arguments)
        return {f"{name} {self.gives.get(name, '')}": value for name, value in results.items()}


def matched(
    relation: str, given: Given, takes: Mapping[str, str], missing: Mapping[str, int]
) -> dict[str, Argument]:
    """Return the arguments of a relation from the inputs of a check."""
    arguments: dict[str, Argument] = {}
    waiting = []
    for parameter in CATALOGUE[relation].parameters:
        names = f"{parameter.name} {takes.get(parameter.name, '')}"
        if parameter.unit is None:
            arguments[parameter.name] = given.ratio()
            continue
        found = given.find(names, parameter.unit)
        if found:
            arguments[parameter.name] = given.take(found, parameter.unit)
        else:
            waiting.append(parameter)
    for parameter in waiting:
        assert parameter.unit is not None
        found = given.only_left(parameter.unit) if _is_alone(parameter.unit, waiting) else None
        if found:
            arguments[parameter.name] = given.take(found, parameter.unit)
        elif parameter.name in missing:
            arguments[parameter.name] = Fraction(missing[parameter.name])
        elif parameter.default is None:
            raise CannotAdapt(f"no input means {parameter.name}")
    return arguments


def _is_alone(unit: Unit, waiting: list[Parameter]) -> bool:
    return sum(p.unit is not None and kind(p.unit) == kind(unit) for p in waiting) == 1


def result_for(name: str, results: Results) -> Fraction | bool:
    """Return the result that an expected name means, as a number in the unit of that name.

    Raises CannotAdapt when the name means none of the results.
    """
    for reading in readings(name):
        named = [value for names, value in results.items() if means(reading, names)]
        fitting = [v for v in named if isinstance(v, bool) or _fits(v, reading.unit)]
        # of two named results, such as one flow in two printed units, the same unit wins
        fitting.sort(key=lambda v: isinstance(v, bool) or v.unit != reading.unit)
        if fitting:
            return _number_in(fitting[0], reading.unit)
    for reading in readings(name):
        fitting = [v for v in results.values() if _is_kind(v, reading.unit)]
        if len(fitting) == 1:
            return _number_in(fitting[0], reading.unit)
    alone = [value for value in results.values() if isinstance(value, Quantity)]
    if len(results) == len(alone) == 1 and len(readings(name)) == 1:
        return alone[0].number
    raise CannotAdapt(f"none of the results means {name}")


def _fits(value: Quantity, unit: Unit | None) -> bool:
    return unit is None or _in(value, unit) is not None


def _is_kind(value: Quantity | bool, unit: Unit | None) -> bool:
    if isinstance(value, bool) or unit is None:
        return False
    return _fits(value, unit) and kind(value.unit)[2] in (kind(unit)[2], "")


def _number_in(value: Quantity | bool, unit: Unit | None) -> Fraction | bool:
    if isinstance(value, bool):
        return value
    turned = _in(value, unit) if unit else value
    assert turned is not None
    return turned.number


def _in(value: Quantity, unit: Unit) -> Quantity | None:
    difference = {"degC": "K", "degF": "degF_diff"}.get(unit.name)
    for wanted in (unit, unit_named(difference) if difference else unit):
        if value.unit.agrees_with(wanted):
            return value.to(wanted)
    return None


@dataclass(frozen=True, slots=True)
class Bare:
    """A formula tried without its relation where the relation refuses by the rules of the trade.

    reason   why the relation refuses and what the check tests instead
    formula  the bare formula
    """

    reason: str
    formula: Calculation


def refused_or(calculation: Calculation, bare: Bare | None, given: Given) -> tuple[Results, str]:
    """Ask the relation; where it refuses and a bare formula is written, use that, with reason."""
    try:
        return calculation(given), ""
    except OutsideValidity as error:
        if bare is None:
            raise CannotAdapt(f"the relation refuses: {str(error).rstrip('.')}") from error
        return bare.formula(given), bare.reason
