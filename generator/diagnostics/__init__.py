"""Places and problems: what went wrong, where, and how to mend it.

Imports nothing of ours.
"""

from generator.diagnostics.place import Place
from generator.diagnostics.problem import Problem, Severity, has_errors, sorted_problems
from generator.diagnostics.report import as_annotations, as_json, as_records, as_text
from generator.diagnostics.seen_text import normal, odd_signs
from generator.diagnostics.suggestion import did_you_mean, nearest_code, nearest_name
from generator.diagnostics.validity import OutsideValidity

__all__ = [
    "OutsideValidity",
    "Place",
    "Problem",
    "Severity",
    "as_annotations",
    "as_json",
    "as_records",
    "as_text",
    "did_you_mean",
    "has_errors",
    "nearest_code",
    "nearest_name",
    "normal",
    "odd_signs",
    "sorted_problems",
]
