"""Which question of a bank gives the answer of another one away when both stand on a paper."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from math import fsum

from generator.questions.giveaways.same_order import same_orders
from generator.questions.giveaways.told_text import Asked, PaperText
from generator.questions.giveaways.told_words import ToldWords, Words
from generator.questions.trade_words import as_written, is_number, trade_words

# share of the key that a stated fact, and that a text shown without more, must have
MOST_OF_KEY, NEARLY_ALL_OF_KEY = 0.5, 0.65
# weight of what is shared: of the key about one word that is rare in the bank, and of the topic
RARE_KEY, RARE_TOPIC = 5.0, 4.0
# share of the topic that is shared; a number with its unit says much by itself
SHARE_OF_TOPIC, SHARE_WITH_NUMBER = 0.15, 0.1
# what a word of the key counts that stands in the stem as well
IN_STEM = 0.5
# words that are told of each giveaway
MOST_WORDS = 6


@dataclass(frozen=True, slots=True)
class Giveaway:
    """A question that gives another one away, and some of the words that do it."""

    question: str
    gives_away: str
    words: tuple[str, ...]


def giveaways(texts: Sequence[PaperText]) -> tuple[Giveaway, ...]:
    """Return every question that tells the key of another one, sorted by their names.

    Two questions of one record are left out, as they never share a paper.
    """
    told = ToldWords(texts)
    found: dict[tuple[str, str], tuple[str, ...]] = {}
    for place, text in enumerate(texts):
        for asked in text.asked:
            for other, words in _telling(told, place, asked):
                pair = (texts[other].name, text.name)
                found[pair] = max(found.get(pair, ()), as_written(asked.key, words), key=len)
    for pair, shared in same_orders(texts, told).items():
        found.setdefault(pair, shared)
    return tuple(
        Giveaway(question, gives_away, words[:MOST_WORDS])
        for (question, gives_away), words in sorted(found.items())
    )


def _telling(told: ToldWords, place: int, asked: Asked) -> Iterator[tuple[int, Words]]:
    """Return the places of the questions that tell an answer, with the words they share with it."""
    key, topic = trade_words(asked.key), trade_words(asked.topic)
    wrong = [trade_words(option) for option in asked.wrong]
    worth = _worth(told, key, topic, wrong)
    whole = fsum(worth.values())
    numbers = {word for word in key if is_number(word)}
    own = told.texts[place].record
    for number, value in told.sums(worth).items():
        text = told.told[number]
        other = told.texts[text.place]
        if other.record == own or not numbers <= text.words:
            continue
        if text.kind == "wrong" and not numbers:
            continue
        if asked.plain and text.kind != "fact":
            continue
        least = MOST_OF_KEY if text.kind in ("fact", "title") else NEARLY_ALL_OF_KEY
        if value < RARE_KEY or value < least * whole:
            continue
        shared = key & text.words
        share = SHARE_WITH_NUMBER if numbers else SHARE_OF_TOPIC
        if _is_on(told, topic - shared, text.place, share) and not _fits_wrong(
            told, text.words, key, wrong, value / whole
        ):
            yield text.place, shared


def _worth(
    told: ToldWords, key: Words, topic: Words, wrong: Sequence[Words]
) -> Mapping[str, float]:
    """Weigh the words of a key: less what the stem or the wrong options have as well."""
    worth = {}
    for word in key:
        share = sum(word in option for option in wrong) / len(wrong) if wrong else 0.0
        if share < 1:
            # one wrong option has this word and another one that: only the key has both
            value = told.mass([word]) * (1 - share / 2) * (IN_STEM if word in topic else 1.0)
            worth[word] = value
    return worth


def _is_on(told: ToldWords, topic: Words, place: int, share: float) -> bool:
    """Say whether a question is about the topic of another one."""
    shared = told.mass(topic & told.all_words[place])
    return shared >= RARE_TOPIC and shared >= share * told.mass(topic)


def _fits_wrong(
    told: ToldWords, words: Words, key: Words, wrong: Iterable[Words], had: float
) -> bool:
    """Say whether a text holds as much of a wrong option as of the key."""
    for option in wrong:
        own = option - key
        whole = told.mass(own)
        if whole and told.mass(own & words) / whole >= had:
            return True
    return False
