"""Questions that plans and items name: they exist, are for exams, and are truly kept apart."""

from collections.abc import Iterator
from typing import Any

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.bank.models import Blueprint
from generator.diagnostics import Problem, did_you_mean


def no_such_question(bank: Bank) -> Iterator[Problem]:
    """Return names of questions that the bank does not have, in plans and in items."""
    for plan in bank.blueprints.values():
        named: list[tuple[str, tuple[str | int, ...]]] = [
            (name, ("must_include", place)) for place, name in enumerate(plan.record.must_include)
        ]
        named += [
            (name, ("not_together", row, place))
            for row, names in enumerate(plan.record.not_together)
            for place, name in enumerate(names)
        ]
        yield from _unknown(bank, plan, named)
    for item in bank.items.values():
        others = enumerate(item.record.not_with)
        yield from _unknown(bank, item, [(name, ("not_with", place)) for place, name in others])


def _unknown(
    bank: Bank, entry: Entry[Any], named: list[tuple[str, tuple[str | int, ...]]]
) -> Iterator[Problem]:
    for name, path in named:
        if not _is_known(bank, name):
            message = f"the bank has no question '{name}'"
            hint = did_you_mean(name, bank.items) or "an item is named module/objective/name"
            yield entry.problem("error", "no-such-question", message, *path, hint=hint)


def _is_known(bank: Bank, name: str) -> bool:
    """Return whether a name is an item, or one of the questions that a record gives."""
    group, _, rest = name.partition("/")
    record = rest.partition("/")[0]
    groups = {"procedures": bank.procedures, "faults": bank.faults, "tables": bank.tables}
    if group in groups:
        return record in groups[group] or bank.was_unread(group, record)
    return name in bank.items or bank.was_unread("items", name)


def kept_apart(bank: Bank) -> Iterator[Problem]:
    """Return sets kept apart that part nothing, and plans that ask for both of a pair."""
    for entry in bank.blueprints.values():
        for row, names in enumerate(entry.record.not_together):
            if len(set(names)) < 2 or len(set(names)) < len(names):
                message = "a set kept apart names two questions or more, each once"
                yield entry.problem("error", "kept-apart", message, "not_together", row)
        yield from _asked_together(bank, entry)
    for name, item in bank.items.items():
        if name in item.record.not_with:
            place = item.record.not_with.index(name)
            message = "an item cannot be kept apart from itself"
            yield item.problem("error", "kept-apart", message, "not_with", place)


def _asked_together(bank: Bank, entry: Entry[Blueprint]) -> Iterator[Problem]:
    wanted = entry.record.must_include
    for place, name in enumerate(wanted):
        item = bank.items.get(name)
        parted = set(item.record.not_with) if item else set()
        parted |= {n for row in entry.record.not_together if name in row for n in row} - {name}
        clash = [other for other in wanted if other in parted]
        if clash or wanted.index(name) != place:
            said = f"is kept apart from '{clash[0]}'" if clash else "is named twice"
            message = f"'{name}' {said}"
            yield entry.problem("error", "kept-apart", message, "must_include", place)


def study_on_paper(bank: Bank) -> Iterator[Problem]:
    """Return items that a paper must include although everyone has seen their keys."""
    for entry in bank.blueprints.values():
        for place, name in enumerate(entry.record.must_include):
            item = bank.items.get(name)
            if item and item.record.use == "study":
                message = f"'{name}' is for study; its key is on the site"
                yield entry.problem("error", "study-on-paper", message, "must_include", place)


RULES = (
    Rule(
        "no-such-question",
        "error",
        "A question that a plan wants, or that another one is kept apart from, must exist.",
        "must_include: [filler/mix/gogles_before_tube]",
        "must_include: [filler/mix/goggles_before_tube]",
        no_such_question,
    ),
    Rule(
        "kept-apart",
        "error",
        "Questions that give each other away never share a paper; a set names two or more, and "
        "a plan does not ask for both of a pair.",
        "not_together: [[filler/mix/streaks_left]]",
        "not_together: [[filler/mix/streaks_left, filler/mix/fold_time]]",
        kept_apart,
    ),
    Rule(
        "study-on-paper",
        "error",
        "A study item's key is on the site, so it measures nothing on a paper.",
        "must_include: [filler/mix/mixing_board]",
        "must_include: [filler/mix/streaks_left]",
        study_on_paper,
    ),
)
