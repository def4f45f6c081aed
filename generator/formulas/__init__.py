"""Formulas with units that authors may write, read and worked out without running anything.

Imports quantities and diagnostics; knows no trade relation, only what one must offer
(catalogue_protocol).
"""

from generator.formulas.binding import bind, pick_result
from generator.formulas.catalogue_protocol import RATIO, Catalogue, Kind
from generator.formulas.column import Column
from generator.formulas.columns import Columns, NotByColumns
from generator.formulas.comparison import (
    Comparison,
    check_comparison,
    held_by,
    holds,
    parse_comparison,
)
from generator.formulas.evaluate import FormulaRefused, evaluate
from generator.formulas.parse import parse_formula
from generator.formulas.syntax import (
    CallNode,
    Formula,
    FormulaProblem,
    MinusNode,
    NameNode,
    Node,
    NumberNode,
    OperationNode,
    PowerNode,
    walk,
)
from generator.formulas.units_check import UnitResult, check_units

__all__ = [
    "CallNode",
    "Catalogue",
    "Column",
    "Columns",
    "Comparison",
    "Formula",
    "FormulaProblem",
    "FormulaRefused",
    "Kind",
    "MinusNode",
    "NameNode",
    "Node",
    "NotByColumns",
    "NumberNode",
    "OperationNode",
    "PowerNode",
    "RATIO",
    "UnitResult",
    "bind",
    "check_comparison",
    "check_units",
    "evaluate",
    "held_by",
    "holds",
    "parse_comparison",
    "parse_formula",
    "pick_result",
    "walk",
]
