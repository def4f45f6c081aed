"""What a plan asks for that the bank cannot give, at its place and with how many are short."""

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence

from generator.assembly.supply.eligibility import eligible, fits, in_places, sets_apart
from generator.assembly.supply.matching import unmatched
from generator.assembly.supply.plan import cell_counts
from generator.assembly.supply.standing_together import maximum_independent_set
from generator.bank import Bank, Entry
from generator.bank.models import Blueprint
from generator.diagnostics import Problem
from generator.questions import MINUTES, Askable, askables
from generator.questions.giveaways import kept_apart

RULE = "blueprint-cannot-be-filled"
MORE_ITEMS = "study items do not count; write more items for exams, or ask for fewer"


def shortages(
    entry: Entry[Blueprint], bank: Bank, known: Sequence[Askable] | None = None
) -> tuple[Problem, ...]:
    """Return every part of a plan that the bank cannot fill, and by how many questions it is short.

    known  everything the bank can ask, where the caller has it already
    """
    everything = askables(bank) if known is None else known
    known = in_places(bank.sheet.places, entry.record, everything)
    names = tuple(_unknown_names(entry, bank))
    if names:
        return names
    piles = [eligible(cell, known) for cell in entry.record.cells]
    alone = (
        *_short_alone(entry, piles, kept_apart(bank)),
        *_must_include(entry, known),
        *_time(entry, piles),
    )
    return alone or tuple(_short_together(entry, piles))


def _unknown_names(entry: Entry[Blueprint], bank: Bank) -> Iterator[Problem]:
    modules = {module.module for module in bank.modules}
    for place, cell in enumerate(entry.record.cells):
        for what, name, known in (
            ("module", cell.module, modules),
            ("objective", cell.objective, set(bank.objectives)),
        ):
            if name and name not in known:
                message = f"the outline has no {what} '{name}'"
                path = ("cells", place, what)
                yield entry.problem("error", "unknown-objective", message, *path)


def _short_alone(
    entry: Entry[Blueprint],
    piles: Sequence[Sequence[Askable]],
    giveaways: Sequence[tuple[str, str]],
) -> Iterator[Problem]:
    for place, (count, pile) in enumerate(zip(cell_counts(entry.record), piles, strict=True)):
        records = {askable.group for askable in pile}
        if len(records) < count:
            yield _short(entry, place, count, len(records), "the bank has")
            continue
        apart = _apart(entry.record, pile, giveaways)
        together = maximum_independent_set((askable.name for askable in pile), apart, count)
        if together < count:
            where = "of its questions no more can share a paper than"
            yield _short(entry, place, count, together, where)


def _apart(
    plan: Blueprint, pile: Sequence[Askable], giveaways: Sequence[tuple[str, str]]
) -> Mapping[str, frozenset[str]]:
    """Return for each question of a cell those that cannot stand beside it."""
    groups: dict[str, set[str]] = {}
    for askable in pile:
        groups.setdefault(askable.group, set()).add(askable.name)
    sets = list(groups.values())
    sets += [set(names) for names in sets_apart(plan, pile, giveaways)]
    parted: dict[str, set[str]] = {askable.name: set() for askable in pile}
    for one in sets:
        for name in one:
            parted[name] |= one
    return {name: frozenset(others - {name}) for name, others in parted.items()}


def _short(entry: Entry[Blueprint], place: int, count: int, had: int, where: str) -> Problem:
    message = f"this cell asks for {count} and {where} {had}: {count - had} short"
    what = "count" if entry.record.cells[place].share is None else "share"
    return entry.problem("error", RULE, message, "cells", place, what, hint=MORE_ITEMS)


def _short_together(
    entry: Entry[Blueprint], piles: Sequence[Sequence[Askable]]
) -> Iterator[Problem]:
    """Return cells that can be filled alone, but not beside cells that ask the same records."""
    counts = cell_counts(entry.record)
    cells = [place for place, count in enumerate(counts) for _ in range(count)]
    records = [tuple(dict.fromkeys(askable.group for askable in pile)) for pile in piles]
    missing = Counter(cells[seat] for seat in unmatched([records[place] for place in cells]))
    for place, short in missing.items():
        yield _short(entry, place, counts[place], counts[place] - short, "the other cells leave")


def _must_include(entry: Entry[Blueprint], known: Iterable[Askable]) -> Iterator[Problem]:
    """Return questions that every paper must hold and for which no cell has a seat."""
    plan = entry.record
    by_name = {askable.name: askable for askable in known}
    left = list(cell_counts(plan))
    for place, name in enumerate(plan.must_include):
        asked = by_name.get(name)
        fitting = [p for p, c in enumerate(plan.cells) if asked and left[p] and fits(c, asked)]
        if not fitting:
            message = f"no cell has a seat for '{name}': 1 short"
            yield entry.problem("error", RULE, message, "must_include", place)
            continue
        left[min(fitting, key=lambda p: left[p])] -= 1


def _time(entry: Entry[Blueprint], piles: Sequence[Sequence[Askable]]) -> Iterator[Problem]:
    """Return a plan whose time is too short even for the quickest questions."""
    plan = entry.record
    quickest = [
        sorted(MINUTES[askable.kind] for askable in pile)[:count]
        for pile, count in zip(piles, cell_counts(plan), strict=True)
    ]
    needed = sum(minutes for cell in quickest for minutes in cell)
    if needed > plan.minutes:
        message = f"even the quickest questions take {float(needed):g} minutes"
        message += f": {float(needed - plan.minutes):g} short"
        yield entry.problem("error", RULE, message, "minutes")
