"""From the calculation a published check names to the relations that do it, by meaning."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from generator.diagnostics import did_you_mean
from generator.refinishing.catalogue import CATALOGUE
from tests.refinishing import (
    published_adapter_air,
    published_adapter_colour_and_units,
    published_adapter_cost,
    published_adapter_film,
    published_adapter_health,
    published_adapter_heat,
    published_adapter_mixing,
    published_adapter_shop,
    published_adapter_vapour,
    published_adapter_voc,
)
from tests.refinishing.published_adapter_inputs import CannotAdapt, Given, Raw
from tests.refinishing.published_adapter_relations import (
    Calculation,
    Direct,
    refused_or,
    result_for,
)

CALCULATIONS: Mapping[str, Calculation] = {
    **published_adapter_mixing.CALCULATIONS,
    **published_adapter_film.CALCULATIONS,
    **published_adapter_shop.CALCULATIONS,
    **published_adapter_heat.CALCULATIONS,
    **published_adapter_air.CALCULATIONS,
    **published_adapter_voc.CALCULATIONS,
    **published_adapter_cost.CALCULATIONS,
    **published_adapter_health.CALCULATIONS,
    **published_adapter_vapour.CALCULATIONS,
    **published_adapter_colour_and_units.CALCULATIONS,
}
BARE = {**published_adapter_heat.BARE, **published_adapter_vapour.BARE}


@dataclass(frozen=True, slots=True)
class Answers:
    """What the relations say to one check.

    values  expected name to number or judgement, unrounded and in the unit of the name
    reason  why the bare formula was tried instead of the relation; empty when it was not
    unused  inputs that no relation asked for
    """

    values: Mapping[str, Fraction | bool]
    reason: str
    unused: tuple[str, ...]


def answers(name: str, inputs: Mapping[str, Raw], wanted: tuple[str, ...]) -> Answers:
    """Work out every wanted result of a calculation; raise CannotAdapt with one sentence."""
    calculation = _calculation(name)
    given = Given(inputs, wanted)
    results, reason = refused_or(calculation, BARE.get(name), given)
    values = {expected: result_for(expected, results) for expected in wanted}
    return Answers(values, reason, tuple(sorted(given.unused)))


def _calculation(name: str) -> Calculation:
    if name in CALCULATIONS:
        return CALCULATIONS[name]
    # a check may also name a relation itself
    relation = name.rpartition(".")[2]
    if relation in CATALOGUE:
        return Direct(relation)
    hint = did_you_mean(name, CALCULATIONS)
    raise CannotAdapt(f"no relation does the calculation '{name}'{f'; {hint}' if hint else ''}")
