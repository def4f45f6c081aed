"""A part of a bank, for a command that asks one thing: read, judged, and the rest only counted."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TypeVar

from generator.bank.bank import Bank, Entry
from generator.bank.checks import check_bank
from generator.bank.models import Blueprint
from generator.bank.reading import load_bank
from generator.diagnostics import Problem, sorted_problems

E = TypeVar("E", bound=Entry[object])
# on what every question may rest
FRAME = ("bank", "outline", "sources", "hazards", "places")
# a question on one of these takes wrong options from the others
_TOGETHER = ("procedures", "faults")
_GROUPS = ("procedures", "faults", "tables")


@dataclass(frozen=True, slots=True)
class Part:
    """A part of a bank with what is wrong.

    bank       whole records of the part, over the frame; None where the frame cannot be read
    errors     what is wrong with the part itself, with which nobody should work
    elsewhere  how many errors were met outside of it
    """

    bank: Bank | None
    errors: tuple[Problem, ...]
    elsewhere: int


def part_for_question(folder: Path, name: str) -> Part:
    """Read and judge what one question needs.

    folder  the question bank
    name    of the question, such as filler/mix/streaks or faults/runs/cause
    """
    group, _, rest = name.partition("/")
    record = rest.partition("/")[0]
    if group in _GROUPS:
        whole = group if group in _TOGETHER else f"{group}/{record}"
    else:
        whole = f"items/{name.rpartition('/')[0]}"

    def wanted(file: str) -> bool:
        return file == whole or file.startswith(f"{whole}/")

    bank, problems = load_bank(folder, wanted=wanted)
    if bank is None:
        return Part(None, _errors(problems), 0)
    if group in _GROUPS:
        kept = _with(bank, **{group: _only(getattr(bank, group), (record,)), "items": {}})
        own = {_shown(folder, f"{group}/{record}")}
        found = sorted_problems((*problems, *check_bank(kept)))
    else:
        kept = _with(bank, items=_only(bank.items, (name,)))
        found = sorted_problems((*problems, *check_bank(kept)))
        found = tuple(p for p in found if _is_of_item(bank, name, p))
        own = {_shown(folder, whole)}
    others = sum(p not in found for p in _errors(problems))
    return _part(bank, folder, found, own, others)


def _is_of_item(bank: Bank, name: str, problem: Problem) -> bool:
    """Return whether a problem is not one of another item in the file of an item."""
    entry = bank.items.get(name)
    if entry is None or problem.place.path != entry.start.path:
        return True
    starts = sorted(e.start.line for e in bank.items.values() if e.start.path == entry.start.path)
    ends = [line for line in starts if line > entry.start.line]
    return entry.start.line <= problem.place.line < (ends[0] if ends else float("inf"))


def part_for_plan(folder: Path, plan: str) -> Part:
    """Read a bank and judge what the papers of a plan may ask; the plan must be there."""
    bank, problems = load_bank(folder)
    entry = bank.blueprints.get(plan) if bank else None
    if bank is None:
        return Part(None, _errors(problems), 0)
    names = {f"blueprints/{plan}", "giveaways"}
    kept = bank
    if entry is not None:
        names |= set(_asked_by(bank, entry.record))
        kept = _with(
            bank,
            items={n: e for n, e in bank.items.items() if f"items/{n.rpartition('/')[0]}" in names},
            blueprints={plan: entry},
            giveaways=None,
            **{g: _only(getattr(bank, g), _stems(names, g)) for g in _GROUPS},
        )
    found = sorted_problems((*problems, *check_bank(kept)))
    return _part(bank, folder, found, {_shown(folder, name) for name in names}, 0)


def _asked_by(bank: Bank, plan: Blueprint) -> Iterable[str]:
    """Return the files from which a plan may take questions, and those beside which they stand."""
    everything = any(not (cell.module or cell.objective) for cell in plan.cells)
    asked = {cell.objective or cell.module or "" for cell in plan.cells}
    asked |= {name.rpartition("/")[0] for name in plan.must_include}

    def is_asked(objective: str) -> bool:
        return everything or objective in asked or objective.partition("/")[0] in asked

    files = {name.rpartition("/")[0] for name in bank.items}
    files |= {name.removeprefix("items/").removesuffix("/*") for name in bank.unread}
    yield from (f"items/{file}" for file in files if is_asked(file))
    for group in _GROUPS:
        entries: Mapping[str, Entry[object]] = getattr(bank, group)
        named = {name for name in bank.unread if name.startswith(f"{group}/")}
        named |= {
            f"{group}/{name}"
            for name, entry in entries.items()
            if is_asked(str(getattr(entry.record, "objective", ""))) or group in asked
        }
        if named and group in _TOGETHER:
            named |= {f"{group}/{name}" for name in entries}
        yield from named


def _stems(names: Iterable[str], group: str) -> tuple[str, ...]:
    return tuple(name.partition("/")[2] for name in names if name.startswith(f"{group}/"))


def _only(entries: Mapping[str, E], names: Sequence[str]) -> dict[str, E]:
    return {name: entries[name] for name in names if name in entries}


def _with(bank: Bank, **kept: object) -> Bank:
    """Return a bank with fewer records; what was left out counts as unread, not as missing."""
    smaller = replace(bank, **kept)  # type: ignore[arg-type]
    left = {"lessons/*"}
    for group in ("items", *_GROUPS, "blueprints"):
        left |= {f"{group}/{n}" for n in getattr(bank, group).keys() - getattr(smaller, group)}
    return replace(smaller, unread=bank.unread | left)


def _part(
    bank: Bank, folder: Path, found: Iterable[Problem], own: Iterable[str], elsewhere: int
) -> Part:
    files = {*own, *(_shown(folder, name) for name in FRAME)}
    errors = [p for p in found if p.severity == "error"]
    mine = tuple(p for p in errors if p.place.path in files)
    return Part(bank, mine, elsewhere + len(errors) - len(mine))


def _shown(folder: Path, name: str) -> str:
    return f"{folder.name}/{name}.yml"


def _errors(problems: Iterable[Problem]) -> tuple[Problem, ...]:
    return sorted_problems(p for p in problems if p.severity == "error")
