"""What assembly is told about earlier papers; it reads no records itself."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from generator.assembly.forms.expected import Facility


@dataclass(frozen=True, slots=True)
class History:
    """Counts over earlier issues.

    exposure    how often each question stood on a form
    facilities  how each question was answered, where it was
    met         the questions that each person has met, by the person's code
    """

    exposure: Mapping[str, int] = field(default_factory=dict)
    facilities: Mapping[str, Facility] = field(default_factory=dict)
    met: Mapping[str, frozenset[str]] = field(default_factory=dict)


NO_HISTORY = History()
