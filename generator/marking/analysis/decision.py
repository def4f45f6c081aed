"""Whether the same people would pass or fail again, estimated from one sitting.

Method: Subkoviak 1976. The alpha of the same test draws each person's share towards the mean
share; a person's chance to pass is then binomial.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from math import comb, fsum

from generator.marking.analysis.reliability import NOT_RIGHT_OR_WRONG
from generator.marking.analysis.scores import Figure, Scores


@dataclass(frozen=True, slots=True)
class Decision:
    """Pass and fail at a cut.

    cut         marks from which a person passes
    passed      people at or above it
    agreement   share of people who would get the same verdict again
    by_chance   the agreement that chance alone gives
    kappa       agreement beyond chance, as a share of what is possible
    """

    cut: int
    passed: int
    agreement: Figure
    by_chance: Figure
    kappa: Figure


def decision_at(scores: Scores, cut: int, alpha: Figure) -> Decision:
    """Estimate how steady the verdict at a cut is; for right-or-wrong items."""
    passed = sum(total >= cut * scores.scale for total in scores.totals)
    if not scores.right_or_wrong:
        alpha = Figure(None, NOT_RIGHT_OR_WRONG)
    if alpha.value is None:
        return Decision(cut, passed, alpha, alpha, alpha)
    # below zero alpha says nothing about people, and a share must stay between 0 and 1
    chances = _chances(scores.totals, len(scores.items), cut, max(0.0, alpha.value))
    people = len(chances)
    again = fsum(p * p + (1 - p) * (1 - p) for p in chances) / people
    share = fsum(chances) / people
    chance = share * share + (1 - share) * (1 - share)
    kappa = (
        Figure((again - chance) / (1 - chance))
        if chance < 1
        else Figure(None, "everyone gets the same verdict")
    )
    return Decision(cut, passed, Figure(again), Figure(chance), kappa)


def _chances(totals: Sequence[int], items: int, cut: int, alpha: float) -> list[float]:
    middle = sum(totals) / len(totals) / items

    @cache
    def chance(total: int) -> float:
        return chance_to_pass(alpha * total / items + (1 - alpha) * middle, items, cut)

    return [chance(total) for total in totals]


def chance_to_pass(share: float, items: int, cut: int) -> float:
    """Return the chance of at least `cut` right of `items`, each right with the same chance."""
    return fsum(
        comb(items, right) * share**right * (1 - share) ** (items - right)
        for right in range(max(cut, 0), items + 1)
    )
