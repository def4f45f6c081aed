"""Fills the cells of a blueprint: exact counts, least used first, objectives and kinds spread."""

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from fractions import Fraction

from generator.bank import Bank, Entry
from generator.bank.records import Blueprint, Cell
from generator.diagnostics import Problem
from generator.questions import Askable, Stream, askables

EXAM_POOLS = ("exam", "both")
# the share of a paper that each kind should take, where its cell leaves the kind open
KIND_SHARES = {
    "choice": Fraction(50, 100),
    "numeric": Fraction(20, 100),
    "multiple_response": Fraction(10, 100),
    "order": Fraction(10, 100),
    "match": Fraction(6, 100),
    "written": Fraction(4, 100),
}


@dataclass(slots=True)
class Uses:
    """How often each question was used over the forms built so far."""

    over_forms: Counter[str] = field(default_factory=Counter)


def eligible(cell: Cell, known: Iterable[Askable]) -> tuple[Askable, ...]:
    """Give what may fill a cell; study items never do."""
    return tuple(
        askable
        for askable in known
        if askable.pool in EXAM_POOLS
        and (cell.module is None or askable.module == cell.module)
        and (cell.objective is None or askable.objective == cell.objective)
        and (not cell.kinds or askable.kind in cell.kinds)
    )


def shortages(entry: Entry[Blueprint], bank: Bank) -> tuple[Problem, ...]:
    """Give every cell that the bank cannot fill, and by how many records it is short."""
    known = askables(bank)
    problems = []
    for place, cell in enumerate(entry.record.cells):
        problems += _naming(entry, place, cell, bank)
        records = {askable.record for askable in eligible(cell, known)}
        if len(records) < cell.count:
            message = (
                f"this cell asks for {cell.count} and the bank has {len(records)}: "
                f"{cell.count - len(records)} short"
            )
            path = ("cells", place, "count")
            hint = "study items do not count; write more items for exams, or ask for fewer"
            problems.append(
                entry.problem("error", "blueprint-cannot-be-filled", message, *path, hint=hint)
            )
    return tuple(problems)


def _naming(entry: Entry[Blueprint], place: int, cell: Cell, bank: Bank) -> list[Problem]:
    modules = {module.module for module in bank.modules}
    if cell.module and cell.module not in modules:
        message = f"the outline has no module '{cell.module}'"
        return [entry.problem("error", "unknown-objective", message, "cells", place, "module")]
    if cell.objective and cell.objective not in bank.objectives:
        message = f"the outline has no objective '{cell.objective}'"
        return [entry.problem("error", "unknown-objective", message, "cells", place, "objective")]
    return []


def select(
    blueprint: Blueprint, bank: Bank, known: Sequence[Askable], uses: Uses, stream: Stream
) -> tuple[Askable, ...]:
    """Give the questions of one form, in the order of the modules."""
    chosen: list[Askable] = []
    for cell in _tightest_first(blueprint.cells, known):
        pile = stream.shuffled(eligible(cell, known))
        for _ in range(cell.count):
            free = _free(pile, chosen)
            if not free:
                raise ValueError("a cell ran out of questions; check the blueprint first")
            chosen.append(min(free, key=lambda a: _burden(a, chosen, uses)))
    uses.over_forms.update(askable.name for askable in chosen)
    order = {module.module: place for place, module in enumerate(bank.modules)}
    return tuple(sorted(chosen, key=lambda askable: order[askable.module]))


def _tightest_first(cells: Sequence[Cell], known: Sequence[Askable]) -> list[Cell]:
    return sorted(cells, key=lambda cell: len(eligible(cell, known)) - cell.count)


def _free(pile: Sequence[Askable], chosen: Sequence[Askable]) -> list[Askable]:
    taken = {askable.record for askable in chosen}
    return [askable for askable in pile if askable.record not in taken]


def _burden(askable: Askable, chosen: Sequence[Askable], uses: Uses) -> tuple[Fraction, ...]:
    """Weigh a candidate: used before, objective met, derived questions piled up, kind met."""
    derived = sum(c.is_derived for c in chosen)
    same_kind = sum(c.kind == askable.kind for c in chosen) + 1
    return (
        Fraction(uses.over_forms[askable.name]),
        Fraction(sum(c.objective == askable.objective for c in chosen)),
        Fraction(askable.is_derived and 2 * derived >= len(chosen)),
        same_kind / KIND_SHARES[askable.kind],
    )
