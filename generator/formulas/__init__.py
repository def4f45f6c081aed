"""Formulas with units that authors may write, read and worked out without running anything.

Imports quantities and diagnostics; knows no trade relation, only what one must offer
(catalogue_protocol). Files: syntax, scan, literals, parse, catalogue_protocol, binding,
ratio_functions, unit_rules, units_check, evaluate, columns, comparison.
"""

from generator.formulas.catalogue_protocol import (
    RATIO,
    Catalogue,
    CatalogueEntry,
    CatalogueParameter,
    Kind,
    RatioKind,
)
from generator.formulas.columns import Column, Columns, NotByColumns
from generator.formulas.comparison import (
    Comparison,
    check_comparison,
    held_by,
    holds,
    parse_comparison,
    parse_measure,
)
from generator.formulas.evaluate import FormulaRefused, Value, evaluate
from generator.formulas.parse import parse_formula
from generator.formulas.syntax import Formula, FormulaProblem
from generator.formulas.units_check import UnitResult, check_units

__all__ = [
    "RATIO",
    "Catalogue",
    "CatalogueEntry",
    "CatalogueParameter",
    "Column",
    "Columns",
    "Comparison",
    "Formula",
    "FormulaProblem",
    "FormulaRefused",
    "Kind",
    "NotByColumns",
    "RatioKind",
    "UnitResult",
    "Value",
    "check_comparison",
    "check_units",
    "evaluate",
    "held_by",
    "holds",
    "parse_comparison",
    "parse_formula",
    "parse_measure",
]
