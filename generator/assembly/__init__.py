"""From a blueprint to forms: choosing questions, building them, what luck and scores mean.

Imports questions and what lies below. Files:
plan, eligibility, shortages, standing_together, supply (what a plan asks for, and whether the bank
has it); strands, candidates, expected, past, pool, reading_load (what a search chooses from);
search over filling, swaps, papers, shared_cells, limits, counting_bound with largest_flow, balance
(the choice); forms with class_questions, form, form_plain with form_identity (the papers);
luck, guessing, mastery, key_positions (figures for the key).
"""

from generator.assembly.balance import Balance
from generator.assembly.expected import Facility
from generator.assembly.form import Form, FormQuestion
from generator.assembly.form_plain import form_as_plain
from generator.assembly.forms import (
    Assembly,
    CannotAssemble,
    assemble,
    build_forms,
    form_labels,
)
from generator.assembly.key_positions import PositionAlarm, position_alarms
from generator.assembly.past import NOTHING_PAST, Past
from generator.assembly.shortages import shortages

__all__ = [
    "NOTHING_PAST",
    "Assembly",
    "Balance",
    "CannotAssemble",
    "Facility",
    "Form",
    "FormQuestion",
    "Past",
    "PositionAlarm",
    "assemble",
    "build_forms",
    "form_as_plain",
    "form_labels",
    "position_alarms",
    "shortages",
]
