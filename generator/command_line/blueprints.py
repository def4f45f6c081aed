"""Blueprint checks for the commands that need them."""

from collections.abc import Sequence

from generator.assembly import shortages
from generator.bank import Bank
from generator.diagnostics import Problem, has_errors
from generator.questions import NothingToDraw, askables


def blueprint_problems(bank: Bank, found: Sequence[Problem]) -> tuple[Problem, ...]:
    """Give every cell of every blueprint that cannot be filled.

    found  what is wrong already; a bank with errors is not asked what it can fill
    """
    if has_errors(found):
        return ()
    try:
        known = askables(bank)
        return tuple(p for entry in bank.blueprints.values() for p in shortages(entry, bank, known))
    except NothingToDraw:
        # an item that cannot be drawn is reported by its own rule
        return ()
