"""One damage: which bytes it changes, where a message should point, and who could see it."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from random import Random

from tests.damage.papers import Files, Spot, lines_of

SEED = 2026


@dataclass(frozen=True, slots=True)
class Damage:
    """A single damage of a sound project.

    changes  new bytes of each touched file, None where it is gone
    path     the file, and
    lines    the lines at which a message is at the right place
    what     the damage in a few words, for the list of what nobody saw
    trade    whether only somebody who knows the trade could tell it from a sound text; said here,
             before anything is checked
    """

    kind: str
    changes: Mapping[str, bytes | None]
    path: str
    lines: tuple[int, ...]
    what: str
    trade: bool = False


@dataclass(frozen=True, slots=True)
class Chance:
    """What a kind draws from: the sound files and the numbers of one draw."""

    kind: str
    files: Files
    random: Random

    def pick(self, spots: list[Spot]) -> Spot:
        """Return one of the spots; a kind without any is a fault of the kind itself."""
        assert spots, self.kind
        return self.random.choice(spots)

    def group(self) -> str:
        """Return the items, the lessons or the whole bank, each as often."""
        return self.random.choice(("question_bank/items/", "course/", "question_bank/"))

    def line(self, spot: Spot, *new: str, what: str = "", trade: bool = False) -> Damage:
        """Return the damage that puts other lines in the place of one."""
        lines = lines_of(self.files, spot.path)
        lines[spot.line - 1 : spot.line] = new
        last = spot.line + max(len(new) - 1, 0)
        said = what or f"{spot.text.strip()!r} -> {' | '.join(line.strip() for line in new)!r}"
        text = "".join(f"{line}\n" for line in lines)
        changes = {spot.path: text.encode("utf-8")}
        return Damage(self.kind, changes, spot.path, (spot.line, last), said, trade)

    def raw(self, spot: Spot, data: bytes, what: str) -> Damage:
        """Return the damage that gives a file other bytes."""
        return Damage(self.kind, {spot.path: data}, spot.path, (spot.line,), what)


Kind = Callable[[Chance], Damage]


def draw(kinds: Mapping[str, Kind], files: Files, count: int) -> list[Damage]:
    """Return so many damages of each kind; the same ones each time, however many are asked for."""
    return [
        make(Chance(kind, files, Random(f"{SEED}/{kind}/{number}")))
        for kind, make in kinds.items()
        for number in range(count)
    ]
