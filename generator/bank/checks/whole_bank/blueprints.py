"""Plans of papers: counts that add up, limits that make sense, a gate that a person can pass."""

from collections.abc import Iterator

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.bank.models import Blueprint
from generator.diagnostics import Problem

WHOLE = 100
SMALLEST_GATE, LARGEST_GATE = 2, 4


def blueprint_counts(bank: Bank) -> Iterator[Problem]:
    """Return cells without a clear number of questions, and numbers that do not add up."""
    for entry in bank.blueprints.values():
        unclear = list(_unclear_cells(entry))
        yield from unclear or _sums(entry)


def _unclear_cells(entry: Entry[Blueprint]) -> Iterator[Problem]:
    for place, cell in enumerate(entry.record.cells):
        if (cell.count is None) == (cell.share is None):
            said = "neither a count nor a share" if cell.count is None else "a count and a share"
            hint = "write 'count: 4', or 'share: 20' for a percent of the paper"
            yield _counts(entry, f"this cell has {said}", "cells", place, hint=hint)
        elif cell.critical and cell.count is None:
            message = "a critical cell has a share, so that its questions may change in number"
            hint = "write 'count: 1'; the gate is the same on every form"
            yield _counts(entry, message, "cells", place, "share", hint=hint)


def _sums(entry: Entry[Blueprint]) -> Iterator[Problem]:
    plan = entry.record
    counted = sum(cell.count or 0 for cell in plan.cells)
    shares = [cell.share for cell in plan.cells if cell.share is not None]
    if shares and plan.questions is None:
        hint = "add 'questions:' with the length of the paper"
        yield _counts(entry, "shares need the length of the paper", "cells", hint=hint)
    elif shares and sum(shares) != WHOLE:
        message = f"the shares add up to {float(sum(shares)):g}, not to 100"
        hint = "shares are percents of the questions that the counts leave"
        yield _counts(entry, message, "cells", hint=hint)
    elif shares and plan.questions is not None and counted >= plan.questions:
        message = f"the counts take {counted} of {plan.questions} and leave nothing to share"
        yield _counts(entry, message, "questions")
    elif not shares and plan.questions is not None and counted != plan.questions:
        message = f"the cells ask for {counted} questions, and the paper has {plan.questions}"
        yield _counts(entry, message, "questions")


def _counts(entry: Entry[Blueprint], message: str, *path: str | int, hint: str = "") -> Problem:
    return entry.problem("error", "blueprint-counts", message, *path, hint=hint)


def blueprint_limits(bank: Bank) -> Iterator[Problem]:
    """Return limits and percents that no paper can meet, or that any paper meets."""
    for entry in bank.blueprints.values():
        plan = entry.record
        for name, value, low in (
            ("minutes", plan.minutes, 1),
            ("max_words", plan.max_words, 1),
            ("questions", plan.questions, 1),
        ):
            if value is not None and value < low:
                yield _limit(entry, name, f"'{name}' is {value}; it must be {low} or more")
        for name, value, low in (
            ("pass_percent", plan.pass_percent, 1),
            ("new_percent", plan.new_percent, 0),
        ):
            if not low <= value <= WHOLE:
                yield _limit(entry, name, f"'{name}' is {value}; it runs from {low} to 100")


def _limit(entry: Entry[Blueprint], name: str, message: str) -> Problem:
    return entry.problem("error", "blueprint-limits", message, name)


def gate_size(bank: Bank) -> Iterator[Problem]:
    """Return gates of one question, which luck opens, or of so many that a slip closes them."""
    for entry in bank.blueprints.values():
        gate = [place for place, cell in enumerate(entry.record.cells) if cell.critical]
        size = sum(entry.record.cells[place].count or 0 for place in gate)
        if gate and not SMALLEST_GATE <= size <= LARGEST_GATE:
            message = f"a gate has {SMALLEST_GATE} to {LARGEST_GATE} questions, not {size}"
            yield entry.problem("error", "gate-size", message, "cells", gate[-1], "critical")


RULES = (
    Rule(
        "blueprint-counts",
        "error",
        "A plan fills a paper exactly. A cell has a count, or a share of what the counts leave; "
        "shares add up to 100.",
        "cells:\n  - {module: filler, share: 60}\n  - {module: mixing, share: 30}",
        "questions: 20\ncells:\n  - {module: filler, share: 60}\n  - {module: mixing, share: 40}",
        blueprint_counts,
    ),
    Rule(
        "blueprint-limits",
        "error",
        "A paper has time, a pass mark that somebody can reach, and room for its words.",
        "pass_percent: 800",
        "pass_percent: 80",
        blueprint_limits,
    ),
    Rule(
        "gate-size",
        "error",
        "One gate question is opened by luck, and each further one stops more people who know "
        "their work and slip once. Two to four is a gate that means something.",
        "cells:\n  - {critical: acid, count: 1}",
        "cells:\n  - {critical: acid, count: 1}\n  - {critical: isocyanate_mist, count: 2}",
        gate_size,
    ),
)
