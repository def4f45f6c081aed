"""Which questions a plan may ask, and whether there are enough of them."""

from generator.assembly.supply.eligibility import in_places, sets_apart
from generator.assembly.supply.matching import unmatched
from generator.assembly.supply.plan import percent_of
from generator.assembly.supply.shortages import shortages
from generator.assembly.supply.strata import Stratum, strands_of

__all__ = [
    "Stratum",
    "in_places",
    "percent_of",
    "sets_apart",
    "shortages",
    "strands_of",
    "unmatched",
]
