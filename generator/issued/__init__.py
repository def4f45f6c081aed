"""What was issued, as typed plain JSON: forms, questions, the answer key of each kind.

Imports questions and what lies below. The JSON is frozen in the records, so a field is never
renamed here; what a later edition adds is missing in older issues.
"""

from generator.issued.form import (
    ID_CHARACTERS,
    LENGTH,
    FormHead,
    IssuedEntry,
    IssuedForm,
    form_id,
    marks_needed,
    pass_marks,
)
from generator.issued.from_question import issued_question
from generator.issued.guessing import guesser_passes, outcomes_of
from generator.issued.keys import (
    AcceptedBand,
    IssuedOption,
    IssuedPair,
    LetteredText,
    MatchAnswerKey,
    NumberedText,
    NumericAnswerKey,
    OptionsAnswerKey,
    OrderAnswerKey,
    WrittenAnswerKey,
)
from generator.issued.kinds import FACTS, KINDS, ByKind
from generator.issued.question import (
    ForKey,
    IssuedExhibit,
    IssuedQuestion,
    IssuedSource,
    asked_unit,
    objective_name,
    options_of,
    points_of,
)

__all__ = [
    "AcceptedBand",
    "ByKind",
    "FACTS",
    "ForKey",
    "FormHead",
    "ID_CHARACTERS",
    "IssuedEntry",
    "IssuedExhibit",
    "IssuedForm",
    "IssuedOption",
    "IssuedPair",
    "IssuedQuestion",
    "IssuedSource",
    "KINDS",
    "LENGTH",
    "LetteredText",
    "MatchAnswerKey",
    "NumberedText",
    "NumericAnswerKey",
    "OptionsAnswerKey",
    "OrderAnswerKey",
    "WrittenAnswerKey",
    "asked_unit",
    "form_id",
    "guesser_passes",
    "issued_question",
    "marks_needed",
    "objective_name",
    "options_of",
    "outcomes_of",
    "pass_marks",
    "points_of",
]
