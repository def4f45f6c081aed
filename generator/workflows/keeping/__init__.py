"""Keeping the records: whether they are sound, what is handed out of them, who is taken out."""

from generator.workflows.keeping.erasing import carry_out_erasure, plan_erasure
from generator.workflows.keeping.exporting import export_records
from generator.workflows.keeping.packing import pack_records
from generator.workflows.keeping.soundness import back_up_records, record_problems

__all__ = [
    "back_up_records",
    "carry_out_erasure",
    "export_records",
    "pack_records",
    "plan_erasure",
    "record_problems",
]
