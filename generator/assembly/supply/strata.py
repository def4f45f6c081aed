"""Cells that leave the kind open, parted so that every form gets the same mix of kinds."""

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from generator.assembly.supply.eligibility import fits
from generator.assembly.supply.matching import unmatched
from generator.assembly.supply.plan import apportioned, cell_counts
from generator.bank.models import Blueprint
from generator.questions import Askable

# choice and typed numbers on their own, as they differ most in time; the others are few
GROUPS = (("choice",), ("numeric",), ("multiple_response", "order", "match", "written"))
# the percent of a paper that a group takes at most, while others can fill it
MOST_PERCENT = (50, 20, 30)


@dataclass(frozen=True, slots=True)
class Stratum:
    """A part of a cell that every form fills with the same number of questions.

    cell   place of the cell in the plan
    kinds  what it takes; empty for what the cell takes
    """

    cell: int
    kinds: tuple[str, ...]
    count: int

    def takes(self, blueprint: Blueprint, askable: Askable) -> bool:
        """Say whether a question may stand here."""
        fitting = fits(blueprint.cells[self.cell], askable)
        return fitting and (not self.kinds or askable.kind in self.kinds)


def strands_of(
    blueprint: Blueprint, known: Sequence[Askable], whole_cells: Collection[int] = ()
) -> tuple[Stratum, ...]:
    """Part the cells of a plan.

    whole_cells  those that stay whole

    A group of kinds takes its share of the cell's records, MOST_PERCENT at most, so that few items
    of a rare kind are not on every paper. Cells that cannot be filled when parted stay whole.
    """
    whole = [Stratum(cell, (), count) for cell, count in enumerate(cell_counts(blueprint))]
    parted = [
        (strand,) if strand.cell in whole_cells else tuple(_parted(strand, blueprint, known))
        for strand in whole
    ]
    while True:
        strands = [strand for parts in parted for strand in parts]
        stuck = {strands[place].cell for place in _unfilled(strands, blueprint, known)}
        again = [cell for cell in stuck if len(parted[cell]) > 1]
        if not stuck:
            return tuple(strands)
        if not again:
            return tuple(whole)
        for cell in again:
            parted[cell] = (whole[cell],)


def _parted(strand: Stratum, blueprint: Blueprint, known: Sequence[Askable]) -> Iterable[Stratum]:
    pile = [askable for askable in known if strand.takes(blueprint, askable)]
    records = [len({a.group for a in pile if a.kind in group}) for group in GROUPS]
    shares = [
        Fraction(min(most * sum(records), 100 * supply), 100)
        for most, supply in zip(MOST_PERCENT, records, strict=True)
    ]
    wanted = set(blueprint.must_include)
    fixed = [sum(a.name in wanted and a.kind in group for a in pile) for group in GROUPS]
    free = strand.count - sum(fixed)
    if free < 0 or not any(shares):
        return (strand,)
    counts = [f + part for f, part in zip(fixed, apportioned(shares, free), strict=True)]
    return (
        Stratum(strand.cell, group, count)
        for group, count in zip(GROUPS, counts, strict=True)
        if count
    )


def _unfilled(
    strands: Sequence[Stratum], blueprint: Blueprint, known: Sequence[Askable]
) -> set[int]:
    """Return the strands that cannot be filled beside the others."""
    records = [
        tuple(dict.fromkeys(a.group for a in known if strand.takes(blueprint, a)))
        for strand in strands
    ]
    seats = [place for place, strand in enumerate(strands) for _ in range(strand.count)]
    return {seats[seat] for seat in unmatched([records[place] for place in seats])}
