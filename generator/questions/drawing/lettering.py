"""Lettered options in a drawn order, and matches with spare texts."""

from collections.abc import Iterable, Sequence

from generator.bank.models import ChoiceItem, MatchItem, MultipleResponseItem
from generator.diagnostics import normal
from generator.questions.drawing.seeded_random import SeededRandom
from generator.questions.drawing.sizes import stated_size
from generator.questions.question import LETTERS, ChoiceKey, MatchKey, ShownOption

Answer = tuple[str, bool, str]


def lettered(answers: Iterable[Answer], stream: SeededRandom) -> ChoiceKey:
    """Return options (text, right, says) in a drawn order, or by size where all state one."""
    # shuffled first, so that options of the same size do not keep the author's order
    ordered: Sequence[Answer] = stream.shuffled(tuple(answers))
    numbers = [n for text, _, _ in ordered if (n := stated_size(text)) is not None]
    if len(numbers) == len(ordered):
        ordered = [
            answer for _, answer in sorted(zip(numbers, ordered, strict=True), key=lambda p: p[0])
        ]
    return ChoiceKey(
        tuple(
            ShownOption(LETTERS[place], text, right, says)
            for place, (text, right, says) in enumerate(ordered)
        )
    )


def relettered(key: ChoiceKey, stream: SeededRandom) -> ChoiceKey:
    """Return the same options in another drawn order; those that stand by size keep theirs."""
    return lettered(((o.text, o.right, o.feedback) for o in key.options), stream)


def unlike(candidates: Iterable[tuple[str, str]], taken: Iterable[str]) -> list[tuple[str, str]]:
    """Return the (text, origin) whose text reads differently from those taken and one another."""
    seen = {normal(text) for text in taken}
    kept = []
    for text, origin in candidates:
        if normal(text) not in seen:
            seen.add(normal(text))
            kept.append((text, origin))
    return kept


def item_options(item: ChoiceItem | MultipleResponseItem, stream: SeededRandom) -> ChoiceKey:
    """Return a hand-written item's options in a drawn order."""
    return lettered(((o.text, o.right, o.feedback) for o in item.options), stream)


def matched(item: MatchItem, stream: SeededRandom) -> MatchKey:
    """Return a match item with both sides in a drawn order."""
    lefts = stream.shuffled(item.pairs)
    rights = stream.shuffled(tuple(dict.fromkeys([p.right for p in item.pairs] + [*item.spare])))
    letters = {text: LETTERS[place] for place, text in enumerate(rights)}
    numbered = [(str(place), pair) for place, pair in enumerate(lefts, start=1)]
    return MatchKey(
        left=tuple((number, pair.left) for number, pair in numbered),
        right=tuple((letters[text], text) for text in rights),
        answers=tuple((number, letters[pair.right]) for number, pair in numbered),
        feedback=tuple((number, pair.feedback) for number, pair in numbered),
    )
