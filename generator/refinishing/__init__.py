"""The trade's relations and published tables, each with its source: plain exact arithmetic.

Imports quantities and diagnostics. Files: annotations, bounds, facts, relation, working,
catalogue, request, published_tables; mixing, mixing_percent, mixing_by_mass, mixing_overpour,
mixing_filler; film, film_solids, film_spread, film_material, film_build; jobs; abrasives,
abrasive_speed; climate, climate_margin; annotations_air_and_cure; cure_rate, cure_energy,
cure_oven, temperature_scales, infrared; air_movement, air_purge, air_filter, air_hose,
air_compressor, air_fan, gun_pressure; spray_film, spray_pattern; flow_cups, flow_cups_iso,
flow_cup_four, viscosity; tables/.
"""

from generator.refinishing.catalogue import CATALOGUE
from generator.refinishing.facts import RelationFacts
from generator.refinishing.published_tables import PublishedTable, published_table
from generator.refinishing.relation import Parameter, Relation

__all__ = [
    "CATALOGUE",
    "Parameter",
    "PublishedTable",
    "Relation",
    "RelationFacts",
    "published_table",
]
