"""From items and records to solved questions: drawing, deriving, working.

Imports bank and what lies below it.
"""

from generator.questions.cautions import hazard_cautions
from generator.questions.drawing import NothingToDraw, SeededRandom
from generator.questions.pool import Askable, askable_named, askables
from generator.questions.question import (
    ChoiceKey,
    Exhibit,
    MatchKey,
    NumericKey,
    OrderKey,
    Question,
    ShownCritical,
    ShownOption,
    SolvedSlip,
    WrittenKey,
)
from generator.questions.study import DrawnQuestions, study_questions
from generator.questions.versions import item_versions
from generator.questions.wording import lower_start

__all__ = [
    "Askable",
    "ChoiceKey",
    "DrawnQuestions",
    "Exhibit",
    "MatchKey",
    "NothingToDraw",
    "NumericKey",
    "OrderKey",
    "Question",
    "SeededRandom",
    "ShownCritical",
    "ShownOption",
    "SolvedSlip",
    "WrittenKey",
    "askable_named",
    "askables",
    "hazard_cautions",
    "item_versions",
    "lower_start",
    "study_questions",
]
