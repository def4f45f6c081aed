"""A key must not echo its own question: words that only it shares with the stem or the caution."""

import re
from collections.abc import Iterator
from functools import cache
from typing import Any

from generator.bank.bank import Entry
from generator.bank.checks.rule import Rule
from generator.bank.checks.waiving import unwaived
from generator.bank.models import ChoiceItem
from generator.diagnostics import Problem

RULE = "key-words-told"
# one word in common is what options of one question mostly have
MOST_SHARED = 1
_WORD = re.compile(r"[a-z]{4,}")
_ENDINGS = ("ing", "ed", "es", "s")
_PLAIN_TEXT = """
about above after again also another around because before being below between both could does
done down during each either enough every first from good have here hold holds into just keep
kept left like made make makes more most much must need needs never next nothing only other over
part place right same should some sure than that their them then there these they thing this
those through time times under until used uses using very want well were what when where which
while will with without work would your
"""
_PLAIN = frozenset(_PLAIN_TEXT.split())


@cache
def content_words(text: str) -> frozenset[str]:
    """Return the words of a text that carry its meaning, without their endings."""
    return frozenset(_stem(word) for word in _WORD.findall(text.casefold()) if word not in _PLAIN)


def _stem(word: str) -> str:
    for ending in _ENDINGS:
        if word.endswith(ending) and len(word) - len(ending) >= 4:
            return word.removesuffix(ending)
    return word


def told_by_itself(item: ChoiceItem) -> list[frozenset[str]]:
    """Return for each option the words that it alone shares with the stem or the item's caution."""
    told = content_words(item.stem) | content_words(item.caution or "")
    words = [content_words(option.text) for option in item.options]
    return [
        frozenset(own & told).difference(*(other for n, other in enumerate(words) if n != place))
        for place, own in enumerate(words)
    ]


def _echoes(entry: Entry[Any]) -> Iterator[Problem]:
    if not isinstance(entry.record, ChoiceItem):
        return
    shared = told_by_itself(entry.record)
    for place, option in enumerate(entry.record.options):
        others = max((len(words) for n, words in enumerate(shared) if n != place), default=0)
        if option.right and len(shared[place]) > max(MOST_SHARED, others):
            words = " and ".join(_as_written(option.text, shared[place]))
            message = f"of all options only the right one takes up '{words}' from the question"
            hint = "say it in other words, or let a wrong option take up as much"
            path = ("options", place, "text")
            yield entry.problem("warning", RULE, message, *path, hint=hint)


def _as_written(text: str, stems: frozenset[str]) -> list[str]:
    """Return the words of a text that have these stems, in their order, each once."""
    words = dict.fromkeys(_WORD.findall(text.casefold()))
    return [word for word in words if _stem(word) in stems]


RULES = (
    Rule(
        RULE,
        "warning",
        "A learner who knows nothing picks the option that sounds like the question.",
        "stem: What makes the wet filler shrink?\noptions:\n"
        "  - {text: Wet filler that shrinks as it gels, right: true}\n  - text: A cold shop",
        "stem: What makes the wet filler shrink?\noptions:\n"
        "  - {text: Solvent that leaves as it gels, right: true}\n  - text: A cold shop",
        lambda bank: unwaived(bank, RULE, _echoes),
    ),
)
