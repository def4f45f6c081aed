"""What of one question was handed out over a class, so that papers differ where they can."""

from dataclasses import dataclass, field

Draw = tuple[tuple[str, str], ...]
# how good a further set of values is, best first
NEW_KEY, NEW_VALUES, UNLIKE_NEIGHBOUR, LIKE_NEIGHBOUR = range(4)


@dataclass(slots=True)
class HandedOut:
    """The draws and keys of one question, in the order of the papers.

    no_new_key     the grid has no key left that nobody has
    no_new_values  the grid has no values left that nobody has
    """

    draws: list[Draw] = field(default_factory=list)
    keys: list[str] = field(default_factory=list)
    no_new_key: bool = False
    no_new_values: bool = False

    def add(self, draw: Draw, key: str) -> None:
        """Note what the next paper got."""
        self.draws.append(draw)
        self.keys.append(key)

    def standing(self, draw: Draw, key: str) -> int:
        """Say how good a set of values would be for the next paper.

        NEW_KEY           nobody has this key, and so nobody has these values
        NEW_VALUES        nobody has these values, and the paper before has another key
        UNLIKE_NEIGHBOUR  the paper before has another key, and so other values
        LIKE_NEIGHBOUR    the paper before has this key
        """
        if key not in self.keys:
            return NEW_KEY
        if key == self.keys[-1]:
            return LIKE_NEIGHBOUR
        return NEW_VALUES if draw not in self.draws else UNLIKE_NEIGHBOUR

    @property
    def best_left(self) -> int:
        """Return the best standing that may still be had."""
        if not self.no_new_key:
            return NEW_KEY
        return UNLIKE_NEIGHBOUR if self.no_new_values else NEW_VALUES
