"""Critical questions: marked by hand, on things that hurt, of kinds that are right or wrong."""

from collections.abc import Iterator

from generator.bank.bank import Bank
from generator.bank.checks.rule import Rule
from generator.bank.checks.whole_bank.honesty import is_from_memory
from generator.bank.orders import transitive_closure
from generator.diagnostics import Problem

# what a marker weighs, or what has a mark for each part, opens no gate
RIGHT_OR_WRONG = ("choice", "numeric", "order", "multiple_response")
FEWEST_LATER = 2


def critical_item(bank: Bank) -> Iterator[Problem]:
    """Return critical items that cannot be on a paper as must-pass."""
    for entry in bank.items.values():
        record = entry.record
        if record.critical is None:
            continue
        kind = getattr(record, "kind", "")
        if kind not in RIGHT_OR_WRONG:
            message = f"a {kind} item has marks for its parts, so it cannot be critical"
            hint = f"make it one of {', '.join(RIGHT_OR_WRONG)}, or take 'critical' away"
            yield entry.problem("error", "critical-item", message, "critical", hint=hint)
        if record.use == "study":
            message = "a study item is never on a paper, so it cannot be critical"
            hint = "write 'use: exam' or 'use: both', or take 'critical' away"
            yield entry.problem("error", "critical-item", message, "critical", hint=hint)


def critical_pair(bank: Bank) -> Iterator[Problem]:
    """Return critical pairs that hurt nobody, or from which no question can be made."""
    for entry in bank.procedures.values():
        record = entry.record
        optional = {step.step for step in record.steps if step.optional}
        scored = [(p.first, p.then) for p in record.pairs if p.scores]
        kept = [pair for pair in scored if not optional & set(pair)]
        for place, pair in enumerate(record.pairs):
            if pair.critical is None:
                continue
            path = ("pairs", place, "critical")
            if pair.pair_class != "danger":
                message = f"a pair of class {pair.pair_class} hurts nobody, so it is not critical"
                hint = "write 'class: danger' where it does, or take 'critical' away"
                yield entry.problem("error", "critical-pair", message, *path, hint=hint)
            later = {c for b, c in transitive_closure(kept) if b == pair.then}
            if len(later) < FEWEST_LATER or optional & {pair.first, pair.then}:
                message = (
                    f"no question can be made of this pair: {len(later)} steps are forced after "
                    f"'{pair.then}'"
                )
                hint = "two steps after it are needed as wrong options; or write an item instead"
                yield entry.problem("error", "critical-pair", message, *path, hint=hint)
        if any(pair.critical for pair in record.pairs):
            for place, tag in enumerate(record.source):
                if is_from_memory(bank, tag):
                    message = "a record from memory keys no paper, so no pair of it is critical"
                    yield entry.problem("error", "critical-pair", message, "source", place)


RULES = (
    Rule(
        "critical-item",
        "error",
        "A critical question can be must-pass on a paper: it is for exams, and it is either right "
        "or wrong.",
        "kind: written\ncritical: {hazard: acid, reason: ...}",
        "kind: choice\nuse: exam\ncritical: {hazard: acid, reason: ...}",
        critical_item,
    ),
    Rule(
        "critical-pair",
        "error",
        "A critical pair is one that hurts somebody the other way round. It becomes a question of "
        "its own, which takes its wrong options from the steps that come later.",
        "- {first: wash, then: dry, class: ruins, critical: {hazard: acid, reason: ...}}",
        "- {first: goggles, then: acid, class: danger, critical: {hazard: acid, reason: ...}}",
        critical_pair,
    ),
)
