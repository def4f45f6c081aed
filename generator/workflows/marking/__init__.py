"""Marking: answers marked and kept, a key corrected with everybody marked again."""

from generator.workflows.marking.correct import NewKey, carry_out_correction, plan_correction
from generator.workflows.marking.mark import mark_papers, preview_marks, refuse_without_issues

__all__ = [
    "NewKey",
    "carry_out_correction",
    "mark_papers",
    "plan_correction",
    "preview_marks",
    "refuse_without_issues",
]
