"""Scores of a class on a test, person by person and item by item."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from math import lcm


@dataclass(frozen=True, slots=True)
class Figure:
    """A worked-out value, or nothing and the reason why there is none."""

    value: float | None
    reason: str = ""


@dataclass(frozen=True)
class Scores:
    """A whole table of scores; every person has a score on every item.

    items   names
    most    the most that each item gives
    scores  one row a person, one score an item, exact
    Raises ValueError for a ragged table, a score outside 0 to most, or a most not above zero.
    """

    items: tuple[str, ...]
    most: tuple[Fraction, ...]
    scores: tuple[tuple[Fraction, ...], ...]

    def __post_init__(self) -> None:
        if len(self.most) != len(self.items) or any(most <= 0 for most in self.most):
            raise ValueError("every item needs a most that is above zero")
        for row in self.scores:
            if len(row) != len(self.items):
                raise ValueError("every person needs one score for each item")
            if any(map(_is_outside, row, self.most)):
                raise ValueError("a score must lie between 0 and the most of its item")

    @property
    def people(self) -> int:
        """Return the number of people."""
        return len(self.scores)

    @cached_property
    def right_or_wrong(self) -> bool:
        """Say whether every score is 0 or 1 of 1."""
        whole = all(most == 1 for most in self.most)
        return whole and all(score in (0, 1) for row in self.scores for score in row)

    @cached_property
    def scale(self) -> int:
        """Return the number that turns every score into a whole one."""
        return lcm(*(score.denominator for row in self.scores for score in row))

    @cached_property
    def columns(self) -> tuple[tuple[int, ...], ...]:
        """Return the scores of each item, times the scale."""
        scale = self.scale
        return tuple(
            tuple(row[place].numerator * (scale // row[place].denominator) for row in self.scores)
            for place in range(len(self.items))
        )

    @cached_property
    def totals(self) -> tuple[int, ...]:
        """Return the total of each person, times the scale."""
        if not self.items:
            return (0,) * self.people
        return tuple(map(sum, zip(*self.columns, strict=True)))

    def rest(self, place: int) -> tuple[int, ...]:
        """Return each person's total without one item, times the scale."""
        return tuple(
            total - own for total, own in zip(self.totals, self.columns[place], strict=True)
        )


def _is_outside(score: Fraction, most: Fraction) -> bool:
    # whole numbers throughout: a table holds a hundred thousand scores
    above = score.numerator * most.denominator > most.numerator * score.denominator
    return score.numerator < 0 or above


def right_or_wrong_scores(items: Sequence[str], rows: Iterable[Iterable[bool]]) -> Scores:
    """Return the table for items that are right or wrong, one mark each."""
    scores = tuple(tuple(Fraction(right) for right in row) for row in rows)
    return Scores(tuple(items), (Fraction(1),) * len(items), scores)
