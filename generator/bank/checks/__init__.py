"""The rules of the house, in the order in which they are looked at.

Each rule lives with its page; `rule` says what a rule is. Add one by adding it to the RULES of a
file here.
"""

from collections.abc import Mapping

from generator.bank.bank import Bank
from generator.bank.checks import (
    blueprints,
    citing,
    course_pages,
    critical,
    giveaways,
    hazards,
    honesty,
    invented_people,
    lessons,
    named_questions,
    numbers,
    options,
    ordering,
    places,
    printed_lines,
    reading,
    references,
    stem_rounding,
    tables,
)
from generator.bank.checks.honesty import is_from_memory
from generator.bank.checks.lessons import shown_figures
from generator.bank.checks.options import normal
from generator.bank.checks.rule import Rule
from generator.diagnostics import Problem, sorted_problems

_FILES = (
    reading,
    references,
    options,
    ordering,
    hazards,
    numbers,
    tables,
    honesty,
    citing,
    places,
    critical,
    blueprints,
    giveaways,
    named_questions,
    invented_people,
    lessons,
    printed_lines,
    stem_rounding,
    course_pages,
)
RULES: Mapping[str, Rule] = {rule.name: rule for file in _FILES for rule in file.RULES}


def check_bank(bank: Bank) -> tuple[Problem, ...]:
    """Return every problem that the rules find, in the order of the files."""
    looks = [rule.look for rule in RULES.values() if rule.look is not None]
    return sorted_problems(problem for look in looks for problem in look(bank))


__all__ = ["RULES", "Rule", "check_bank", "is_from_memory", "normal", "shown_figures"]
