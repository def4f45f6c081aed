"""Names of records are plain: small letters, digits and underscores, as they are typed."""

import re
from collections.abc import Iterator

from generator.bank.bank import Bank
from generator.bank.checks.rule import Rule
from generator.diagnostics import Problem

_PLAIN = re.compile(r"[a-z][a-z0-9_]*\Z", re.ASCII)


def record_name(bank: Bank) -> Iterator[Problem]:
    """Return records whose name holds a capital, a space, or a letter of another alphabet."""
    groups = (bank.items, bank.sources, bank.glossary, bank.hazards, bank.places)
    for group in (*groups, bank.procedures, bank.faults, bank.tables, bank.blueprints):
        for name, entry in group.items():
            own = name.rpartition("/")[2]
            if not _PLAIN.match(own):
                odd = next((sign for sign in own if not _PLAIN.match(f"a{sign}")), own[:1])
                message = f"'{odd}' (U+{ord(odd):04X}) cannot stand in the name '{own}'"
                hint = "name it with a to z, digits and underscores; begin with a letter"
                yield entry.problem("error", "record-name", message, hint=hint)


RULES = (
    Rule(
        "record-name",
        "error",
        "A name is typed in commands and links. A capital, or a letter of another alphabet that "
        "looks the same, makes a name that nobody can type.",
        "Wipe-Dry: {kind: choice, ...}",
        "wipe_dry: {kind: choice, ...}",
        record_name,
    ),
)
