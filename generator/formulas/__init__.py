"""Formulas with units that authors may write, read and worked out without running anything.

Imports quantities and diagnostics; knows no trade relation, only what one must offer
(catalogue_protocol). Files: syntax, scan, literals, parse, catalogue_protocol, binding,
ratio_functions, unit_rules, units_check, evaluate, comparison.
"""

from generator.formulas.catalogue_protocol import (
    RATIO,
    Catalogue,
    CatalogueEntry,
    CatalogueParameter,
    Kind,
    RatioKind,
)
from generator.formulas.comparison import (
    Comparison,
    check_comparison,
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
    "Comparison",
    "Formula",
    "FormulaProblem",
    "FormulaRefused",
    "Kind",
    "RatioKind",
    "UnitResult",
    "Value",
    "check_comparison",
    "check_units",
    "evaluate",
    "holds",
    "parse_comparison",
    "parse_formula",
    "parse_measure",
]
