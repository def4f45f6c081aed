"""No accepted order puts the hazard before the guard: a proof over the pairs, with a witness."""

from collections.abc import Iterator, Mapping
from typing import Any

from generator.bank.bank import Bank, Entry
from generator.bank.checks.one_record.ordering import ordered_entries
from generator.bank.checks.rule import Rule
from generator.bank.orders import (
    StepHazards,
    Unguarded,
    has_cycle,
    step_hazards,
    unguarded,
    without,
)
from generator.diagnostics import Problem, did_you_mean

KINDS = ("meets", "guards", "ends")


def unknown_hazard(bank: Bank) -> Iterator[Problem]:
    """Return every hazard that hazards.yml does not have."""
    if bank.was_unread("hazards", "any"):
        return
    for entry, path, name in _named(bank):
        if name not in bank.hazards and not bank.was_unread("hazards", name):
            message = f"hazards.yml has no '{name}'"
            hint = did_you_mean(name, bank.hazards)
            yield entry.problem("error", "unknown-hazard", message, *path, hint=hint)


def _named(bank: Bank) -> Iterator[tuple[Entry[Any], tuple[str | int, ...], str]]:
    for item in bank.items.values():
        for place, name in enumerate(item.record.meets):
            yield item, ("meets", place), name
        if item.record.critical:
            yield item, ("critical", "hazard"), item.record.critical.hazard
    for entry in ordered_entries(bank):
        for place, name in enumerate(entry.record.wears):
            yield entry, ("wears", place), name
        for place, step in enumerate(entry.record.steps):
            for kind in KINDS:
                for inner, name in enumerate(getattr(step, kind)):
                    yield entry, ("steps", place, kind, inner), name
    for procedure in bank.procedures.values():
        for place, pair in enumerate(procedure.record.pairs):
            if pair.critical:
                yield procedure, ("pairs", place, "critical", "hazard"), pair.critical.hazard
    for plan in bank.blueprints.values():
        for place, cell in enumerate(plan.record.cells):
            if cell.critical:
                yield plan, ("cells", place, "critical"), cell.critical


def hazard_unguarded(bank: Bank) -> Iterator[Problem]:
    """Return steps that some accepted order brings unguarded, with the shortest such order."""
    for entry in ordered_entries(bank):
        pairs = [(p.first, p.then) for p in entry.record.pairs if p.pair_class != "habit"]
        if has_cycle(pairs):
            continue
        work = step_hazards(entry.record.steps, entry.record.wears)
        told = set()
        for found in unguarded(work, pairs):
            told.add((found.step, found.hazard))
            yield _unguarded(bank, entry, work, found, "")
        optional = {s.step for s in entry.record.steps if getattr(s, "optional", False)}
        kept = work.only(set(work.steps) - optional)
        for found in unguarded(kept, without(pairs, optional)):
            if (found.step, found.hazard) not in told:
                yield _unguarded(bank, entry, work, found, " once the optional steps are left out")


def _unguarded(
    bank: Bank, entry: Entry[Any], work: StepHazards, found: Unguarded, when: str
) -> Problem:
    place = list(work.steps).index(found.step)
    hazard = bank.hazards.get(found.hazard)
    title = hazard.record.title.lower() if hazard else found.hazard
    why = f"after '{found.ended}' took the guard off" if found.ended else "with no guard before it"
    order = " > ".join(found.witness)
    message = f"'{found.step}' meets {title} {why}{when}; this order is accepted: {order}"
    inner = work.steps[found.step].meets.index(found.hazard)
    return entry.problem(
        "error", "hazard-unguarded", message, "steps", place, "meets", inner, hint=_hint(found)
    )


def _hint(found: Unguarded) -> str:
    if found.ended:
        return (
            f"add a pair that puts '{found.step}' before '{found.ended}', or put a guard on again "
            "between them"
        )
    return (
        f"add a step that guards {found.hazard}, and a pair of class danger that puts it before "
        f"'{found.step}'"
    )


def self_guarded(bank: Bank) -> Iterator[Problem]:
    """Return steps that guard against what they meet themselves."""
    for entry in ordered_entries(bank):
        for place, step in enumerate(entry.record.steps):
            for name in sorted(set(step.meets) & set(step.guards)):
                message = f"'{step.step}' meets {name} and is its guard as well"
                hint = "make two steps of it: first the guard, then the work"
                yield entry.problem("error", "self-guarded", message, "steps", place, hint=hint)


def hazards_unsaid(bank: Bank) -> Iterator[Problem]:
    """Return work that names no hazard and does not say why it can hurt nobody."""
    if not bank.hazards:
        return
    for entry in ordered_entries(bank):
        record = entry.record
        meets = any(step.meets for step in record.steps)
        if not meets and not record.harmless:
            message = "no step meets a hazard, and nothing says why"
            hint = "add 'meets' to the steps, or 'harmless:' with the reason"
            yield entry.problem("error", "hazards-unsaid", message, "steps", hint=hint)
        if meets and record.harmless:
            message = "this is called harmless, and a step meets a hazard"
            yield entry.problem("error", "hazards-unsaid", message, "harmless")


def danger_without_hazard(bank: Bank) -> Iterator[Problem]:
    """Return pairs of class danger of which neither step has to do with a hazard."""
    if not bank.hazards:
        return
    for entry in ordered_entries(bank):
        steps: Mapping[str, Any] = {step.step: step for step in entry.record.steps}
        for place, pair in enumerate(entry.record.pairs):
            both = [steps[name] for name in (pair.first, pair.then) if name in steps]
            said = any(getattr(step, kind) for step in both for kind in KINDS)
            if pair.pair_class == "danger" and not said:
                message = f"'{pair.first}' before '{pair.then}' is a danger, and no hazard is named"
                hint = "name what a step meets, guards or ends, or make the pair 'ruins'"
                yield entry.problem(
                    "error", "danger-without-hazard", message, "pairs", place, hint=hint
                )


RULES = (
    Rule(
        "unknown-hazard",
        "error",
        "Hazards are named in hazards.yml, with their guards, first aid and caution.",
        "meets: [isocyanat_mist]",
        "meets: [isocyanate_mist]",
        unknown_hazard,
    ),
    Rule(
        "hazard-unguarded",
        "error",
        "In every order that is accepted, each step that meets a hazard comes after a guard and "
        "before that guard is taken off. The order shown in the message would be marked right.",
        "steps:\n  - {step: mix, action: Mix, meets: [isocyanate_skin]}\n"
        "  - {step: gloves, action: Put gloves on, guards: [isocyanate_skin]}",
        "steps:\n  - {step: gloves, action: Put gloves on, guards: [isocyanate_skin]}\n"
        "  - {step: mix, action: Mix, meets: [isocyanate_skin]}\n"
        "pairs:\n  - {first: gloves, then: mix, class: danger, reason: ...}",
        hazard_unguarded,
    ),
    Rule(
        "self-guarded",
        "error",
        "A guard that goes on in the same step as the work may go on too late.",
        "- {step: mix, action: Put gloves on and mix, meets: [peroxide], guards: [peroxide]}",
        "- {step: gloves, action: Put gloves on, guards: [peroxide]}\n"
        "- {step: mix, action: Mix, meets: [peroxide]}",
        self_guarded,
    ),
    Rule(
        "hazards-unsaid",
        "error",
        "Every piece of work says what can hurt, or why nothing can.",
        "steps without 'meets'",
        "harmless: The gauge only touches a cured panel.",
        hazards_unsaid,
    ),
    Rule(
        "danger-without-hazard",
        "error",
        "A pair is a danger because of a hazard, and the hazard is named at one of its steps.",
        "- {first: mask, then: spray, class: danger, ...} and no step says meets, guards or ends",
        "- {step: spray, action: Spray, meets: [isocyanate_mist]}",
        danger_without_hazard,
    ),
)
