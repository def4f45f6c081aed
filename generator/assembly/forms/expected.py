"""How hard a question is expected to be: from the records once answers are in, else a prior."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

# Share of the marks that a learner at the end of a module is expected to get, in percent, by kind
# and then by level. These are starting values of ours; answers take their place as they come in.
PRIOR_PERCENT: Mapping[str, Mapping[str, int]] = {
    "choice": {"recall": 80, "apply": 70, "diagnose": 65},
    "multiple_response": {"recall": 70, "apply": 60, "diagnose": 55},
    "match": {"recall": 75, "apply": 65, "diagnose": 60},
    "order": {"recall": 70, "apply": 65, "diagnose": 60},
    "numeric": {"recall": 70, "apply": 60, "diagnose": 50},
    "written": {"recall": 65, "apply": 60, "diagnose": 55},
}
# so many answers weigh as much as the prior
PRIOR_ANSWERS = 10


@dataclass(frozen=True, slots=True)
class Facility:
    """What answers say about a question.

    mean     mean share of its marks, 0 to 1
    answers  how many answers that rests on
    """

    mean: Fraction
    answers: int


def prior_share(kind: str, level: str) -> Fraction:
    """Return the expected share of marks of a question nobody has answered."""
    return Fraction(PRIOR_PERCENT[kind][level], 100)


def expected_share(kind: str, level: str, known: Facility | None) -> Fraction:
    """Return the expected share of marks, 0 to 1; a few answers move the prior only a little."""
    prior = prior_share(kind, level)
    if known is None:
        return prior
    weight = PRIOR_ANSWERS + known.answers
    return (PRIOR_ANSWERS * prior + known.answers * known.mean) / weight
