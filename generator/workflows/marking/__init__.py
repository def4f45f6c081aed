"""Marking: answers marked and kept, a key corrected with everybody marked again."""

from generator.workflows.marking.correct import (
    Corrected,
    NewKey,
    PlannedCorrection,
    carry_out_correction,
    plan_correction,
)
from generator.workflows.marking.mark import mark, preview_marks, refuse_without_issues

__all__ = [
    "Corrected",
    "NewKey",
    "PlannedCorrection",
    "carry_out_correction",
    "mark",
    "plan_correction",
    "preview_marks",
    "refuse_without_issues",
]
