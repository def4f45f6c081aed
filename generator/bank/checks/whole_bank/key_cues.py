"""Cues that one item cannot show: over the whole bank the key looks unlike its rivals too often.

A cue is counted where exactly one option of a choice stands out by it. By chance that is the key
in one of so many options; clearly more is more than the normal bound for one in a hundred.
"""

from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from math import sqrt
from typing import cast

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.bank.checks.waiving import in_vain, waived_at
from generator.bank.models import ChoiceItem
from generator.diagnostics import Problem, normal

BEGINS_UNLIKE, LONGEST = "key-begins-unlike", "key-longest"
# one-sided, one in a hundred
_CLEARLY = 2.326
_MOST_NAMED = 12
# fewer choices than these say nothing of an author's habits
FEWEST = 12

Cue = Callable[[ChoiceItem], int | None]


@dataclass(frozen=True, slots=True)
class Count:
    """How often a cue stands out, how often it is the key, and what chance would give."""

    shown: int
    keys: tuple[Entry[ChoiceItem], ...]
    expected: float
    spread: float

    @property
    def is_clear(self) -> bool:
        """Say whether the key has the cue clearly more often than chance allows."""
        bound = self.expected + _CLEARLY * self.spread
        return self.shown >= FEWEST and len(self.keys) > bound


def begins_unlike(item: ChoiceItem) -> int | None:
    """Return the option that begins with another word where all the rest begin alike."""
    words = [_first_word(option.text) for option in item.options]
    alone = [place for place, word in enumerate(words) if words.count(word) == 1]
    return alone[0] if len(words) > 2 and len(alone) == 1 and len(Counter(words)) == 2 else None


def _first_word(text: str) -> str:
    word = normal(text).partition(" ")[0].rstrip(",;:")
    return "a" if word == "an" else word


def longest(item: ChoiceItem) -> int | None:
    """Return the option with the most characters where one has more than all others."""
    sizes = [len(option.text) for option in item.options]
    return sizes.index(max(sizes)) if sizes.count(max(sizes)) == 1 else None


def counted(bank: Bank, rule: str, cue: Cue) -> Count:
    """Count a cue over the choices that do not waive it."""
    chances: list[float] = []
    keys = []
    for entry in _choices(bank):
        place = cue(entry.record) if waived_at(entry, rule) is None else None
        if place is not None:
            chances.append(1 / len(entry.record.options))
            keys += [entry] * entry.record.options[place].right
    spread = sqrt(sum(chance * (1 - chance) for chance in chances))
    return Count(len(chances), tuple(keys), sum(chances), spread)


def _choices(bank: Bank) -> Iterator[Entry[ChoiceItem]]:
    for entry in bank.items.values():
        if isinstance(entry.record, ChoiceItem):
            yield cast("Entry[ChoiceItem]", entry)


def _look(bank: Bank, rule: str, cue: Cue, words: str) -> Iterator[Problem]:
    for entry in _choices(bank):
        waived = waived_at(entry, rule)
        place = cue(entry.record)
        if waived is not None and not (place is not None and entry.record.options[place].right):
            yield in_vain(entry, waived)
    count = counted(bank, rule, cue)
    if count.is_clear:
        named = ", ".join(entry.name for entry in count.keys[:_MOST_NAMED])
        more = f" and {len(count.keys) - _MOST_NAMED} more" * (len(count.keys) > _MOST_NAMED)
        message = (
            f"in {len(count.keys)} of {count.shown} choices {words}, and chance would give "
            f"{count.expected:.0f}: {named}{more}"
        )
        hint = "reword some of them, or waive this where the option has to stand so"
        yield count.keys[0].problem("warning", rule, message, "options", hint=hint)


RULES = (
    Rule(
        BEGINS_UNLIKE,
        "warning",
        "Where one option begins unlike the rest, it must not be the key more often than chance "
        "would have it; learners notice and pick the odd one out.",
        "(in most items) Leave it alone / Sand it wet / Sand it dry, and the first is right",
        "(in some of them) Leave it alone / Leave it wet / Sand it dry, and the first is right",
        lambda bank: _look(
            bank, BEGINS_UNLIKE, begins_unlike, "the right option begins unlike all the others"
        ),
    ),
    Rule(
        LONGEST,
        "warning",
        "Authors write the key with more care. One long key tells nothing; where the longest "
        "option is right in clearly more items than chance allows, guessing long passes papers.",
        "(over the bank) the longest option is right in half of the choices",
        "(over the bank) the longest option is right in a quarter to a third of the choices",
        lambda bank: _look(bank, LONGEST, longest, "the right option is the longest"),
    ),
)
