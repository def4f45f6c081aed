"""People that a question invents: never called by a code that a roster may give to somebody."""

import re
from collections.abc import Iterator
from typing import Any

from generator.bank.bank import Bank, Entry
from generator.bank.checks.rule import Rule
from generator.bank.nodes import ListNode, MappingNode, Node, ScalarNode, scalars
from generator.diagnostics import Problem

# the codes of README's own rosters, and what shops make of them
_CODE = re.compile(
    r"\b(apprentice|learner|trainee|student|trainer|painter|helper)s?[ ._-]?[0-9]+\b", re.I
)


def roster_code(bank: Bank) -> Iterator[Problem]:
    """Return texts of questions and records that name somebody as a roster does."""
    groups: tuple[tuple[Entry[Any], ...], ...] = (
        tuple(bank.items.values()),
        tuple(bank.procedures.values()),
        tuple(bank.faults.values()),
        tuple(bank.tables.values()),
    )
    for entry in (entry for group in groups for entry in group):
        # the path to each text is worked out only where there is something to tell
        if not any(_CODE.search(text.text) for text in scalars(entry.node)):
            continue
        for path, text in _texts(entry.node, ()):
            if found := _CODE.search(text):
                message = f"'{found[0]}' may be the code of somebody who gets this paper"
                hint = (
                    f"write 'an {found[1].lower()}'"
                    if found[1][0] in "aA"
                    else (f"write 'a {found[1].lower()}'")
                )
                yield entry.problem("error", "roster-code", message, *path, hint=hint)


def _texts(node: Node, path: tuple[str | int, ...]) -> Iterator[tuple[tuple[str | int, ...], str]]:
    if isinstance(node, ScalarNode):
        yield path, node.text
    elif isinstance(node, ListNode):
        for place, inner in enumerate(node.items):
            yield from _texts(inner, (*path, place))
    elif isinstance(node, MappingNode):
        for name, inner in node.entries.items():
            yield from _texts(inner, (*path, name))


RULES = (
    Rule(
        "roster-code",
        "error",
        "A shop gives its people codes such as Apprentice 01, and a paper that tells what "
        "Apprentice 01 did wrong may land on that person's desk.",
        "stem: Apprentice 01 says that more film is better. What is wrong?",
        "stem: An apprentice says that more film is better. What is wrong?",
        roster_code,
    ),
)
