"""Options must have one sound key and must not give it away.

The cues follow published item-writing guidelines (Haladyna, Downing and Rodriguez 2002).
"""

import re
from collections.abc import Iterator
from typing import Any

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.diagnostics import Problem, normal

_COMBINED = re.compile(r"\b(all|both|none) of (the )?(above|these|them)\b|\bboth [a-d] and [a-d]\b")
_NEGATIVE = re.compile(r"\b(not|except|(?<!at )least|never|incorrect|false)\b")
_ABSOLUTE = re.compile(r"\b(always|never|all|only|every|completely|must|any)\b")


def _with_options(bank: Bank) -> Iterator[Entry[Any]]:
    kinds = ("choice", "multiple_response")
    return (e for e in bank.items.values() if getattr(e.record, "kind", "") in kinds)


def key_count(bank: Bank) -> Iterator[Problem]:
    """Return items with too few or too many right options."""
    for entry in _with_options(bank):
        right = sum(option.right for option in entry.record.options)
        if entry.record.kind == "choice" and right != 1:
            message = f"a choice has exactly one right option, and {right} are marked"
            yield entry.problem("error", "key-count", message, "options")
        if entry.record.kind == "multiple_response" and not 2 <= right < len(entry.record.options):
            message = f"of {len(entry.record.options)} options {right} are marked right"
            hint = "mark two or more, and leave at least one wrong"
            yield entry.problem("error", "key-count", message, "options", hint=hint)


def options_same_text(bank: Bank) -> Iterator[Problem]:
    """Return options that say the same."""
    for entry in _with_options(bank):
        seen: dict[str, int] = {}
        for place, option in enumerate(entry.record.options):
            first = seen.setdefault(normal(option.text), place)
            if first != place:
                message = f"this says the same as option {first + 1}"
                path = ("options", place, "text")
                yield entry.problem("error", "options-same-text", message, *path)


def combined_option(bank: Bank) -> Iterator[Problem]:
    """Return options that lean on the other options."""
    for entry in _with_options(bank):
        for place, option in enumerate(entry.record.options):
            if _COMBINED.search(normal(option.text)):
                message = "each option must make sense by itself and does not point to the others"
                path = ("options", place, "text")
                yield entry.problem("error", "combined-option", message, *path)


def feedback_repeats_option(bank: Bank) -> Iterator[Problem]:
    """Return feedback that says no more than the option."""
    for entry in _with_options(bank):
        for place, option in enumerate(entry.record.options):
            if normal(option.feedback) == normal(option.text):
                message = "the feedback only repeats the option; say why"
                path = ("options", place, "feedback")
                yield entry.problem("error", "feedback-repeats-option", message, *path)


def longest_option_is_key(bank: Bank) -> Iterator[Problem]:
    """Return choices whose key stands out by its length."""
    for entry in _with_options(bank):
        if entry.record.kind != "choice":
            continue
        keys = [option.text for option in entry.record.options if option.right]
        others = [option.text for option in entry.record.options if not option.right]
        if len(keys) == 1 and others and _stands_out(keys[0], others):
            message = "the right option is much longer than the others and gives itself away"
            hint = "shorten it, or give the wrong ones as much detail"
            yield entry.problem("warning", "longest-option-is-key", message, "options", hint=hint)


def _stands_out(key: str, others: list[str]) -> bool:
    mean = sum(map(len, others)) / len(others)
    longest = max(len(text.split()) for text in others)
    return len(key) > 1.25 * mean and len(key.split()) >= longest + 3


def hidden_negation(bank: Bank) -> Iterator[Problem]:
    """Return stems with a negation that a reader in a hurry will miss."""
    for entry in bank.items.values():
        asked = entry.record.stem.rsplit(". ", 1)[-1]
        found = _NEGATIVE.search(asked)
        if found and asked.endswith("?") and getattr(entry.record, "kind", "") != "written":
            message = f"'{found[0]}' in the question is easy to miss"
            hint = "ask it the other way round, or write the word in capitals"
            yield entry.problem("warning", "hidden-negation", message, "stem", hint=hint)


def absolute_only_in_wrong(bank: Bank) -> Iterator[Problem]:
    """Return choices where words such as 'always' mark the wrong options."""
    for entry in _with_options(bank):
        right = [o for o in entry.record.options if o.right]
        wrong = [o for o in entry.record.options if not o.right]
        marked = [o for o in wrong if _ABSOLUTE.search(normal(o.text))]
        if len(marked) >= 2 and not any(_ABSOLUTE.search(normal(o.text)) for o in right):
            message = "several wrong options, and not the right one, use words such as 'always'"
            yield entry.problem("warning", "absolute-only-in-wrong", message, "options")


def too_much_reading(bank: Bank) -> Iterator[Problem]:
    """Return stems over 60 words and options over 16."""
    for entry in bank.items.values():
        words = len(entry.record.stem.split())
        if words > 60:
            message = f"the stem has {words} words; 60 is the most"
            yield entry.problem("warning", "too-much-reading", message, "stem")
    for optioned in _with_options(bank):
        for place, option in enumerate(optioned.record.options):
            words = len(option.text.split())
            if words > 16:
                message = f"the option has {words} words; 16 is the most"
                path = ("options", place, "text")
                yield optioned.problem("warning", "too-much-reading", message, *path)


RULES = (
    Rule(
        "key-count",
        "error",
        "A choice has one right option; 'choose all that apply' has two or more, and a wrong one.",
        "- {text: Degrease it, right: true, ...}\n- {text: Wash it, right: true, ...}",
        "- {text: Degrease it, right: true, ...}\n- {text: Sand it, ...}",
        key_count,
    ),
    Rule(
        "options-same-text",
        "error",
        "Two options that say the same cannot both be judged.",
        "- text: P320\n- text: p320.",
        "- text: P320\n- text: P180",
        options_same_text,
    ),
    Rule(
        "combined-option",
        "error",
        "'All of the above' rewards half knowledge and hides what the learner believes.",
        "- text: All of the above",
        "kind: multiple_response",
        combined_option,
    ),
    Rule(
        "feedback-repeats-option",
        "error",
        "Feedback is where the learning happens: it says why an option is right or wrong.",
        "- text: Sand first\n  feedback: Sand first.",
        "- text: Sand first\n  feedback: Sanding drives wax into the scratches.",
        feedback_repeats_option,
    ),
    Rule(
        "longest-option-is-key",
        "warning",
        "Authors tend to write the key with more care; learners notice.",
        "- text: Wipe it on and wipe it off with a second cloth before it dries\n  right: true\n"
        "- text: Let it dry",
        "- text: Wipe it off while still wet\n  right: true\n- text: Let it dry on the panel",
        longest_option_is_key,
    ),
    Rule(
        "hidden-negation",
        "warning",
        "A small 'not' tests reading, not the trade.",
        "stem: Which step is not needed?",
        "stem: Which step can be left out?",
        hidden_negation,
    ),
    Rule(
        "absolute-only-in-wrong",
        "warning",
        "Words such as 'always' in wrong options only are a cue for the test-wise.",
        "- text: It always fails\n- text: It never dries\n- text: It softens\n  right: true",
        "- text: It fails\n- text: It dries late\n- text: It softens\n  right: true",
        absolute_only_in_wrong,
    ),
    Rule(
        "too-much-reading",
        "warning",
        "A question about paint should not be a reading test.",
        "stem: (80 words)",
        "stem: (30 words and a sheet)",
        too_much_reading,
    ),
)
