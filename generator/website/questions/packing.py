"""How many questions one page or one data file takes, so that a large bank loads no slower."""

import json
from collections.abc import Iterable

from generator.website.context import Variants

# what an item adds to compressed text, fitted on the real bank: so much for the item itself,
# and for each thousand characters of its first variant and of the others, which repeat it
ITEM, FIRST, OTHERS = 371, 16, 66
# a module's page, and one part of an objective: ten objectives together stay below a page
PAGE_BYTES = 42_400
PART_BYTES = 4_700


def weight(variants: Variants) -> int:
    """Return about how many bytes an item adds to a compressed page."""
    first, *others = (len(json.dumps(question, ensure_ascii=False)) for question in variants)
    return ITEM + (FIRST * first + OTHERS * sum(others)) // 1000


def packed(items: Iterable[Variants], most: int) -> tuple[tuple[Variants, ...], ...]:
    """Part items, in their order, into runs of at most so many bytes; no run is empty."""
    runs: list[list[Variants]] = []
    left = 0
    for variants in items:
        size = weight(variants)
        if not runs or size > left:
            runs.append([])
            left = most
        runs[-1].append(variants)
        left -= size
    return tuple(tuple(run) for run in runs)
