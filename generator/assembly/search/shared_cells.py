"""Which cells of a plan draw on the same records, so that one can rob another."""

from collections.abc import Sequence
from dataclasses import dataclass

from generator.assembly.search.candidate_pool import Pool


@dataclass(frozen=True, slots=True)
class SharedCells:
    """What each cell can draw on.

    records  the records of each cell
    tied     for each cell the cells that share records with it, directly or through others
    """

    records: tuple[tuple[str, ...], ...]
    tied: tuple[tuple[int, ...], ...]


def shared_cells(pool: Pool) -> SharedCells:
    """Return what the cells of a pool share."""
    records = tuple(
        tuple(dict.fromkeys(pool.candidates[place].record for place in cell)) for cell in pool.cells
    )
    sets = [set(names) for names in records]
    return SharedCells(records, tuple(_tied(cell, sets) for cell in range(len(sets))))


def _tied(cell: int, records: Sequence[set[str]]) -> tuple[int, ...]:
    found, waiting = {cell}, [cell]
    while waiting:
        one = waiting.pop()
        near = {c for c in range(len(records)) if c not in found and records[c] & records[one]}
        found |= near
        waiting += sorted(near)
    return tuple(sorted(found))
