"""How an answer sheet is filled in, in words, and the room that the words need."""

from collections.abc import Collection
from math import ceil
from typing import Final

from generator.bank.models import Kind
from generator.issued import ByKind

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
# in the order in which they are told
_RULES: Final = (("ring", _RING), ("grid", _GRID), ("number", _NUMBER))
# a written answer stays on the question paper
_NEEDS: Final = ByKind(
    numeric="number",
    choice="ring",
    multiple_response="ring",
    order="grid",
    match="grid",
    written="",
)
# What a rule shows beside its words, in characters of text that would be as wide.
_DRAWN: Final = {"ring": 14, "number": 22}


def filling_rules(kinds: Collection[Kind]) -> list[dict[str, str]]:
    """Return the rules that the kinds of question on a sheet need, each with its name."""
    needed = {_NEEDS.of(kind) for kind in kinds} - {""}
    # Every ring is filled and changed the same way, whatever it stands for.
    needed |= {"ring"} if needed else set()
    return [{"rule": name, "text": text} for name, text in _RULES if name in needed]


def lines_of_rules(kinds: Collection[Kind], characters: int) -> int:
    """Return how many lines the rules take where a line holds a number of characters."""
    return sum(
        ceil((len(rule["text"]) + _DRAWN.get(rule["rule"], 0)) / characters)
        for rule in filling_rules(kinds)
    )
