"""What leaves the records: a pack for an inspector, a person's export, an erasure."""

from generator.workflows.leaving.erasing import erase, plan_erasure
from generator.workflows.leaving.exporting import export
from generator.workflows.leaving.packing import Packed, pack

__all__ = ["Packed", "erase", "export", "pack", "plan_erasure"]
