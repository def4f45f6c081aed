"""What one record shows by itself: its options, order, hazards, rows and printed lines."""

from generator.bank.checks.one_record import (
    grids,
    hazards,
    key_words,
    option_amounts,
    options,
    ordering,
    printed_lines,
    stem_rounding,
    table_columns,
    tables,
    whole_texts,
)
from generator.bank.checks.one_record.ordering import MOST_ORDERS
from generator.bank.checks.one_record.printed_lines import MOST_CHARACTERS, long_problem
from generator.bank.checks.one_record.whole_texts import lone_quote_problem, said_twice_problem

FILES = (
    options,
    option_amounts,
    key_words,
    ordering,
    hazards,
    grids,
    tables,
    table_columns,
    printed_lines,
    whole_texts,
    stem_rounding,
)

# these look at one record and the frame of the bank, so that a verdict can be kept beside it
ENTRY_BY_ENTRY = (
    options,
    option_amounts,
    key_words,
    ordering,
    grids,
    tables,
    table_columns,
    stem_rounding,
)

__all__ = [
    "ENTRY_BY_ENTRY",
    "FILES",
    "MOST_ORDERS",
    "MOST_CHARACTERS",
    "lone_quote_problem",
    "long_problem",
    "said_twice_problem",
]
