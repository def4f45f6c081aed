"""Waivers name a rule that can be waived, once."""

from collections.abc import Iterator

from generator.bank.bank import Bank
from generator.bank.checks.rule import Rule
from generator.bank.checks.waiving import WAIVABLE
from generator.diagnostics import Problem, did_you_mean


def waived_rules(bank: Bank) -> Iterator[Problem]:
    """Return waivers of rules that hold everywhere, and of one rule twice."""
    for entry in bank.items.values():
        rules = [waiver.rule for waiver in entry.record.waived]
        for place, rule in enumerate(rules):
            path = ("waived", place, "rule")
            if rule not in WAIVABLE:
                message = f"'{rule}' cannot be waived"
                hint = did_you_mean(rule, WAIVABLE) or f"these can: {', '.join(WAIVABLE)}"
                yield entry.problem("error", "waiver-unknown", message, *path, hint=hint)
            elif rule in rules[:place]:
                message = f"'{rule}' is waived here already"
                yield entry.problem("error", "waiver-unknown", message, *path)


RULES = (
    Rule(
        "waiver-unknown",
        "error",
        "Only warnings of taste and chance can be waived, with a written reason. What keeps people "
        "safe or a key sound holds everywhere.",
        "waived:\n  - {rule: key-count, reason: Two of them are right.}",
        "waived:\n  - {rule: options-overlap, reason: The ranges are two grades of the sheet.}",
        waived_rules,
    ),
    Rule(
        "waiver-in-vain",
        "warning",
        "A waiver that waives nothing hides the next fault. It goes when its reason is gone.",
        "waived:\n  - {rule: options-overlap, ...}  (and no ranges overlap)",
        "(no waiver)",
    ),
)
