"""Questions that want the same steps in the same order, or say which of two steps is first."""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations
from math import fsum

from generator.questions.giveaways.told_text import PaperText
from generator.questions.giveaways.told_words import ToldWords, Words
from generator.questions.trade_words import as_written, trade_words

# two steps are the same where they share so much of the words of both
ALIKE = 0.33
# a text names a step where it has so much of its words
MOST_OF_STEP = 0.6
# so many pairs in common make two orders the same question: two, and half of the shorter order,
# since most work begins with the same protection
FEWEST_PAIRS, SHARE_OF_PAIRS = 2, 0.5

Shared = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Order:
    """Two steps of which the first comes first: their words, and both as written."""

    first: Words
    then: Words
    text: str


def same_orders(texts: Sequence[PaperText], told: ToldWords) -> Mapping[tuple[str, str], Shared]:
    """Return the pairs of questions, both ways round, that want or tell the same order.

    With each pair come the words that the two share.
    """
    orders: dict[str, list[_Order]] = {}
    asking: dict[str, list[str]] = defaultdict(list)
    for text in texts:
        if text.orders:
            asking[text.record].append(text.name)
            orders.setdefault(text.record, list(map(_order, text.orders)))
    found: dict[tuple[str, str], Shared] = {}
    for one, other in combinations(sorted(orders), 2):
        shared = list(_shared(orders[one], orders[other], told))
        shorter = min(len(orders[one]), len(orders[other]))
        if len(shared) >= max(FEWEST_PAIRS, SHARE_OF_PAIRS * shorter):
            words = tuple(dict.fromkeys(word for row in shared for word in row))
            for a in asking[one]:
                for b in asking[other]:
                    found[a, b] = found[b, a] = words
    for record, order in orders.items():
        for name, words in _stated(record, order, told):
            found |= {(name, asked): words for asked in asking[record]}
    return found


def _order(steps: tuple[str, str]) -> _Order:
    first, then = steps
    return _Order(trade_words(first), trade_words(then), f"{first}; {then}")


def _shared(one: Sequence[_Order], other: Sequence[_Order], told: ToldWords) -> Iterator[Shared]:
    """Return the words of each pair of steps that both orders have."""
    for mine in one:
        for theirs in other:
            if _alike(mine.first, theirs.first, told) and _alike(mine.then, theirs.then, told):
                both = (mine.first & theirs.first) | (mine.then & theirs.then)
                yield as_written(mine.text, both)
                break


def _alike(step: Words, other: Words, told: ToldWords) -> bool:
    both = told.mass(step | other)
    return both > 0 and told.mass(step & other) >= ALIKE * both


def _stated(record: str, orders: Sequence[_Order], told: ToldWords) -> Iterator[tuple[str, Shared]]:
    """Return the questions with a text that says which of two steps comes first."""
    for order in orders:
        first, then = ({w: told.mass([w]) for w in step} for step in (order.first, order.then))
        second = told.sums(then)
        for number, value in told.sums(first).items():
            text = told.told[number]
            if (
                text.tells_order
                and told.texts[text.place].record != record
                and value >= MOST_OF_STEP * fsum(first.values())
                and second.get(number, 0.0) >= MOST_OF_STEP * fsum(then.values())
            ):
                yield told.texts[text.place].name, as_written(order.text, text.words)
