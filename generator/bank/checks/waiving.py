"""Waivers: an item may say that a warning does not hold for it, with the reason."""

from collections.abc import Callable, Iterator
from typing import Any

from generator.bank.bank import Bank, Entry
from generator.diagnostics import Problem

# rules of taste and chance; a rule that keeps people safe or a key sound is never waived
WAIVABLE = (
    "options-same-amount",
    "options-overlap",
    "options-out-of-order",
    "key-words-told",
    "key-begins-unlike",
    "key-longest",
)
Judge = Callable[[Entry[Any]], Iterator[Problem]]


def waived_at(entry: Entry[Any], rule: str) -> int | None:
    """Return the place of an item's waiver of a rule, or None where it has none."""
    rules = [waiver.rule for waiver in entry.record.waived]
    return rules.index(rule) if rule in rules else None


def in_vain(entry: Entry[Any], place: int) -> Problem:
    """Return the warning for a waiver of something that is not so."""
    rule = entry.record.waived[place].rule
    message = f"nothing here breaks '{rule}', so there is nothing to waive"
    hint = "take the waiver out"
    return entry.problem("warning", "waiver-in-vain", message, "waived", place, "rule", hint=hint)


def unwaived(bank: Bank, rule: str, judge: Judge) -> Iterator[Problem]:
    """Return what a judge finds in items that do not waive it, and waivers without a use."""
    for entry in bank.items.values():
        place = waived_at(entry, rule)
        if place is None:
            yield from judge(entry)
        elif not any(True for _ in judge(entry)):
            yield in_vain(entry, place)
