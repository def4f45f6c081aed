"""Which questions may stand in a cell of a plan, and which never stand beside each other."""

from collections.abc import Collection, Iterable

from generator.bank.models import Blueprint, Cell
from generator.questions import Askable

EXAM_POOLS = ("exam", "both")


def fits(cell: Cell, askable: Askable) -> bool:
    """Say whether a question may fill a cell; a study item never does."""
    return (
        askable.use in EXAM_POOLS
        and (cell.module is None or askable.module == cell.module)
        and (cell.objective is None or askable.objective == cell.objective)
        and (not cell.kinds or askable.kind in cell.kinds)
        and (not cell.levels or askable.level in cell.levels)
        and (cell.critical is None or askable.hazard == cell.critical)
    )


def in_places(
    places: Collection[str], blueprint: Blueprint, known: Iterable[Askable]
) -> tuple[Askable, ...]:
    """Return what asks no rule, or one of a place where the shop works or that the plan names."""
    allowed = {"", *places, *blueprint.places}
    return tuple(askable for askable in known if askable.place in allowed)


def eligible(cell: Cell, known: Iterable[Askable]) -> tuple[Askable, ...]:
    """Return what may fill a cell."""
    return tuple(askable for askable in known if fits(cell, askable))


def sets_apart(
    blueprint: Blueprint, known: Iterable[Askable], giveaways: Iterable[tuple[str, str]] = ()
) -> tuple[tuple[str, ...], ...]:
    """Return the sets of names of which a paper takes one at most: by plan, by item, by giveaway.

    giveaways  each two questions or records of which one tells the answer of the other
    The questions of one record and its twins are kept apart by their group already.
    """
    known = tuple(known)
    names = {askable.name for askable in known}
    behind: dict[str, list[str]] = {}
    for askable in known:
        behind.setdefault(askable.record, []).append(askable.name)
    by_item = ((askable.name, other) for askable in known for other in askable.not_with)
    rows = (
        dict.fromkeys(n for name in row for n in (name, *behind.get(name, ())) if n in names)
        for row in (*blueprint.not_together, *by_item, *giveaways)
    )
    return tuple(tuple(row) for row in rows if len(row) > 1)
