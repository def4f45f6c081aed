"""Numeric items: units before numbers, every corner sound, no slip inside the accepted band."""

from collections.abc import Iterator
from typing import cast

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.bank.models import NumericItem
from generator.bank.numbers import (
    PreparedItem,
    Refusal,
    Solution,
    corner_numbers,
    prepare,
    set_at,
    set_count,
    solve,
    standings,
)
from generator.diagnostics import Problem
from generator.formulas import CallNode
from generator.refinishing import CATALOGUE

MOST_SETS = 300
# beyond it going through the sets takes longer than anybody waits, and no class needs as many
MOST_COMBINED = 100_000


def numeric_entries(bank: Bank) -> Iterator[Entry[NumericItem]]:
    """Return the numeric items of the bank."""
    for entry in bank.items.values():
        if isinstance(entry.record, NumericItem):
            yield cast("Entry[NumericItem]", entry)


def formulas_and_units(bank: Bank) -> Iterator[Problem]:
    """Return what is wrong with grids, units and formulas."""
    for entry in numeric_entries(bank):
        yield from prepare(entry, CATALOGUE)[1]


def refused_sets(bank: Bank) -> Iterator[Problem]:
    """Return items whose allowed values include sets that must be refused."""
    for entry in numeric_entries(bank):
        item, _ = prepare(entry, CATALOGUE)
        if item is not None and set_count(item) <= MOST_COMBINED:
            yield from _refusals(entry, item)


def _refusals(entry: Entry[NumericItem], item: PreparedItem) -> Iterator[Problem]:
    seen: set[tuple[str, int | None]] = set()
    accepted = 0
    numbers = looked_at(item)
    for number, standing in zip(numbers, standings(item, numbers, CATALOGUE), strict=True):
        if standing != "look":
            accepted += standing == "accepted"
            continue
        values = set_at(item, number)
        outcome = solve(item, values, CATALOGUE)
        if isinstance(outcome, Solution):
            accepted += 1
        elif outcome.rule != "not-required" and (outcome.rule, outcome.slip) not in seen:
            seen.add((outcome.rule, outcome.slip))
            yield _located(entry, item, values, outcome)
    if accepted == 0 and not seen:
        message = "no set of values meets the item's own requirements"
        yield entry.problem("error", "nothing-to-draw", message, "require")


def looked_at(item: PreparedItem) -> tuple[int, ...]:
    """Return the numbers of the sets that are solved: the corners, then a spread of all sets."""
    count = set_count(item)
    stride = max(1, count // MOST_SETS)
    return tuple(dict.fromkeys((*corner_numbers(item), *range(0, count, stride))))


def _located(
    entry: Entry[NumericItem], item: PreparedItem, values: object, refusal: Refusal
) -> Problem:
    drawn = ", ".join(_drawn(entry, item, values))
    message = f"with {drawn}: {refusal.message}"
    path: tuple[str | int, ...] = ("answer", "formula")
    if refusal.slip is not None:
        path = ("slips", refusal.slip, "formula")
    hint = "leave such values out with a 'require' line, or tighten the tolerance"
    return entry.problem("error", refusal.rule, message, *path, hint=hint)


def _drawn(entry: Entry[NumericItem], item: PreparedItem, values: object) -> Iterator[str]:
    assert isinstance(values, dict)
    for name, value in values.items():
        place = item.grids[name].index(value)
        yield f"{name} {entry.record.given[name].values[place]}"


def too_many_sets(bank: Bank) -> Iterator[Problem]:
    """Return items whose allowed values combine into more sets than can be looked at."""
    for entry in numeric_entries(bank):
        item, _ = prepare(entry, CATALOGUE)
        if item is not None and set_count(item) > MOST_COMBINED:
            message = f"these values make {set_count(item):,} sets; {MOST_COMBINED:,} is the most"
            hint = "allow fewer values, or take wider steps"
            yield entry.problem("error", "too-many-sets", message, "given", hint=hint)


def one_draw_only(bank: Bank) -> Iterator[Problem]:
    """Return exam items with one set of values, so that a whole class has the same key."""
    for entry in numeric_entries(bank):
        item, _ = prepare(entry, CATALOGUE)
        if item is not None and entry.record.use != "study" and set_count(item) == 1:
            message = "only one set of values can be drawn, so neighbours have the same key"
            hint = "allow more values, or keep the item for study"
            yield entry.problem("warning", "one-draw-only", message, "given", hint=hint)


def rounding_direction(bank: Bank) -> Iterator[Problem]:
    """Return answers that round against the direction of their relation."""
    for entry in numeric_entries(bank):
        item, _ = prepare(entry, CATALOGUE)
        root = item.answer.root if item else None
        if item is None or not isinstance(root, CallNode) or root.relation not in CATALOGUE:
            continue
        relation = CATALOGUE[root.relation]
        result = root.result or next(iter(relation.results))
        wanted = relation.facts.rounding.get(result, "half")
        limit = relation.facts.limit.get(result, "none")
        if item.direction != wanted:
            message = f"{root.relation} gives a result that rounds {wanted}, not {item.direction}"
            yield entry.problem(
                "error", "rounding-direction", message, "answer", "rounding",
                hint=f"write 'rounding: {wanted}'",
            )  # fmt: skip
        if item.limit != limit:
            message = f"{root.relation} gives a {limit}, and only its safe side may pass"
            yield entry.problem(
                "error", "rounding-direction", message, "answer", "limit",
                hint=f"write 'limit: {limit}'",
            )  # fmt: skip


RULES = (
    Rule(
        "formula-units",
        "error",
        "Units are checked before any number exists, so a wrong formula cannot give a likely key.",
        "formula: wet_film(dry_film, dry_film)\nunit: um",
        "formula: wet_film(dry_film, volume_solids)\nunit: um",
        formulas_and_units,
    ),
    Rule(
        "slip-in-band",
        "error",
        "A learner who took a known wrong way must never be marked right. Values where the "
        "wrong way meets the key (half solids, 2:1:1, an exact multiple) are refused.",
        "volume_solids: {unit: percent, values: [50]}\n"
        "slips:\n  - formula: wet * (1 - volume_solids)",
        "require:\n  - volume_solids != 50 percent",
        refused_sets,
    ),
    Rule(
        "too-many-sets",
        "error",
        "Every set that can be drawn is open to a check; a few hundred are plenty for any class.",
        "base: {unit: mL, values: 100 to 499 step 1}\nparts: ... (400 values)\nheat: ... (400)",
        "base: {unit: mL, values: 100 to 500 step 50}",
        too_many_sets,
    ),
    Rule(
        "one-draw-only",
        "warning",
        "In an exam neighbours get different numbers. An item that can draw one set has one key.",
        "use: exam\ngiven: {dry: {unit: um, values: [60]}}",
        "use: exam\ngiven: {dry: {unit: um, values: [50, 60, 70]}}",
        one_draw_only,
    ),
    Rule(
        "rounding-direction",
        "error",
        "Coats and litres round up, maxima round down: rounding half up can be unsafe or unlawful.",
        "formula: highest_speed(diameter, rim_limit)\nrounding: half",
        "formula: highest_speed(diameter, rim_limit)\nrounding: down\nlimit: maximum",
        rounding_direction,
    ),
)
