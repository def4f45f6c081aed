"""Texts of records are whole: each sentence ends, each quotation closes, nothing stands twice."""

import re
from collections.abc import Iterator

from generator.bank.bank import Bank
from generator.bank.checks.rule import Rule
from generator.bank.nodes import ListNode, MappingNode, Node, ScalarNode
from generator.bank.written_texts import written_nodes, written_texts
from generator.diagnostics import Place, Problem

# fields that hold sentences; the others hold names, numbers or the words of a list
_SENTENCES = frozenset(
    ("stem", "feedback", "reason", "caution", "cautions", "model", "meaning", "hurts", "first_aid")
)
_SENTENCES |= {"throughout", "never", "harmless"}
_ENDS = (".", "?", "!", ":", ".)", "?)", '."', '?"')
_FEWEST_TWICE = 4
_TWICE = re.compile(r"\b((?:[^\W_]+[,']? ){3,}?[^\W_]+)\W+\1\b")


def sentence_cut(bank: Bank) -> Iterator[Problem]:
    """Return sentences that do not begin with a capital or have no end."""
    for name, text in _sentences(bank):
        said = text.text.strip()
        if not said.endswith(_ENDS):
            message = f"'{_last_words(said)}' is not the end of a sentence"
            hint = "finish the sentence, and end it with a full stop"
            yield Problem(text.place, "warning", "sentence-cut", message, hint)
        elif said[0].islower() and name != "stem":
            message = f"'{' '.join(said.split()[:3])}' is not the start of a sentence"
            hint = "begin with a capital; a word before it may be lost"
            yield Problem(text.place, "warning", "sentence-cut", message, hint)


def _last_words(text: str) -> str:
    return " ".join(text.split()[-3:])


def _sentences(bank: Bank) -> Iterator[tuple[str, ScalarNode]]:
    for node in written_nodes(bank):
        yield from _named("", node)


def _named(name: str, node: Node) -> Iterator[tuple[str, ScalarNode]]:
    if isinstance(node, ScalarNode):
        if name in _SENTENCES:
            yield name, node
    elif isinstance(node, ListNode):
        for inner in node.items:
            yield from _named(name, inner)
    elif isinstance(node, MappingNode):
        for key, inner in node.entries.items():
            yield from _named(key, inner)


def lone_quote(bank: Bank) -> Iterator[Problem]:
    """Return texts in which a quotation opens or closes alone."""
    for text in written_texts(bank):
        if text.text.count('"') % 2:
            yield lone_quote_problem(_at(text, text.text.rindex('"')))


def lone_quote_problem(place: Place) -> Problem:
    """Return the warning for a quotation mark without its partner."""
    message = "this quotation mark has no partner"
    hint = "put the other one in, or take this one out; inches are written 'in'"
    return Problem(place, "warning", "lone-quote", message, hint)


def said_twice(bank: Bank) -> Iterator[Problem]:
    """Return texts in which four words or more stand twice in a row, and lists with twins."""
    for text in written_texts(bank):
        words = text.text.split()
        may = len(words) - len(set(words)) >= _FEWEST_TWICE - 1
        if may and (found := _TWICE.search(text.text)):
            yield said_twice_problem(_at(text, found.start()), found[1])
    for node in written_nodes(bank):
        yield from _twins(node)


def said_twice_problem(place: Place, words: str) -> Problem:
    """Return the warning for words that stand twice."""
    message = f"'{words}' stands here twice in a row"
    return Problem(place, "warning", "said-twice", message, "take one of the two out")


def _twins(node: Node) -> Iterator[Problem]:
    if isinstance(node, MappingNode):
        for key, inner in node.entries.items():
            if key != "rows" or "columns" not in node.entries:
                yield from _twins(inner)
    elif isinstance(node, ListNode):
        for one, other in zip(node.items, node.items[1:], strict=False):
            if _plain_words(one) and _plain_words(one) == _plain_words(other):
                yield said_twice_problem(other.place, ", ".join(_plain_words(one)))
        for inner in node.items:
            yield from _twins(inner)


def _plain_words(node: Node) -> tuple[str, ...]:
    """Return the text of a list's entry, or the cells of a row; None where it is more."""
    if isinstance(node, ScalarNode):
        return (node.text,)
    cells = node.items if isinstance(node, ListNode) else ()
    return tuple(cell.text for cell in cells if isinstance(cell, ScalarNode))


def _at(text: ScalarNode, index: int) -> Place:
    return text.place if text.block else text.inner.shifted(index)


RULES = (
    Rule(
        "sentence-cut",
        "warning",
        "A sentence that starts or stops in the middle has lost a line, and the part that is left "
        "may say the opposite.",
        "feedback: Thinner takes up room in the wet film and",
        "feedback: Thinner takes up room in the wet film and then leaves.",
        sentence_cut,
    ),
    Rule(
        "lone-quote",
        "warning",
        "A quotation mark that lost its partner shows that a text begins or ends elsewhere than "
        "its author meant.",
        '- [Mix by volume", 4:1]',
        '- ["Mix by volume", "4:1"]',
        lone_quote,
    ),
    Rule(
        "said-twice",
        "warning",
        "The same words twice in a row are a line that was pasted twice.",
        "stem: The comb shows 60 µm of wet film. The comb shows 60 µm of wet film.",
        "stem: The comb shows 60 µm of wet film.",
        said_twice,
    ),
)
