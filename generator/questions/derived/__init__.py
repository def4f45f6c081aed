"""Questions that come from procedures, faults and tables."""

from generator.questions.derived.record_questions import record_questions

__all__ = ["record_questions"]
