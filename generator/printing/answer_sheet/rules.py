"""How an answer sheet is filled in, in words, and the room that the words need."""

from collections.abc import Collection
from math import ceil
from typing import Final

_RING = (
    "Fill the ring of your answer, and every ring that is right where the question asks for all. "
    "To change an answer, cross its ring out and fill another."
)
_GRID = (
    "In a grid, fill one letter under each small number. The number is the place in an order "
    "question, with 1 first, and the row in a matching question."
)
_NUMBER = (
    "Write a number from the left, with the point in a box of its own, and fill the ring of "
    "every digit and of the point under its box. What is left over stays empty. The unit "
    "stands above the boxes; no plus or minus is needed."
)
_SAID_OF: Final = {
    "choice": ("ring", _RING),
    "multiple_response": ("ring", _RING),
    "order": ("grid", _GRID),
    "match": ("grid", _GRID),
    "numeric": ("number", _NUMBER),
}
# What a rule shows beside its words, in signs of text that would be as wide.
_DRAWN: Final = {"ring": 14, "number": 22}


def filling_rules(kinds: Collection[str]) -> list[dict[str, str]]:
    """Return the rules that the kinds of question on a sheet need, each with its name."""
    wanted = dict.fromkeys(said for kind, said in _SAID_OF.items() if kind in kinds)
    if wanted:
        # Every ring is filled and changed the same way, whatever it stands for.
        wanted = {("ring", _RING): None} | wanted
    return [{"rule": name, "text": text} for name, text in wanted]


def lines_of_rules(kinds: Collection[str], signs: int) -> int:
    """Return how many lines the rules take where so many signs stand on a line."""
    return sum(
        ceil((len(rule["text"]) + _DRAWN.get(rule["rule"], 0)) / signs)
        for rule in filling_rules(kinds)
    )
