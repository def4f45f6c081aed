"""Numeric items: formulas read, units checked, sets of values solved one by one or together."""

from generator.bank.numbers.numeric_item import PreparedItem, Value, prepare
from generator.bank.numbers.numeric_solution import (
    Refusal,
    Solution,
    all_sets,
    corner_numbers,
    set_at,
    set_count,
    solve,
)
from generator.bank.numbers.numeric_standing import standings

__all__ = [
    "PreparedItem",
    "Refusal",
    "Solution",
    "Value",
    "all_sets",
    "corner_numbers",
    "prepare",
    "set_at",
    "set_count",
    "solve",
    "standings",
]
