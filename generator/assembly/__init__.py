"""From a blueprint to forms: choosing questions, building them, what luck and scores mean.

Imports questions and what lies below. Files:
plan, eligibility, shortages, standing_together, supply (what a plan asks for, and whether the bank
has it); strands, candidates, expected, past, pool, reading_load (what a search chooses from);
search over filling, swaps, papers, shared_cells, limits, counting_bound with largest_flow, balance
(the choice); forms with class_questions, form, form_plain (the papers);
mastery, key_positions (figures for the key).
"""

from generator.assembly.forms import (
    Assembly,
    CannotAssemble,
    Facility,
    History,
    assemble,
    build_forms,
    form_as_plain,
    form_labels,
    position_alarms,
)
from generator.assembly.supply import shortages

__all__ = [
    "Assembly",
    "CannotAssemble",
    "Facility",
    "History",
    "assemble",
    "build_forms",
    "form_as_plain",
    "form_labels",
    "position_alarms",
    "shortages",
]
