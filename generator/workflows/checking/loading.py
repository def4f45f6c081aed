"""The bank of a project: read and held against every rule, or refused with every problem."""

from collections.abc import Sequence

from generator.bank import Bank, Part, Verdicts, load_bank
from generator.bank.checks import checked_bank
from generator.diagnostics import Problem, has_errors
from generator.workflows.project import Project
from generator.workflows.refusals import Refused, refused_with


def read_and_check(
    project: Project, verdicts: Verdicts | None = None
) -> tuple[Bank | None, tuple[Problem, ...]]:
    """Return the bank with every problem of reading and of the rules.

    verdicts  of an earlier check, for records that have not changed
    """
    return checked_bank(project.bank, project.course, verdicts)


def sound_bank(project: Project) -> Bank | Refused:
    """Return the bank of a project, or every error in it."""
    return sound(*read_and_check(project))


def sound(bank: Bank | None, problems: Sequence[Problem]) -> Bank | Refused:
    """Return a bank where no problem is an error, or the errors."""
    if bank is None or has_errors(problems):
        return refused_with(problem for problem in problems if problem.severity == "error")
    return bank


def sound_part(part: Part) -> Bank | Refused:
    """Return the bank of a part of which nothing is wrong, or what is wrong with that part."""
    if part.bank is None or part.errors:
        return refused_with(part.errors)
    return part.bank


def readable_bank(project: Project) -> Bank | Refused:
    """Return the bank as far as it can be read, without its rules, or why it cannot be read."""
    bank, problems = load_bank(project.bank, project.course)
    return refused_with(problems) if bank is None else bank
