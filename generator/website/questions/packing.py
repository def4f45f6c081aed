"""How many questions one page or one data file takes, so that a large bank loads no slower."""

from collections.abc import Callable, Iterable

from generator.website.context import Variants

# plain bytes of the questions on one page: with its frame it stays below 150 kB
PAGE_BYTES = 132_000
# of one part of an objective: ten objectives together stay below a page as it travels
PART_BYTES = 14_000

Size = Callable[[Variants], int]


def packed(items: Iterable[Variants], most: int, size_of: Size) -> tuple[tuple[Variants, ...], ...]:
    """Part items, in their order, into runs of at most a number of bytes; no run is empty."""
    runs: list[list[Variants]] = []
    left = 0
    for variants in items:
        size = size_of(variants)
        if not runs or size > left:
            runs.append([])
            left = most
        runs[-1].append(variants)
        left -= size
    return tuple(tuple(run) for run in runs)
