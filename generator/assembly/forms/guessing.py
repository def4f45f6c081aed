"""The chance that somebody who guesses everything passes a form."""

from fractions import Fraction

from generator.assembly.forms.form import Form, FormQuestion
from generator.assembly.forms.luck import (
    NEVER,
    Outcomes,
    chance_to_reach,
    one_of,
    orders,
    pairs,
    ticks,
)
from generator.questions import ChoiceKey, MatchKey, OrderKey


def guesser_passes(form: Form) -> Fraction:
    """Return the exact chance; typed numbers and written answers are never guessed right."""
    gate = [entry for entry in form.questions if entry.number in form.gate]
    others = [entry for entry in form.questions if entry.number not in form.gate]
    return chance_to_reach(
        [(entry.marks, outcomes_of(entry)) for entry in others],
        form.pass_marks - sum(entry.marks for entry in gate),
        [outcomes_of(entry) for entry in gate],
    )


def outcomes_of(entry: FormQuestion) -> Outcomes:
    """Return what guessing brings on a question, by the rules that its marks follow."""
    question = entry.question
    match question.key:
        case ChoiceKey(options) if question.kind == "choice":
            return one_of(len(options))
        case ChoiceKey(options):
            right = sum(option.right for option in options)
            return ticks(right, len(options) - right)
        case OrderKey(steps=steps, pairs=shown):
            return orders(
                [letter for letter, _ in steps],
                [(pair.first, pair.then) for pair in shown],
                [(pair.first, pair.then) for pair in shown if pair.pair_class == "danger"],
            )
        case MatchKey(right=right_side, answers=answers):
            own = len({letter for _, letter in answers}) == len(answers)
            return pairs(len(answers), len(right_side), each_once=own)
    return NEVER
