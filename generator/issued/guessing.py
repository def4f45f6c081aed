"""What guessing brings on an issued question and on a whole form; exact."""

from collections.abc import Sequence
from fractions import Fraction
from typing import Final

from generator.issued.form import IssuedEntry
from generator.issued.keys import MatchAnswerKey, OptionsAnswerKey, OrderAnswerKey
from generator.issued.luck import NEVER, Outcomes, chance_to_reach, orders, pairs, ticks
from generator.issued.question import ForKey, IssuedQuestion


def guesser_passes(entries: Sequence[IssuedEntry], pass_marks: int) -> Fraction:
    """Return the chance that somebody who guesses everything passes a form of some questions."""
    gate = [entry for entry in entries if entry["must_pass"]]
    others = [entry for entry in entries if not entry["must_pass"]]
    return chance_to_reach(
        [(entry["marks"], _outcomes(entry)) for entry in others],
        pass_marks - sum(entry["marks"] for entry in gate),
        [_outcomes(entry) for entry in gate],
    )


def outcomes_of(question: IssuedQuestion) -> Outcomes:
    """Return what guessing brings on a question, by the rules that its marks follow.

    Typed numbers and written answers are never guessed right.
    """
    return _OUTCOMES.of(question)


def _outcomes(entry: IssuedEntry) -> Outcomes:
    return outcomes_of(entry["question"])


def _choice(key: OptionsAnswerKey) -> Outcomes:
    # a correction may have made several options right
    right = sum(option["right"] for option in key["options"])
    return {Fraction(1): right, Fraction(0): len(key["options"]) - right}


def _ticks(key: OptionsAnswerKey) -> Outcomes:
    right = sum(option["right"] for option in key["options"])
    return ticks(right, len(key["options"]) - right)


def _orders(key: OrderAnswerKey) -> Outcomes:
    return orders(
        [step["letter"] for step in key["steps"]],
        [(pair["first"], pair["then"]) for pair in key["pairs"]],
        [(pair["first"], pair["then"]) for pair in key["pairs"] if pair["class"] == "danger"],
    )


def _pairs(key: MatchAnswerKey) -> Outcomes:
    answers = key["answers"]
    each_once = len(set(answers.values())) == len(answers)
    return pairs(len(answers), len(key["right"]), each_once=each_once)


_OUTCOMES: Final = ForKey[Outcomes](
    numeric=lambda key: NEVER,
    choice=_choice,
    multiple_response=_ticks,
    order=_orders,
    match=_pairs,
    written=lambda key: NEVER,
)
