"""Rules of a place: a question on a law or a guide says whose it is."""

import re
from collections.abc import Iterator
from typing import Any

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.diagnostics import Problem, did_you_mean


def unknown_place(bank: Bank) -> Iterator[Problem]:
    """Return every place that places.yml does not have."""
    named: list[tuple[Entry[Any], tuple[str | int, ...], str]] = []
    groups = (bank.items, bank.procedures, bank.tables)
    entries: list[Entry[Any]] = [entry for group in groups for entry in group.values()]
    named += [(entry, ("place",), entry.record.place) for entry in entries if entry.record.place]
    for plan in bank.blueprints.values():
        named += [(plan, ("places", n), name) for n, name in enumerate(plan.record.places)]
    for entry, path, name in named:
        if name not in bank.places and not bank.was_unread("places", name):
            message = f"places.yml has no '{name}'"
            hint = did_you_mean(name, bank.places)
            yield entry.problem("error", "unknown-place", message, *path, hint=hint)


def rule_without_place(bank: Bank) -> Iterator[Problem]:
    """Return items that rest on a law or a guide alone and do not say of which place."""
    for entry in bank.items.values():
        record = entry.record
        cited = [bank.sources[tag.key].record for tag in record.source if tag.key in bank.sources]
        if record.place or not cited or len(cited) < len(record.source):
            continue
        if all(source.kind == "rule" for source in cited):
            where = ", ".join(sorted({s.jurisdiction for s in cited if s.jurisdiction}))
            message = f"this asks a rule of {where or 'some place'} and does not say so"
            hint = "add 'place:', or common_practice to the sources where it holds anywhere"
            yield entry.problem("error", "rule-without-place", message, "source", hint=hint)


def place_unsaid(bank: Bank) -> Iterator[Problem]:
    """Return items on a place's rule whose stem does not name the place."""
    for entry in bank.items.values():
        place = bank.places.get(entry.record.place or "")
        if place is None:
            continue
        words = place.record.words
        said = rf"\b({'|'.join(re.escape(word) for word in words)})\b"
        if not re.search(said, entry.record.stem):
            message = f"the stem asks a rule of {place.record.title} and does not name the place"
            hint = f"write one of {', '.join(words)} into the stem"
            yield entry.problem("error", "place-unsaid", message, "stem", hint=hint)


RULES = (
    Rule(
        "unknown-place",
        "error",
        "Places are named in places.yml, each with the words that a stem may use for it.",
        "place: great_britian",
        "place: great_britain",
        unknown_place,
    ),
    Rule(
        "rule-without-place",
        "error",
        "A rule holds where it was made. A learner somewhere else must not be asked it as his own.",
        "source: hse_clearance, step 3\nstem: When is the booth tested?",
        "source: hse_clearance, step 3\nplace: great_britain\nstem: Under the British guide, ...",
        rule_without_place,
    ),
    Rule(
        "place-unsaid",
        "error",
        "Whoever reads the question must see whose rule it asks.",
        "place: california\nstem: How soon must the rags be gone?",
        "place: california\nstem: Under California's rule, how soon must the rags be gone?",
        place_unsaid,
    ),
)
