"""What leaves the records: a pack for an inspector, a person's export, an erasure."""

from generator.workflows.leaving.erasing import carry_out_erasure, plan_erasure
from generator.workflows.leaving.exporting import export_records
from generator.workflows.leaving.packing import pack_records

__all__ = ["carry_out_erasure", "export_records", "pack_records", "plan_erasure"]
