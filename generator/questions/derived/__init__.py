"""Questions that come from procedures, faults and tables."""

from generator.questions.derived.record_questions import RecordQuestion, record_questions

__all__ = ["RecordQuestion", "record_questions"]
