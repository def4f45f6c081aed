"""A relation of the trade as the catalogue holds it: its names, units, source and working."""

import inspect
from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType
from typing import Annotated, Any, Literal, get_args, get_origin, get_type_hints

from generator.quantities import Unit, unit_named
from generator.refinishing.facts import RelationFacts, facts_of, relation
from generator.refinishing.working import working_lines

__all__ = ["Parameter", "Relation", "relation", "relation_from"]

Argument = Fraction | tuple[Fraction, ...]

_WRITTEN_NOTES = ("Valid", "Deviates", "Checked")
_ALL_NOTES = ("Relation", *_WRITTEN_NOTES, "Source", "Caution")


@dataclass(frozen=True, slots=True)
class Parameter:
    """One input of a relation; a mixing ratio has no unit."""

    name: str
    unit: Unit | None
    kind: Literal["quantity", "ratio", "quantities"]
    default: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Relation:
    """A plain function with all that is known about it.

    results   result name to unit; a relation with one result calls it by its own name
    sentence  what it works out, in one sentence for people
    notes     the texts beside Valid, Deviates and Checked
    """

    name: str
    function: Callable[..., Any]
    facts: RelationFacts
    parameters: tuple[Parameter, ...]
    results: Mapping[str, Unit]
    sentence: str
    notes: Mapping[str, str]

    def call(self, arguments: Mapping[str, Argument]) -> Mapping[str, Fraction]:
        """Return every result for numbers in the declared units.

        Raises OutsideValidity for numbers the relation refuses, TypeError for a missing or
        unknown name.
        """
        given = {name: _exact(value) for name, value in arguments.items()}
        answer = self.function(**given)
        numbers = answer if isinstance(answer, tuple) else (answer,)
        return dict(zip(self.results, numbers, strict=True))

    def working(
        self, arguments: Mapping[str, Argument], results: Collection[str]
    ) -> tuple[str, ...]:
        """Return the lines of working: equation, numbers put in, result, for each result in turn.

        arguments  numbers in the declared units; results are the ones to show, the others on
                   which they rest come along
        """
        given = {p.name: p.default for p in self.parameters if p.default is not None}
        numbers = {**given, **arguments, **self.call(arguments)}
        units = {p.name: p.unit for p in self.parameters} | dict(self.results)
        return working_lines(self.facts.equation, numbers, units, tuple(results))


def relation_from(function: Callable[..., Any]) -> Relation:
    """Read a marked function into a catalogue entry; raise TypeError when it is not marked."""
    facts = facts_of(function)
    hints = get_type_hints(function, include_extras=True)
    sentence, notes = _written_notes(inspect.getdoc(function) or "")
    return Relation(
        name=function.__name__,
        function=function,
        facts=facts,
        parameters=_parameters(function, hints),
        results=MappingProxyType(_results(function.__name__, hints["return"])),
        sentence=_for_people(sentence),
        notes=MappingProxyType(notes),
    )


def _for_people(sentence: str) -> str:
    """Return what a function returns as a thing that people can read of: 'The wet film ...'."""
    thing = sentence.removeprefix("Return ")
    return thing[:1].upper() + thing[1:]


def _parameters(function: Callable[..., Any], hints: Mapping[str, Any]) -> tuple[Parameter, ...]:
    found = []
    for name, parameter in inspect.signature(function).parameters.items():
        unit = _unit_name(hints[name])
        default = None if parameter.default is parameter.empty else Fraction(parameter.default)
        if unit == "ratio":
            found.append(Parameter(name, None, "ratio", default))
        else:
            found.append(Parameter(name, unit_named(unit), "quantity", default))
    return tuple(found)


def _results(name: str, hint: Any) -> dict[str, Unit]:
    if get_origin(hint) is Annotated:
        return {name: unit_named(_unit_name(hint))}
    fields = get_type_hints(hint, include_extras=True)
    return {field: unit_named(_unit_name(fields[field])) for field in hint._fields}


def _unit_name(hint: Any) -> str:
    return str(get_args(hint)[1])


def _exact(value: Argument) -> Argument:
    if isinstance(value, tuple):
        return tuple(Fraction(part) for part in value)
    return value if type(value) is Fraction else Fraction(value)


def _written_notes(record: str) -> tuple[str, dict[str, str]]:
    sentence, _, rest = record.partition("\n\n")
    notes: dict[str, str] = {}
    label = ""
    for line in rest.splitlines():
        head, colon, text = line.partition(": ")
        if colon and head in _ALL_NOTES:
            label = head
            notes[label] = text.strip()
        elif label:
            notes[label] += " " + line.strip()
    kept = {name: text for name, text in notes.items() if name in _WRITTEN_NOTES}
    return " ".join(sentence.split()), kept
