"""Orders of steps: what must come before what, and whether each hazard is guarded."""

from generator.bank.orders.guarding import (
    StepHazards,
    Unguarded,
    hazards_met,
    step_hazards,
    unguarded,
)
from generator.bank.orders.precedence import (
    Pairs,
    chain,
    count_orders,
    has_cycle,
    is_legal,
    transitive_closure,
    transitive_reduction,
    within,
    without,
)

__all__ = [
    "Pairs",
    "StepHazards",
    "Unguarded",
    "chain",
    "count_orders",
    "has_cycle",
    "hazards_met",
    "is_legal",
    "step_hazards",
    "transitive_closure",
    "transitive_reduction",
    "unguarded",
    "within",
    "without",
]
