"""How long records of each kind are kept, as the rules of each place say. Shown, never applied.

Nothing is ever deleted by age. A period from memory says so; so does what no rule was read for.
"""

from dataclasses import dataclass
from typing import Literal

from generator.records.practice.due import STATUS_WORDS

Status = Literal["read", "restated", "from_memory", "common_practice"]
NOTE = "Local law may ask for longer. Nothing here is deleted by age; you decide, line by line."


@dataclass(frozen=True, slots=True)
class Period:
    """How long one kind of record is kept in one place.

    source  key of the bank's sources, or empty where the document itself was not read
    here    whether these records hold it; the rest stays in the shop's own files
    """

    record: str
    jurisdiction: str
    keep: str
    document: str
    source: str
    status: Status
    here: bool

    @property
    def status_words(self) -> str:
        """Say how far the period was checked."""
        return STATUS_WORDS[self.status]


_US, _GB, _EU = "United States", "Great Britain", "European Union"
PERIODS: tuple[Period, ...] = (
    Period(
        "Painter training: certificate, first date, latest refresher",
        _US,
        "5 years, the first 2 of them on site or ready to hand",
        "40 CFR 63.11178",
        "",
        "from_memory",
        True,
    ),
    Period(
        "Booth filter proof, spray gun proof, notices and reports under the spray rule",
        _US,
        "5 years, the first 2 of them on site or ready to hand",
        "40 CFR 63.11178",
        "",
        "from_memory",
        False,
    ),
    Period(
        "Fit test: name, kind of test, mask, date, result",
        _US,
        "until the next fit test",
        "29 CFR 1910.134, fit test records",
        "osha_134",
        "read",
        False,
    ),
    Period(
        "Medical evaluation for a respirator: the written opinion",
        _US,
        "as long as the person is employed, and 30 years more",
        "29 CFR 1910.1020",
        "",
        "from_memory",
        False,
    ),
    Period(
        "Apprenticeship: job assignments, hours, training, evaluations",
        _US,
        "5 years",
        "29 CFR 30.12",
        "",
        "from_memory",
        True,
    ),
    Period(
        "Waste manifests and drum dates",
        _US,
        "3 years; a state may ask for more",
        "federal waste rules",
        "",
        "from_memory",
        False,
    ),
    Period(
        "Health record of exposed people",
        _GB,
        "40 years",
        "Control of Substances Hazardous to Health Regulations",
        "",
        "from_memory",
        False,
    ),
    Period(
        "Thorough examination of booth and extraction",
        _GB,
        "5 years",
        "Control of Substances Hazardous to Health Regulations",
        "",
        "from_memory",
        False,
    ),
    Period(
        "Breathing-air tests",
        _GB,
        "5 years",
        "HSE approved code L5 and guidance HSG53, seen in summaries",
        "",
        "restated",
        False,
    ),
    Period(
        "Diisocyanate training",
        _EU,
        "no period was found; the training is renewed at least every 5 years",
        "Regulation (EU) 2020/1149, REACH Annex XVII entry 74",
        "reach_74",
        "restated",
        True,
    ),
    Period(
        "Results of papers, answers, practical observations, sign-offs",
        "anywhere",
        "no rule was found; keep them for 5 years at least",
        "",
        "",
        "common_practice",
        True,
    ),
)
