"""Options that state amounts: never the same one twice, never one inside another, in order."""

from collections.abc import Iterator
from itertools import combinations
from typing import Any

from generator.bank.bank import Entry
from generator.bank.checks.one_record.stated_amounts import Stated, stated_amount
from generator.bank.checks.rule import Rule
from generator.bank.checks.waiving import unwaived
from generator.bank.models import ChoiceItem, MultipleResponseItem
from generator.diagnostics import Problem

SAME, OVERLAP, ORDER = "options-same-amount", "options-overlap", "options-out-of-order"


def _stated(entry: Entry[Any]) -> list[Stated | None]:
    return [stated_amount(option.text) for option in entry.record.options]


def _same_amount(entry: Entry[Any]) -> Iterator[Problem]:
    if isinstance(entry.record, ChoiceItem | MultipleResponseItem):
        for (first, one), (place, other) in combinations(enumerate(_stated(entry)), 2):
            if one and other and one.same_as(other):
                message = f"this is the same amount as option {first + 1}"
                hint = "two options that are equal are both right or both wrong"
                path = ("options", place, "text")
                yield entry.problem("warning", SAME, message, *path, hint=hint)


def _overlap(entry: Entry[Any]) -> Iterator[Problem]:
    if isinstance(entry.record, ChoiceItem):
        for (first, one), (place, other) in combinations(enumerate(_stated(entry)), 2):
            if one and other and one.rest == other.rest and _share(one, other):
                message = f"a value can lie in this range and in that of option {first + 1}"
                hint = "let one range end where the next begins"
                path = ("options", place, "text")
                yield entry.problem("warning", OVERLAP, message, *path, hint=hint)


def _share(one: Stated, other: Stated) -> bool:
    return one.overlaps(other) and not one.same_as(other)


def _out_of_order(entry: Entry[Any]) -> Iterator[Problem]:
    if isinstance(entry.record, ChoiceItem):
        stated = [one for one in _stated(entry) if one]
        alike = len({(one.kind, one.rest) for one in stated}) == 1
        if not alike or len(stated) < len(entry.record.options):
            return
        for place, (one, other) in enumerate(zip(stated, stated[1:], strict=False)):
            if other.start < one.start:
                message = "options that are all numbers stand from the least to the most"
                path = ("options", place + 1, "text")
                yield entry.problem("warning", ORDER, message, *path, hint="move it up")
                return


RULES = (
    Rule(
        SAME,
        "warning",
        "Two options that state one amount in two ways are both right or both wrong, so a learner "
        "can strike them out unread.",
        "- text: 1 in\n- text: 25.4 mm",
        "- text: 1 in\n- text: 10 mm",
        lambda bank: unwaived(bank, SAME, _same_amount),
    ),
    Rule(
        OVERLAP,
        "warning",
        "Where two ranges overlap, a value inside both makes two options right.",
        "- text: 18 to 22 s\n- text: 20 to 26 s",
        "- text: 18 to 22 s\n- text: 22 to 26 s",
        lambda bank: unwaived(bank, OVERLAP, _overlap),
    ),
    Rule(
        ORDER,
        "warning",
        "A reader looks for a number by its size. The papers sort such options, and so does the "
        "bank.",
        "- text: 40 µm\n- text: 20 µm",
        "- text: 20 µm\n- text: 40 µm",
        lambda bank: unwaived(bank, ORDER, _out_of_order),
    ),
)
