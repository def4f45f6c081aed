"""Names that point to other records must lead somewhere."""

from collections.abc import Iterable, Iterator
from typing import Any

from generator.bank.bank import Bank, Entry, objective_of
from generator.bank.checks.rule import Rule
from generator.diagnostics import Problem, did_you_mean

_SPECIAL = ("common_practice", "from_memory")


def unknown_source(bank: Bank) -> Iterator[Problem]:
    """Return every source tag that names no source."""
    groups: tuple[Iterable[Entry[Any]], ...] = (
        bank.items.values(),
        bank.procedures.values(),
        bank.faults.values(),
        bank.tables.values(),
        bank.beliefs.values(),
    )
    for entry in (entry for group in groups for entry in group):
        for place, tag in enumerate(entry.record.source):
            known = tag.key in bank.sources or bank.was_unread("sources", tag.key)
            if tag.key not in _SPECIAL and not known:
                hint = did_you_mean(tag.key, [*bank.sources, *_SPECIAL])
                message = f"sources.yml has no '{tag.key}'"
                path = ("source", place) if _is_list(entry) else ("source",)
                yield entry.problem("error", "unknown-source", message, *path, hint=hint)


def _is_list(entry: Entry[Any]) -> bool:
    return entry.place("source", 0) != entry.place("source") or len(entry.record.source) > 1


def unknown_objective(bank: Bank) -> Iterator[Problem]:
    """Return every record and item file that serves no objective of the outline."""
    known = bank.objectives
    records: tuple[Entry[Any], ...] = (
        *bank.procedures.values(),
        *bank.faults.values(),
        *bank.tables.values(),
    )
    for entry in records:
        name = entry.record.objective
        if name not in known:
            message = f"the outline has no objective '{name}'"
            hint = did_you_mean(name, known)
            yield entry.problem("error", "unknown-objective", message, "objective", hint=hint)
    for item_name, item in bank.items.items():
        objective = objective_of(item_name)
        if objective not in known:
            message = f"the outline has no objective '{objective}', after which this file is named"
            yield item.problem(
                "error", "unknown-objective", message, hint=did_you_mean(objective, known)
            )


def unknown_step(bank: Bank) -> Iterator[Problem]:
    """Return every order pair that names a step which is not there."""
    ordered: list[Entry[Any]] = [*bank.procedures.values()]
    ordered += [e for e in bank.items.values() if getattr(e.record, "kind", "") == "order"]
    for entry in ordered:
        steps = [step.step for step in entry.record.steps]
        for place, pair in enumerate(entry.record.pairs):
            for side, name in (("first", pair.first), ("then", pair.then)):
                if name not in steps:
                    message = f"there is no step '{name}' here"
                    hint = did_you_mean(name, steps)
                    path = ("pairs", place, side)
                    yield entry.problem("error", "unknown-step", message, *path, hint=hint)


def unknown_fault(bank: Bank) -> Iterator[Problem]:
    """Return every look-alike that names no fault record."""
    for name, entry in bank.faults.items():
        for place, look in enumerate(entry.record.look_alikes):
            known = look.fault in bank.faults or bank.was_unread("faults", look.fault)
            if not known or look.fault == name:
                message = f"there is no other fault record '{look.fault}'"
                hint = did_you_mean(look.fault, bank.faults)
                path = ("look_alikes", place, "fault")
                yield entry.problem("error", "unknown-fault", message, *path, hint=hint)


def unknown_term(bank: Bank) -> Iterator[Problem]:
    """Return every glossary cross-reference that leads nowhere."""
    for entry in bank.glossary.values():
        for place, name in enumerate(entry.record.see):
            if name not in bank.glossary and not bank.was_unread("glossary", name):
                message = f"the glossary has no entry '{name}'"
                hint = did_you_mean(name, bank.glossary)
                yield entry.problem("error", "unknown-term", message, "see", place, hint=hint)


def unknown_lesson(bank: Bank) -> Iterator[Problem]:
    """Return every module whose lesson is not in the course folder."""
    if not bank.lessons:
        return
    names = {lesson.name for lesson in bank.lessons}
    for place, module in enumerate(bank.modules):
        unread = bank.was_unread("lessons", module.lesson or "")
        if module.lesson and module.lesson not in names and not unread:
            message = f"the course folder has no lesson '{module.lesson}.md'"
            yield bank.outline_problem("unknown-lesson", message, "modules", place, "lesson")


RULES = (
    Rule(
        "unknown-source",
        "error",
        "Every statement says where it comes from. A tag names a key of sources.yml, or "
        "common_practice, or from_memory.",
        "source: to_1_1_9, table 4-1",
        "source: to_1_1_8, table 4-1",
        unknown_source,
    ),
    Rule(
        "unknown-objective",
        "error",
        "Items and records serve an objective of the outline, so that coverage can be counted. "
        "An item's file is named after its objective.",
        "objective: filler/mixing",
        "objective: filler/mix",
        unknown_objective,
    ),
    Rule(
        "unknown-step",
        "error",
        "An order pair names two steps of the same record.",
        "- {first: key_bed, then: mix_filer, class: ruins, ...}",
        "- {first: key_bed, then: mix_filler, class: ruins, ...}",
        unknown_step,
    ),
    Rule(
        "unknown-fault",
        "error",
        "A look-alike names another fault record by its file name.",
        "- fault: pinholes",
        "- fault: pinholes_in_filler",
        unknown_fault,
    ),
    Rule(
        "unknown-term",
        "error",
        "A glossary entry points only to entries that exist.",
        "see: [flash]",
        "see: [flash_off]",
        unknown_term,
    ),
    Rule(
        "unknown-lesson",
        "error",
        "A module that names a lesson has that file in the course folder.",
        "lesson: fillers",
        "lesson: filler",
        unknown_lesson,
    ),
)
