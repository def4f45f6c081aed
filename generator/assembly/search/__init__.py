"""The seeded search for papers, with its limits and the proven bound."""

from generator.assembly.search.balance import Balance, balance_of
from generator.assembly.search.candidate_pool import Candidate, Demand, Pool, pool_of
from generator.assembly.search.filling import CannotFill
from generator.assembly.search.limits import Shortfall, shortfalls
from generator.assembly.search.papers import Seat
from generator.assembly.search.search import search

__all__ = [
    "Balance",
    "Candidate",
    "CannotFill",
    "Demand",
    "Pool",
    "Seat",
    "Shortfall",
    "balance_of",
    "pool_of",
    "search",
    "shortfalls",
]
