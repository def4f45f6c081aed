"""From a blueprint to forms: choosing questions, building them, what luck and scores mean.

Imports questions and what lies below.
"""

from generator.assembly.forms import (
    Assembly,
    CannotAssemble,
    Facility,
    History,
    assemble,
    build_forms,
    form_as_plain,
    form_labels,
    position_alarms,
)
from generator.assembly.supply import shortages

__all__ = [
    "Assembly",
    "CannotAssemble",
    "Facility",
    "History",
    "assemble",
    "build_forms",
    "form_as_plain",
    "form_labels",
    "position_alarms",
    "shortages",
]
