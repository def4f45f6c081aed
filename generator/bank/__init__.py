"""From text files to trustworthy records: reading, typing, checking.

Imports formulas, refinishing, quantities and diagnostics. PyYAML stays in `reading`.
"""

from generator.bank.bank import Bank, Entry, module_of, objective_of
from generator.bank.counts import bank_figures
from generator.bank.nodes import ListNode, MappingNode, Node, ScalarNode, key_place, place_of
from generator.bank.numbers import PreparedItem, Solution, Value, all_sets, prepare, solve
from generator.bank.orders import (
    Pairs,
    StepHazards,
    chain,
    count_orders,
    hazards_met,
    is_legal,
    step_hazards,
    transitive_closure,
    transitive_reduction,
    within,
    without,
)
from generator.bank.part import Part, part_for_plan, part_for_question
from generator.bank.reading import load_bank, read_yaml
from generator.bank.record_version import record_version
from generator.bank.schemas import record_schemas
from generator.bank.table_rows import table_rows
from generator.bank.verdicts import Verdicts, frame_digest
from generator.bank.written_texts import written_texts

__all__ = [
    "frame_digest",
    "Bank",
    "Entry",
    "ListNode",
    "MappingNode",
    "Node",
    "Pairs",
    "Part",
    "PreparedItem",
    "ScalarNode",
    "Solution",
    "StepHazards",
    "Value",
    "Verdicts",
    "all_sets",
    "bank_figures",
    "chain",
    "count_orders",
    "hazards_met",
    "is_legal",
    "key_place",
    "load_bank",
    "module_of",
    "objective_of",
    "part_for_plan",
    "part_for_question",
    "place_of",
    "prepare",
    "read_yaml",
    "record_schemas",
    "record_version",
    "solve",
    "step_hazards",
    "table_rows",
    "transitive_closure",
    "transitive_reduction",
    "within",
    "without",
    "written_texts",
]
