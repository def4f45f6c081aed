"""The rules of the house, in the order in which they are looked at.

Each rule lives with its page; `rule` says what a rule is. Add one by adding it to the RULES of a
file in one of the rooms here: `one_record`, `whole_bank` or `course`.
"""

from collections.abc import Mapping

from generator.bank.bank import Bank
from generator.bank.checks import numbers, reading
from generator.bank.checks.course import FILES as OF_THE_COURSE
from generator.bank.checks.course import shown_figures
from generator.bank.checks.one_record import FILES as OF_ONE_RECORD
from generator.bank.checks.rule import Rule
from generator.bank.checks.whole_bank import FILES as OF_THE_WHOLE_BANK
from generator.bank.checks.whole_bank import is_from_memory
from generator.diagnostics import Problem, sorted_problems

_FILES = (reading, *OF_ONE_RECORD, numbers, *OF_THE_WHOLE_BANK, *OF_THE_COURSE)
RULES: Mapping[str, Rule] = {rule.name: rule for file in _FILES for rule in file.RULES}


def check_bank(bank: Bank) -> tuple[Problem, ...]:
    """Return every problem that the rules find, in the order of the files."""
    looks = [rule.look for rule in RULES.values() if rule.look is not None]
    return sorted_problems(problem for look in looks for problem in look(bank))


__all__ = ["RULES", "Rule", "check_bank", "is_from_memory", "shown_figures"]
