"""Exact numbers with units: sizes, rounding, accepted bands, wording and reading.

Imports diagnostics only. Every number is a Fraction; no float comes in or
goes out.
"""

from generator.quantities.acceptance import Band, Limit, acceptance_band
from generator.quantities.dimension import BARE, TEMPERATURE, Dimension, dimension_words
from generator.quantities.quantity import Quantity, Ratio
from generator.quantities.reading import LONGEST_NUMBER, read_number
from generator.quantities.rounding import Direction, is_tie, round_to_step
from generator.quantities.shortening import is_short, short_number, short_quantity
from generator.quantities.units import (
    UNITS,
    Unit,
    UnitsDisagree,
    UnknownUnit,
    base_unit,
    unit_named,
)
from generator.quantities.wording import NO_BREAK_SPACE, number_text, quantity_text

__all__ = [
    "BARE",
    "Band",
    "Dimension",
    "Direction",
    "LONGEST_NUMBER",
    "Limit",
    "NO_BREAK_SPACE",
    "Quantity",
    "Ratio",
    "TEMPERATURE",
    "UNITS",
    "Unit",
    "UnitsDisagree",
    "UnknownUnit",
    "acceptance_band",
    "base_unit",
    "dimension_words",
    "is_short",
    "is_tie",
    "number_text",
    "quantity_text",
    "read_number",
    "round_to_step",
    "short_number",
    "short_quantity",
    "unit_named",
]
