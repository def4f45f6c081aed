"""How often somebody who guesses gets questions right, from the questions as they were printed."""

from collections.abc import Iterable, Mapping
from fractions import Fraction
from math import prod
from typing import Any

from generator.assembly.forms import NEVER, Outcomes, orders, pairs, ticks
from generator.quantities import round_to_step

Plain = Mapping[str, Any]


def chance_all_right(questions: Iterable[Plain]) -> Fraction:
    """Return the chance that a guesser gets every question fully right; 0 with a number to type."""
    return prod((_chance(_outcomes(question)) for question in questions), start=Fraction(1))


def odds_in_words(chance: Fraction) -> str:
    """Write a chance above 0 as odds, such as '1 time in 16'."""
    return f"1 time in {int(round_to_step(1 / chance, Fraction(1), 'half')):,}"


def _chance(outcomes: Outcomes) -> Fraction:
    return Fraction(outcomes.get(Fraction(1), 0), sum(outcomes.values()))


def _outcomes(question: Plain) -> Outcomes:
    key = question["key"]
    match question["kind"]:
        case "choice":
            right = sum(option["right"] for option in key["options"])
            return {Fraction(1): right, Fraction(0): len(key["options"]) - right}
        case "multiple_response":
            right = sum(option["right"] for option in key["options"])
            return ticks(right, len(key["options"]) - right)
        case "order":
            return orders(
                [step["letter"] for step in key["steps"]],
                [(pair["first"], pair["then"]) for pair in key["pairs"]],
                [(p["first"], p["then"]) for p in key["pairs"] if p["class"] == "danger"],
            )
        case "match":
            answers = key["answers"]
            each_once = len(set(answers.values())) == len(answers)
            return pairs(len(answers), len(key["right"]), each_once=each_once)
    return NEVER
