"""The texts of all questions as words, and where each word stands."""

import re
from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import fsum
from typing import Literal

from generator.questions.giveaways.told_text import PaperText
from generator.questions.trade_words import trade_words, weights

Words = frozenset[str]
Kind = Literal["fact", "title", "shown", "wrong"]


# sums of weights are exact to the last digit only; a text just at the measure is looked at
_NEARLY = 1 - 1e-9
# a text with one of them may say which of two steps comes first
_ORDER = re.compile(r"\b(before|after|first|then|until|once|as soon as|next)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Told:
    """A text of a question.

    place        of the question
    kind         how the text stands in it
    tells_order  whether it may say which of two things comes first
    """

    place: int
    kind: Kind
    words: Words
    tells_order: bool


class ToldWords:
    """What some questions tell.

    told       every text of every question
    all_words  for each question all its words
    """

    def __init__(self, texts: Sequence[PaperText]) -> None:
        self.texts = texts
        self.told = [told for place, text in enumerate(texts) for told in _told(place, text)]
        collected: list[set[str]] = [set() for _ in texts]
        self._where: dict[str, set[int]] = defaultdict(set)
        for number, told in enumerate(self.told):
            collected[told.place] |= told.words
            for word in told.words:
                self._where[word].add(number)
        self.all_words = [frozenset(words) for words in collected]
        self._weight = weights(self.all_words)

    def mass(self, words: Iterable[str]) -> float:
        """Return the weight of some words together; rare ones weigh most."""
        # exactly rounded, so that no order of the words moves the last digit
        return fsum(self._weight.get(word, 0.0) for word in words)

    def sums(self, worth: Mapping[str, float], least: float) -> Mapping[int, float]:
        """Return for texts that have some of some words what they are worth together.

        least  texts whose words are worth less may be left out
        A text that has only words from the light end of the list, which together weigh too little,
        is never looked at; the commonest words are such words.
        """
        rare = sorted(worth, key=lambda word: (worth[word], word))
        enough = least * _NEARLY
        light, passed = 0.0, 0
        while passed < len(rare) and light + worth[rare[passed]] < enough:
            light += worth[rare[passed]]
            passed += 1
        rough: dict[int, float] = {}
        for word in rare[passed:]:
            for number in self._where.get(word, ()):
                rough[number] = rough.get(number, 0.0) + worth[word]
        for word in reversed(rare[:passed]):
            for number in rough.keys() & self._where.get(word, set()):
                rough[number] += worth[word]
            # a text is given up as soon as all lighter words together would not do
            light -= worth[word]
            rough = {number: known for number, known in rough.items() if known + light >= enough}
        return {
            number: fsum(worth[word] for word in worth.keys() & self.told[number].words)
            for number in sorted(rough)
            if rough[number] >= enough
        }


def _told(place: int, text: PaperText) -> Iterable[Told]:
    kinds: tuple[tuple[Kind, tuple[str, ...]], ...] = (
        ("fact", text.facts),
        ("title", (text.title,) if text.title else ()),
        ("shown", text.shown),
        ("wrong", text.wrong),
    )
    for kind, texts in kinds:
        yield from (Told(place, kind, trade_words(t), bool(_ORDER.search(t))) for t in texts)
