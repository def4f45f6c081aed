"""Blueprint checks for the commands that need them."""

from generator.assembly import shortages
from generator.bank import Bank
from generator.diagnostics import Problem
from generator.questions import NothingToDraw


def blueprint_problems(bank: Bank) -> tuple[Problem, ...]:
    """Give every cell of every blueprint that cannot be filled."""
    try:
        return tuple(p for entry in bank.blueprints.values() for p in shortages(entry, bank))
    except NothingToDraw:
        # an item that cannot be drawn is reported by its own rule
        return ()
