"""How often somebody who guesses gets questions right, from the questions as they were printed."""

from collections.abc import Iterable
from fractions import Fraction
from math import prod

from generator.issued import IssuedQuestion, outcomes_of


def chance_all_right(questions: Iterable[IssuedQuestion]) -> Fraction:
    """Return the chance that a guesser gets every question fully right; 0 with a number to type."""
    return prod((_chance(question) for question in questions), start=Fraction(1))


def _chance(question: IssuedQuestion) -> Fraction:
    outcomes = outcomes_of(question)
    return Fraction(outcomes.get(Fraction(1), 0), sum(outcomes.values()))
