"""From items and records to solved questions: drawing, deriving, working, plain data.

Imports bank and what lies below it. Files: stream (repeatable chance), question (the records),
numeric and working, ordering, lettering, from_procedure, from_fault, from_table, pool (all that can
be asked), versions, study (what the site shows), sources, cautions, plain (the JSON form).
"""

from generator.questions.cautions import hazard_cautions
from generator.questions.drawing import NothingToDraw, SeededRandom
from generator.questions.plain import Plain, as_plain
from generator.questions.pool import Askable, askables
from generator.questions.question import (
    MINUTES,
    ChoiceKey,
    MatchKey,
    NumericKey,
    OrderKey,
    Question,
    WrittenKey,
)
from generator.questions.study import DrawnQuestions, study_questions
from generator.questions.versions import item_versions
from generator.questions.wording import lower_start

__all__ = [
    "Askable",
    "ChoiceKey",
    "DrawnQuestions",
    "MINUTES",
    "MatchKey",
    "NothingToDraw",
    "NumericKey",
    "OrderKey",
    "Plain",
    "Question",
    "SeededRandom",
    "WrittenKey",
    "as_plain",
    "askables",
    "hazard_cautions",
    "item_versions",
    "lower_start",
    "study_questions",
]
