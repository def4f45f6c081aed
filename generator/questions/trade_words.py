"""Words of a text as they can be compared: endings cut off, numbers joined with their units."""

import re
from collections.abc import Collection, Iterable, Iterator, Mapping
from functools import cache, lru_cache
from math import log

_WORD = re.compile(r"[a-z]+(?:['-][a-z]+)*|p?\d+(?:[.,]\d+)*|%|°[cf]|µm")
_PLURALS = (("ies", "y"), ("sses", "ss"), ("ss", "ss"), ("us", "us"), ("s", ""))
_ENDINGS = ("ing", "edly", "ed", "ly", "er", "e", "y")
_FEWEST_LETTERS = 3
# words that carry no trade; a question is never given away by them
_SMALL_WORDS = """
a about above after again all allow already also always an and any apprentice are as ask at away
back bay be because been before begin being below beside best between both bring but by call can
cannot card case come could day did do does done down during each else end even ever every few
find first fit follow for from full get give given go good had half hand happen has have he her
here him his hold how however if in inside into is it its itself job just keep kind know last
learner leave left less let like likely little long look lost made make many may mean might mind
more most much must name near need never new next no nobody none nor not nothing now of off often
old on once one only onto or other others our out over own painter part people person piece place
point put rather ready reason right safe same say says see set shall she shop should show side so
some somebody someone something soon stand stay step still such take tell than that the their them
then there these they thing this those though three through time to together too try two under
until up upon us use used usual very want was way we well went were what when where whether which
while who whole whom whose why will with within without word work would wrong yes yet you your
"""
_SMALL = frozenset(_SMALL_WORDS.split())


# a bank of ten thousand items has some fifty thousand texts
@lru_cache(maxsize=65536)
def trade_words(text: str) -> frozenset[str]:
    """Return the words of a text that carry trade, cut to their stems; '98 %' is one word."""
    return frozenset(word for word, _ in _words(text))


def as_written(text: str, words: Collection[str]) -> tuple[str, ...]:
    """Return those of a text's words that are among some stems, once each, as the text has them."""
    found: dict[str, str] = {}
    for word, written in _words(text):
        if word in words:
            found.setdefault(word, written)
    return tuple(dict.fromkeys(found.values()))


def _words(text: str) -> Iterator[tuple[str, str]]:
    """Return each word as its stem and as written; a hyphened one also in its parts."""
    words = _WORD.findall(text.lower().replace("\u00a0", " "))
    for place, word in enumerate(words):
        after = words[place + 1 : place + 2]
        if word[-1].isdigit():
            unit = [] if not after or after[0][-1].isdigit() else after
            yield word + "".join(map(stem, unit)), " ".join([word, *unit])
        elif place and words[place - 1][-1].isdigit():
            continue
        else:
            for part in dict.fromkeys((word, *word.split("-"))):
                if part not in _SMALL and part[0].isalpha() and part[1:]:
                    yield stem(part), word


@cache
def stem(word: str) -> str:
    """Cut the ending off a word, so that 'sprayed' and 'spraying' are one."""
    word = word.removesuffix("'s")
    for ending, left in _PLURALS:
        if word.endswith(ending) and len(word) - len(ending) >= _FEWEST_LETTERS:
            word = word.removesuffix(ending) + left
            break
    for ending in _ENDINGS:
        if word.endswith(ending) and len(word) - len(ending) >= _FEWEST_LETTERS:
            short = word[: -len(ending)]
            if ending == "y" and short[-1] in "aeiou":
                break
            return short[:-1] if short[-1] == short[-2] and len(short) > _FEWEST_LETTERS else short
    return word


def is_number(word: str) -> bool:
    """Return whether a word is a number, with or without its unit."""
    return any(letter.isdigit() for letter in word)


def weights(texts: Iterable[frozenset[str]]) -> Mapping[str, float]:
    """Weigh each word by how few of the texts have it: 0 for one that all have."""
    texts = tuple(texts)
    counts: dict[str, int] = {}
    for words in texts:
        for word in words:
            counts[word] = counts.get(word, 0) + 1
    return {word: log(len(texts) / count) for word, count in counts.items()}
