"""Keeping the records: whether they are sound, and a copy of them."""

from generator.workflows.keeping.soundness import back_up_records, record_problems

__all__ = ["back_up_records", "record_problems"]
