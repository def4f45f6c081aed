"""The trade's relations and published tables, each with its source: plain exact arithmetic.

Imports quantities and diagnostics.
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
