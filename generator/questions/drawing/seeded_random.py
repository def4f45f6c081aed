"""Repeatable chance: a stream of numbers that depends on its label alone."""

from collections.abc import Sequence
from hashlib import sha256
from typing import TypeVar

T = TypeVar("T")
_WORD = 2**64


class SeededRandom:
    """Numbers drawn from SHA-256 of a label; the same label gives the same numbers anywhere.

    Each printed thing starts a fresh stream from its own label, so that adding an item never
    moves another item's numbers.
    """

    def __init__(self, *fields: str) -> None:
        self._key = sha256("|".join(fields).encode("utf-8")).digest()
        self._words: list[int] = []
        self._block = 0

    def _word(self) -> int:
        if not self._words:
            block = sha256(self._key + self._block.to_bytes(8, "big")).digest()
            self._block += 1
            self._words = [int.from_bytes(block[i : i + 8], "big") for i in range(0, 32, 8)]
        return self._words.pop(0)

    def below(self, count: int) -> int:
        """Return a whole number from 0 up to but not including the count, all equally likely."""
        if count < 1:
            raise ValueError("a draw needs at least one thing to draw from")
        ceiling = _WORD - _WORD % count
        word = self._word()
        while word >= ceiling:
            word = self._word()
        return word % count

    def choose(self, things: Sequence[T]) -> T:
        """Return one of the things."""
        return things[self.below(len(things))]

    def shuffled(self, things: Sequence[T]) -> tuple[T, ...]:
        """Return the things in a drawn order (Fisher-Yates from the end)."""
        pile = list(things)
        for last in range(len(pile) - 1, 0, -1):
            other = self.below(last + 1)
            pile[last], pile[other] = pile[other], pile[last]
        return tuple(pile)

    def sample(self, things: Sequence[T], count: int) -> tuple[T, ...]:
        """Return some of the things in a drawn order; all of them when the count is larger."""
        return self.shuffled(things)[:count]
