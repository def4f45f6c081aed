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

# rules that see one record and the frame of the bank, and never another record
ALONE = (
    options,
    option_amounts,
    key_words,
    ordering,
    grids,
    tables,
    table_columns,
    stem_rounding,
)
FILES = (*ALONE, hazards, printed_lines, whole_texts)

__all__ = [
    "ALONE",
    "FILES",
    "MOST_CHARACTERS",
    "MOST_ORDERS",
    "lone_quote_problem",
    "long_problem",
    "said_twice_problem",
]
