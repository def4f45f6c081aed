"""From items and records to solved questions: drawing, deriving, working, plain data.

Imports bank and what lies below it. Files: stream (repeatable chance), question (the records),
numeric and working, ordering, lettering, from_procedure, from_fault, from_table, pool (all that can
be asked), versions, study (what the site shows), sources, cautions, plain (the JSON form).
"""

from generator.questions.cautions import hazard_cautions
from generator.questions.item_questions import question_of_item
from generator.questions.numeric import NothingToDraw
from generator.questions.plain import Plain, as_plain
from generator.questions.pool import Askable, askable_named, askables
from generator.questions.question import Question
from generator.questions.stream import Stream
from generator.questions.study import study_questions
from generator.questions.versions import item_versions

__all__ = [
    "Askable",
    "NothingToDraw",
    "Plain",
    "Question",
    "Stream",
    "as_plain",
    "askable_named",
    "askables",
    "hazard_cautions",
    "item_versions",
    "question_of_item",
    "study_questions",
]
