"""Every relation by name."""

from collections.abc import Mapping
from types import MappingProxyType, ModuleType

from generator.refinishing import (
    abrasive_speed,
    abrasives,
    climate,
    climate_margin,
    film,
    film_build,
    film_material,
    film_solids,
    film_spread,
    jobs,
    mixing,
    mixing_by_mass,
    mixing_filler,
    mixing_overpour,
    mixing_percent,
)
from generator.refinishing.facts import is_marked
from generator.refinishing.relation import Relation, relation_from

_TOPICS: tuple[ModuleType, ...] = (
    mixing,
    mixing_percent,
    mixing_by_mass,
    mixing_overpour,
    mixing_filler,
    film,
    film_solids,
    film_spread,
    film_material,
    film_build,
    jobs,
    abrasives,
    abrasive_speed,
    climate,
    climate_margin,
)


def _gathered() -> dict[str, Relation]:
    found: dict[str, Relation] = {}
    for topic in _TOPICS:
        for value in vars(topic).values():
            if is_marked(value) and value.__module__ == topic.__name__:
                found[value.__name__] = relation_from(value)
    return found


CATALOGUE: Mapping[str, Relation] = MappingProxyType(_gathered())
