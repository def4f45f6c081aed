"""Forms with lettered options, their history, and what is issued of them."""

from generator.assembly.forms.expected import Facility
from generator.assembly.forms.form_plain import form_as_plain
from generator.assembly.forms.forms import (
    Assembly,
    CannotAssemble,
    assemble,
    build_forms,
    form_labels,
)
from generator.assembly.forms.history import History
from generator.assembly.forms.key_positions import position_alarms
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
    "History",
    "ONE_SIDED_95",
    "TWO_SIDED_95",
    "assemble",
    "build_forms",
    "effective_number",
    "form_as_plain",
    "form_labels",
    "position_alarms",
    "wilson_interval",
]
