"""Damage to names: misspelt keys and references, broken links, figures that moved."""

import re

from tests.bank.small_bank import REPOSITORY
from tests.damage.damage import Chance, Damage, Kind
from tests.damage.papers import Spot, spots

_KEY = re.compile(r"\s*(?:- )?[{]?([a-z_]{3,}):")
_REFERENCE = re.compile(
    r"(?:objective|hazard|first|then|fault|place|module|question|see|term|source|meets|guards"
    r"|ends|wears|not_with|twin_of|must_include): \[?([a-z0-9_/]{4,})|\]\([a-z]+:([a-z0-9_]+)\)"
)
_SOURCE = re.compile(r"source: (?:\n +- )?([a-z0-9_]{4,})")
_LINK = re.compile(r"\[[^\]]+\]\((?:source|term|lesson):[^)\s]+\)")
_FIGURE = re.compile(r"```figure ([a-z_]+)$")


def swapped(chance: Chance, word: str) -> str:
    """Return a word with two neighboring letters that differ swapped."""
    places = [n for n in range(len(word) - 1) if word[n] != word[n + 1]]
    at = chance.random.choice(places)
    return word[:at] + word[at + 1] + word[at] + word[at + 2 :]


def _misspelt(chance: Chance, found: list[Spot], pattern: re.Pattern[str]) -> Damage:
    spot = chance.pick([s for s in found if pattern.search(s.text)])
    match = pattern.search(spot.text)
    assert match is not None
    start, end = next(match.span(n) for n in range(1, pattern.groups + 1) if match[n])
    word = swapped(chance, spot.text[start:end])
    return chance.line(spot, spot.text[:start] + word + spot.text[end:])


def key_swapped(chance: Chance) -> Damage:
    """Swap two letters of the name of a field."""
    return _misspelt(chance, spots(chance.files, "question_bank/"), _KEY)


def reference_swapped(chance: Chance) -> Damage:
    """Swap two letters of a name that leads to another record."""
    return _misspelt(chance, spots(chance.files), _REFERENCE)


def source_misspelt(chance: Chance) -> Damage:
    """Swap two letters of the key of a source."""
    return _misspelt(chance, spots(chance.files, "question_bank/items/"), _SOURCE)


def link_broken(chance: Chance) -> Damage:
    """Break a link of a lesson in one of the ways in which hands do."""
    spot = chance.pick([s for s in spots(chance.files, "course/") if _LINK.search(s.text)])
    match = _LINK.search(spot.text)
    assert match is not None
    link = match[0]
    ways = (
        link[:-1],
        link[:-1] + ".",
        link.replace("](", "] ("),
        link.replace("](", "]"),
        link.replace("](", "("),
        link[1:],
        link.replace("(", "( ", 1),
        link.replace(":", " ", 1),
        link.replace(":", ":: ", 1),
        link.replace("(", "[").replace(")", "]"),
        re.sub(r"\(([a-z])([a-z])", r"(\2\1", link),
        re.sub(r":.*\)", ":)", link),
        re.sub(r"\(.*\)", "()", link),
    )
    new = chance.random.choice(ways)
    return chance.line(spot, spot.text.replace(link, new, 1), what=f"{link} -> {new}")


def figure(chance: Chance) -> Damage:
    """Rename a drawing that a lesson shows, delete it, or change the case of a letter."""
    drawn = {path.stem for path in (REPOSITORY / "course/figures").glob("*.svg")}
    found = spots(chance.files, "course/")
    spot = chance.pick([s for s in found if (m := _FIGURE.match(s.text)) and m[1] in drawn])
    old = f"course/figures/{spot.text.split()[1]}.svg"
    data = (REPOSITORY / old).read_bytes()
    way = chance.random.choice(("renamed", "deleted", "case"))
    changes: dict[str, bytes | None] = {old: None}
    if way == "renamed":
        changes[old.replace(".svg", "_2.svg")] = data
    elif way == "case":
        changes[f"course/figures/{spot.text.split()[1].capitalize()}.svg"] = data
    return Damage(chance.kind, changes, spot.path, (spot.line,), f"{way}: {old}")


KINDS: dict[str, Kind] = {
    "letters of a key": key_swapped,
    "letters of a reference": reference_swapped,
    "source misspelt": source_misspelt,
    "figure": figure,
    "link broken": link_broken,
}
