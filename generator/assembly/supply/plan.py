"""How many questions each cell of a blueprint takes."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

from generator.bank.models import Blueprint, Cell

WHOLE = 100


def cell_counts(blueprint: Blueprint) -> tuple[int, ...]:
    """Return the number of questions of each cell; shares fill what the counts leave, exactly."""
    counted = sum(cell.count or 0 for cell in blueprint.cells)
    shared = [cell.share for cell in blueprint.cells if cell.share is not None]
    parts = iter(apportioned(shared, (blueprint.questions or counted) - counted))
    return tuple(_count(cell, parts) for cell in blueprint.cells)


def _count(cell: Cell, parts: Iterator[int]) -> int:
    return next(parts) if cell.share is not None else cell.count or 0


def apportioned(shares: Sequence[Fraction], total: int) -> tuple[int, ...]:
    """Share out a total by largest remainder; equal remainders go to the earlier share."""
    whole = sum(shares)
    if not whole:
        return tuple(0 for _ in shares)
    exact = [share * total / whole for share in shares]
    parts = [int(value) for value in exact]
    by_remainder = sorted(range(len(shares)), key=lambda place: parts[place] - exact[place])
    for place in by_remainder[: total - sum(parts)]:
        parts[place] += 1
    return tuple(parts)


def percent_of(percent: int, total: int) -> int:
    """Return a percent of a number of questions, part questions rounded up."""
    return -(-percent * total // WHOLE)
