"""Sources, cautions and coverage: what the bank owes its readers."""

import re
from collections.abc import Iterator
from typing import Any

from generator.bank.bank import Bank, Entry, module_of, objective_of
from generator.bank.checks.numbers import numeric_entries
from generator.bank.checks.rule import Rule
from generator.bank.models import NumericItem, SourceTag
from generator.bank.numbers import prepare
from generator.bank.orders import hazards_met
from generator.diagnostics import Problem
from generator.refinishing import CATALOGUE

_NAME = re.compile(r"\w+")
_TOLD_OF = frozenset(
    name
    for name, relation in CATALOGUE.items()
    if relation.facts.status == "from_memory" or (relation.facts.limit and relation.facts.caution)
)


def is_from_memory(bank: Bank, tag: SourceTag) -> bool:
    """Return whether a tag rests on a text that was not read again."""
    if tag.key in bank.sources:
        return bank.sources[tag.key].record.status == "from_memory"
    return tag.key == "from_memory"


def memory_keys_exam(bank: Bank) -> Iterator[Problem]:
    """Return exam items that rest on memory, by their tag or by their relation."""
    for entry in bank.items.values():
        if entry.record.use == "study":
            continue
        if any(is_from_memory(bank, tag) for tag in entry.record.source):
            message = "a statement from memory never keys an exam item"
            hint = "write 'use: study', or read the source and correct its status"
            yield entry.problem("error", "memory-keys-exam", message, "source", hint=hint)
    for numeric in numeric_entries(bank):
        called = _relations(numeric) if numeric.record.use != "study" else ()
        for name in called:
            if name in CATALOGUE and CATALOGUE[name].facts.status == "from_memory":
                message = f"{name} rests on a text that was not read again"
                yield numeric.problem(
                    "error", "memory-keys-exam", message, "use", hint="write 'use: study'"
                )


def _relations(entry: Entry[NumericItem]) -> tuple[str, ...]:
    """Return the relations that a sound item's answer calls and that a rule here speaks of."""
    # most formulas name none of them, and need not be read to see that
    if not _TOLD_OF.intersection(_NAME.findall(entry.record.answer.formula)):
        return ()
    item, _ = prepare(entry, CATALOGUE)
    return item.answer.relations if item else ()


def caution_missing(bank: Bank) -> Iterator[Problem]:
    """Return work that can hurt without a caution beside it."""
    for entry in bank.items.values():
        if entry.record.safety and not (entry.record.caution or hazards_met(entry.record)):
            message = "this item protects people but shows no caution"
            hint = "add 'meets:' with the hazards, or 'caution:' with what to wear or do"
            yield entry.problem("error", "caution-missing", message, hint=hint)


def relation_caution_missing(bank: Bank) -> Iterator[Problem]:
    """Return items on a relation that carries a caution, where the item shows none."""
    for entry in numeric_entries(bank):
        for name in _relations(entry):
            facts = CATALOGUE[name].facts if name in CATALOGUE else None
            shown = entry.record.caution or entry.record.meets
            if facts and facts.limit and facts.caution and not shown:
                message = f"{name} gives a limit that guards people, and no caution is shown"
                yield entry.problem("error", "caution-missing", message)


def objective_without_item(bank: Bank) -> Iterator[Problem]:
    """Return objectives of taught modules that nothing asks about."""
    if bank.is_partly_read:
        return
    asked = {objective_of(name) for name in bank.items}
    records: list[Entry[Any]] = [*bank.procedures.values(), *bank.faults.values()]
    asked |= {entry.record.objective for entry in records}
    for place, module in enumerate(bank.modules):
        for inner, objective in enumerate(module.objectives):
            name = f"{module.module}/{objective.objective}"
            if module.lesson and name not in asked:
                message = f"no item and no record serves '{name}'"
                path = ("modules", place, "objectives", inner, "objective")
                problem = bank.outline_problem("objective-without-item", message, *path)
                yield Problem(problem.place, "warning", problem.rule, message)


def source_without_use(bank: Bank) -> Iterator[Problem]:
    """Return sources that nothing cites."""
    if bank.is_partly_read:
        return
    records: list[Entry[Any]] = [
        *bank.items.values(),
        *bank.procedures.values(),
        *bank.faults.values(),
        *bank.tables.values(),
    ]
    cited = {tag.key for entry in records for tag in entry.record.source}
    cited |= {relation.facts.source for relation in CATALOGUE.values()}
    lessons = " ".join(lesson.text for lesson in bank.lessons)
    for name, entry in bank.sources.items():
        if name not in cited and f"(source:{name})" not in lessons:
            message = f"nothing cites '{name}'"
            yield entry.problem("note", "source-without-use", message)


def exam_pool_thin(bank: Bank) -> Iterator[Problem]:
    """Return taught modules with no item that only an exam uses."""
    if bank.is_partly_read:
        return
    exam = {module_of(name) for name, e in bank.items.items() if e.record.use == "exam"}
    for place, module in enumerate(bank.modules):
        if module.lesson and bank.items and module.module not in exam:
            message = f"module '{module.module}' has no item kept for exams"
            problem = bank.outline_problem("exam-pool-thin", message, "modules", place, "module")
            yield Problem(problem.place, "warning", problem.rule, message)


RULES = (
    Rule(
        "memory-keys-exam",
        "error",
        "A figure nobody has read again may be taught, with its tag, but never decides a mark.",
        "use: exam\nsource: from_memory",
        "use: study\nsource: from_memory",
        memory_keys_exam,
    ),
    Rule(
        "caution-missing",
        "error",
        "Where the work can hurt, the caution is printed beside the step, not in another chapter.",
        "safety: true",
        "safety: true\ncaution: Goggles and gloves before the tin is opened.",
        lambda bank: (
            p for look in (caution_missing, relation_caution_missing) for p in look(bank)
        ),
    ),
    Rule(
        "objective-without-item",
        "warning",
        "An objective that nothing asks about is taught and never checked.",
        "an objective in outline.yml without a file in items/",
        "items/<module>/<objective>.yml with two items or more",
        objective_without_item,
    ),
    Rule(
        "source-without-use",
        "note",
        "The bibliography lists what the course rests on and no more.",
        "a key in sources.yml that nothing cites",
        "cite it, or take it out",
        source_without_use,
    ),
    Rule(
        "exam-pool-thin",
        "warning",
        "A paper made only of questions that the site shows measures memory of the site.",
        "every item of a module in pool study",
        "two in five items in pool exam",
        exam_pool_thin,
    ),
    Rule(
        "blueprint-cannot-be-filled",
        "error",
        "A paper takes each question once and never a study item, so every cell needs enough "
        "records for exams. Looked at by 'guidecoat check' and before a paper is made.",
        "- {module: filler, count: 80}",
        "- {module: filler, count: 8}",
    ),
)
