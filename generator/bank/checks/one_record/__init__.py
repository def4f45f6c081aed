"""What one record shows by itself: its options, order, hazards, rows and printed lines."""

from generator.bank.checks.one_record import (
    hazards,
    options,
    ordering,
    printed_lines,
    stem_rounding,
    tables,
)

FILES = (options, ordering, hazards, tables, printed_lines, stem_rounding)

__all__ = ["FILES"]
