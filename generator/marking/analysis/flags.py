"""What the figures of an item ask a person to look at, and how far a class's size bears it.

Below 10 people only counts mean anything; below 30 a correlation says nothing; bands of strength
are named from 100 on. The bands are Ebel's; the other thresholds are common practice.
"""

from collections.abc import Sequence
from typing import Literal

from generator.marking.analysis.moments import NEAR_ZERO
from generator.marking.analysis.option_counts import OptionUse
from generator.marking.analysis.scores import Figure

Trust = Literal["counts", "facility", "interval", "bands"]
Flag = Literal[
    "too_few_people",
    "no_spread",
    "miskey_suspect",
    "attracts_strong_learners",
    "option_not_working",
]
FACILITY_FROM, INTERVAL_FROM, BANDS_FROM = 10, 30, 100
STRONG_DRAW = 0.05
WORKING_SHARE = 0.05
# fewer who missed cannot show a share of one in twenty
MISSED_FROM = 20
BANDS = ((0.40, "very good"), (0.30, "good"), (0.20, "marginal"))
NEARLY_ALL = 0.9

FLAG_WORDS: dict[str, str] = {
    "too_few_people": "too few people for a verdict",
    "no_spread": "everyone has the same score, so it separates nobody",
    "miskey_suspect": "the key may be wrong: strong learners chose something else",
    "attracts_strong_learners": "a wrong option draws strong learners",
    "option_not_working": "hardly anyone who missed it chose this option",
}


def trust_in(people: int) -> Trust:
    """Say what the number of people allows: counts, facilities, intervals or bands."""
    if people < FACILITY_FROM:
        return "counts"
    if people < INTERVAL_FROM:
        return "facility"
    return "interval" if people < BANDS_FROM else "bands"


def item_flags(people: int, rest: Figure, options: Sequence[OptionUse]) -> tuple[Flag, ...]:
    """Return the flags of an item, the same for the same figures.

    rest     item-rest correlation
    options  empty where only the scores are known
    """
    if people < INTERVAL_FROM:
        return ("too_few_people",)
    if rest.value is None:
        return ("no_spread",)
    flags: list[Flag] = []
    wrong = [use for use in options if not use.is_key and use.option]
    drawn = [use.rest.value for use in wrong if use.rest.value is not None]
    if rest.value <= NEAR_ZERO or any(r > rest.value + NEAR_ZERO for r in drawn):
        flags.append("miskey_suspect")
    if any(r > STRONG_DRAW for r in drawn):
        flags.append("attracts_strong_learners")
    if idle_options(options):
        flags.append("option_not_working")
    return tuple(flags)


def idle_options(options: Sequence[OptionUse]) -> tuple[str, ...]:
    """Return the wrong options that fewer than one in twenty of those who missed chose.

    Judged among those who missed, as a test that most people master leaves few to choose them.
    """
    missed = sum(use.people for use in options if not use.is_key)
    if missed < MISSED_FROM:
        return ()
    wrong = (use for use in options if not use.is_key and use.option)
    return tuple(use.option for use in wrong if use.people < WORKING_SHARE * missed)


def band_of(people: int, rest: Figure, facility: float) -> str:
    """Name the strength of an item's separation; empty where the class is too small for it."""
    if people < BANDS_FROM or rest.value is None:
        return ""
    for least, word in BANDS:
        if rest.value >= least:
            return word
    return "says nothing, nearly all were right" if facility >= NEARLY_ALL else "poor"
