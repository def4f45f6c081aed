"""Forms with lettered options, their identity, history and the chance of passing by guessing."""

from generator.assembly.forms.expected import Facility
from generator.assembly.forms.form import Form, FormQuestion
from generator.assembly.forms.form_identity import LENGTH, SIGNS
from generator.assembly.forms.form_plain import form_as_plain
from generator.assembly.forms.forms import (
    Assembly,
    CannotAssemble,
    assemble,
    build_forms,
    form_labels,
)
from generator.assembly.forms.history import NO_HISTORY, History
from generator.assembly.forms.key_positions import PositionAlarm, position_alarms
from generator.assembly.forms.luck import NEVER, Outcomes, orders, pairs, ticks
from generator.assembly.forms.mastery import (
    ONE_SIDED_95,
    TWO_SIDED_95,
    effective_number,
    wilson_interval,
)

__all__ = [
    "Assembly",
    "CannotAssemble",
    "Facility",
    "Form",
    "FormQuestion",
    "History",
    "LENGTH",
    "NEVER",
    "NO_HISTORY",
    "ONE_SIDED_95",
    "Outcomes",
    "PositionAlarm",
    "SIGNS",
    "TWO_SIDED_95",
    "assemble",
    "build_forms",
    "effective_number",
    "form_as_plain",
    "form_labels",
    "orders",
    "pairs",
    "position_alarms",
    "ticks",
    "wilson_interval",
]
