"""From text files to trustworthy records: reading, typing, checking.

Imports formulas, refinishing, quantities and diagnostics. Files: nodes and yaml_source (text with
places), records (the classes), record_version, typing (nodes to records), bank, loader, lessons,
checks, schemas, figures. PyYAML stays in yaml_source.
"""

from generator.bank.bank import Bank, Entry, module_of, objective_of
from generator.bank.counts import bank_figures
from generator.bank.guarding import StepHazards, hazards_met, step_hazards, unguarded_where
from generator.bank.loader import load_bank
from generator.bank.nodes import ListNode, MappingNode, Node, ScalarNode, key_place, place_of
from generator.bank.numeric_item import PreparedItem, Value, prepare
from generator.bank.numeric_solution import Solution, all_sets, solve
from generator.bank.precedence import (
    Pairs,
    chain,
    closure,
    count_orders,
    direct,
    is_legal,
    within,
    without,
)
from generator.bank.record_version import record_version
from generator.bank.schemas import record_schemas
from generator.bank.table_rows import table_rows
from generator.bank.written_texts import written_texts
from generator.bank.yaml_source import read_yaml

__all__ = [
    "Bank",
    "Entry",
    "ListNode",
    "MappingNode",
    "Node",
    "Pairs",
    "PreparedItem",
    "ScalarNode",
    "Solution",
    "StepHazards",
    "Value",
    "all_sets",
    "bank_figures",
    "chain",
    "closure",
    "count_orders",
    "direct",
    "hazards_met",
    "is_legal",
    "key_place",
    "load_bank",
    "module_of",
    "objective_of",
    "place_of",
    "prepare",
    "read_yaml",
    "record_schemas",
    "record_version",
    "solve",
    "step_hazards",
    "table_rows",
    "unguarded_where",
    "within",
    "without",
    "written_texts",
]
