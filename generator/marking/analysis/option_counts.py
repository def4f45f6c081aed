"""Who chose which option of a question."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from generator.marking.analysis.moments import correlation
from generator.marking.analysis.scores import Figure, Scores


@dataclass(frozen=True, slots=True)
class OptionUse:
    """One option of one item.

    option           its letter or code; empty for no answer
    is_key           whether it is the right one
    people           how many chose it
    share            of all people
    share_of_missed  of those who did not choose the key; nothing for the key
    rest_mean        mean score of the choosers on the other items; nothing for nobody
    rest             correlation of choosing it with the score on the other items
    """

    option: str
    is_key: bool
    people: int
    share: float
    share_of_missed: float | None
    rest_mean: float | None
    rest: Figure


def option_uses(
    scores: Scores, place: int, chosen: Sequence[str], key: str
) -> tuple[OptionUse, ...]:
    """Return every option that somebody chose, and the key, in the order of their names.

    chosen  what each person answered to the item at the place
    """
    rest = scores.rest(place)
    missed = sum(option != key for option in chosen)
    return tuple(
        _use(option, key, chosen, rest, missed, scores.scale)
        for option in sorted(set(chosen) | {key})
    )


def _use(
    option: str, key: str, chosen: Sequence[str], rest: Sequence[int], missed: int, scale: int
) -> OptionUse:
    took = [int(answer == option) for answer in chosen]
    people = sum(took)
    total = sum(score for score, one in zip(rest, took, strict=True) if one)
    return OptionUse(
        option=option,
        is_key=option == key,
        people=people,
        share=people / len(chosen) if chosen else 0.0,
        share_of_missed=None if option == key or not missed else people / missed,
        rest_mean=float(Fraction(total, people * scale)) if people else None,
        rest=correlation(took, rest),
    )
