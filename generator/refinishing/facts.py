"""What is known about a trade relation besides its arithmetic, and the mark that attaches it."""

import inspect
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any, Literal, ParamSpec, TypeVar

Status = Literal["read", "restated", "from_memory", "definition"]
Rounding = Literal["half", "up", "down"]
OneSided = Literal["maximum", "minimum"]

P = ParamSpec("P")
R = TypeVar("R")

_ATTRIBUTE = "relation_facts"
_NONE: Mapping[str, Any] = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class RelationFacts:
    """The published side of a relation.

    equation  one or more equations in the names of parameters and results, split by "; "
    source    a key of sources.yml or common_practice; place is the clause or table in it
    status    how the source is known; definition needs no source
    rounding  result name to the direction in which it is rounded; half when not named
    limit     result name to maximum or minimum when the result is a one-sided limit
    caution   what protects people and work where the number is used; empty when nothing
    """

    equation: str
    source: str
    place: str
    status: Status
    rounding: Mapping[str, Rounding] = field(default_factory=lambda: _NONE)
    limit: Mapping[str, OneSided] = field(default_factory=lambda: _NONE)
    caution: str = ""


def relation(
    *,
    equation: str,
    source: str,
    place: str,
    status: Status,
    rounding: Mapping[str, Rounding] = _NONE,
    limit: Mapping[str, OneSided] = _NONE,
    caution: str = "",
) -> Callable[[Callable[P, R]], Callable[P, R]]:
    """Mark a plain function as a relation of the trade; the function itself stays as it is.

    The lines Relation, Source and Caution are added to its docstring, so help() shows the
    whole record while each fact is written once.
    """
    facts = RelationFacts(equation, source, place, status, rounding, limit, caution)

    def mark(function: Callable[P, R]) -> Callable[P, R]:
        setattr(function, _ATTRIBUTE, facts)
        function.__doc__ = _whole_record(inspect.getdoc(function) or "", facts)
        return function

    return mark


def facts_of(function: Callable[..., Any]) -> RelationFacts:
    """Return the facts of a marked function; raise TypeError for an unmarked one."""
    facts = getattr(function, _ATTRIBUTE, None)
    if not isinstance(facts, RelationFacts):
        raise TypeError("this function is not marked as a relation")
    return facts


def is_marked(value: object) -> bool:
    """Say whether a value is a function marked as a relation."""
    return inspect.isfunction(value) and hasattr(value, _ATTRIBUTE)


def _whole_record(written: str, facts: RelationFacts) -> str:
    sentence, _, rest = written.partition("\n\n")
    lines = [f"Relation: {facts.equation}", rest] if rest else [f"Relation: {facts.equation}"]
    lines.append(f"Source: {facts.source}, {facts.place} ({facts.status})")
    if facts.caution:
        lines.append(f"Caution: {facts.caution}")
    return "\n".join([sentence, "", *lines])
