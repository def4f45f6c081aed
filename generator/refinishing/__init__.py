"""The trade's relations and published tables, each with its source: plain exact arithmetic.

Imports quantities and diagnostics. Files: annotations, bounds, facts, relation, working,
catalogue, request, published_tables; mixing, mixing_percent, mixing_by_mass, mixing_overpour,
mixing_filler; film, film_solids, film_spread, film_material, film_build; jobs; abrasives,
abrasive_speed; climate, climate_margin; annotations_air_and_cure; cure_rate, cure_energy,
cure_oven, temperature_scales, infrared; air_movement, air_purge, air_filter, air_hose,
air_compressor, air_fan, gun_pressure; spray_film, spray_pattern; flow_cups, flow_cups_iso,
flow_cup_four, viscosity; tables/.
"""

from generator.refinishing.abrasives import grade_size
from generator.refinishing.air_purge import removal_time
from generator.refinishing.catalogue import CATALOGUE
from generator.refinishing.climate import dew_point
from generator.refinishing.cure_oven import oven_time
from generator.refinishing.film import dry_film
from generator.refinishing.film_build import film_stack
from generator.refinishing.mixing import CupMarks, cup_marks
from generator.refinishing.noise_duration import recommended_duration, reference_duration
from generator.refinishing.published_tables import published_table
from generator.refinishing.relation import Parameter, Relation
from generator.refinishing.request import RequestRefused, Worked, work_out

__all__ = [
    "CATALOGUE",
    "CupMarks",
    "Parameter",
    "Relation",
    "RequestRefused",
    "Worked",
    "cup_marks",
    "dew_point",
    "dry_film",
    "film_stack",
    "grade_size",
    "oven_time",
    "published_table",
    "recommended_duration",
    "reference_duration",
    "removal_time",
    "work_out",
]
