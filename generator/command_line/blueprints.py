"""Checks of what papers can be made of, for the commands that need them."""

from collections.abc import Sequence

from generator.assembly import shortages
from generator.bank import Bank
from generator.diagnostics import Problem, has_errors
from generator.questions import NothingToDraw, askables
from generator.questions.giveaways import list_problems


def blueprint_problems(bank: Bank, found: Sequence[Problem]) -> tuple[Problem, ...]:
    """Return every cell of a blueprint that cannot be filled, and a list of giveaways that errs.

    found  what is wrong already; a bank with errors is not asked what it can fill
    """
    if has_errors(found):
        return ()
    try:
        known = askables(bank)
        short = [p for entry in bank.blueprints.values() for p in shortages(entry, bank, known)]
        return (*short, *list_problems(bank, known))
    except NothingToDraw:
        # an item that cannot be drawn is reported by its own rule
        return ()
