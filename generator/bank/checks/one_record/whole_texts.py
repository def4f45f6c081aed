"""Texts of records are whole: each sentence ends, each quotation closes, nothing stands twice."""

from collections.abc import Iterator

from generator.bank.bank import Bank
from generator.bank.checks.rule import Rule
from generator.bank.nodes import ListNode, MappingNode, Node, ScalarNode
from generator.bank.written_texts import written_nodes
from generator.diagnostics import Place, Problem

# fields that hold sentences; the others hold names, numbers or the words of a list
_SENTENCES = frozenset(
    ("stem", "feedback", "reason", "caution", "cautions", "model", "meaning", "hurts", "first_aid")
)
_SENTENCES |= {"throughout", "never", "harmless"}
_ENDS = (".", "?", "!", ":", ".)", "?)", '."', '?"')
_ROWS_OF_TABLE = "rows of a table"
_FEWEST_TWICE = 4


def whole_texts(bank: Bank) -> Iterator[Problem]:
    """Return sentences without a start or an end, half quotations, and what stands twice."""
    # one walk for all three, since every text of the bank is looked at
    for node in written_nodes(bank):
        yield from _whole("", node)


def _whole(name: str, node: Node) -> Iterator[Problem]:
    if isinstance(node, ListNode):
        before: tuple[str, ...] = ()
        for entry in node.items:
            words = _plain_words(entry)
            if words and words == before and name != _ROWS_OF_TABLE:
                yield said_twice_problem(entry.place, ", ".join(words))
            before = words
            yield from _text(name, entry) if isinstance(entry, ScalarNode) else _whole(name, entry)
    elif isinstance(node, MappingNode):
        is_table = "columns" in node.entries
        for key, value in node.entries.items():
            # rows of a table have a rule of their own
            inner = _ROWS_OF_TABLE if is_table and key == "rows" else key
            yield from (
                _text(inner, value) if isinstance(value, ScalarNode) else _whole(inner, value)
            )


def _text(name: str, text: ScalarNode) -> Iterator[Problem]:
    if name in _SENTENCES:
        yield from _sentence(name, text)
    if text.text.count('"') % 2:
        yield lone_quote_problem(_at(text, text.text.rindex('"')))
    words = text.text.replace(".", "").split()
    twice = _twice(words) if len(words) - len(set(words)) >= _FEWEST_TWICE else ""
    if twice:
        yield said_twice_problem(text.place, twice)


def _twice(words: list[str]) -> str:
    """Return the first four words or more that stand twice in a row."""
    for size in range(_FEWEST_TWICE, len(words) // 2 + 1):
        for start in range(len(words) - 2 * size + 1):
            if words[start : start + size] == words[start + size : start + 2 * size]:
                return " ".join(words[start : start + size])
    return ""


def _sentence(name: str, text: ScalarNode) -> Iterator[Problem]:
    said = text.text.strip()
    if not said.endswith(_ENDS):
        message = f"'{' '.join(said.split()[-3:])}' is not the end of a sentence"
        hint = "finish the sentence, and end it with a full stop"
        yield Problem(text.place, "warning", "sentence-cut", message, hint)
    elif said[0].islower() and name != "stem":
        message = f"'{' '.join(said.split()[:3])}' is not the start of a sentence"
        hint = "begin with a capital; a word before it may be lost"
        yield Problem(text.place, "warning", "sentence-cut", message, hint)


def lone_quote_problem(place: Place) -> Problem:
    """Return the warning for a quotation mark without its partner."""
    message = "this quotation mark has no partner"
    hint = "put the other one in, or take this one out; inches are written 'in'"
    return Problem(place, "warning", "lone-quote", message, hint)


def said_twice_problem(place: Place, words: str) -> Problem:
    """Return the warning for words that stand twice."""
    message = f"'{words}' stands here twice in a row"
    return Problem(place, "warning", "said-twice", message, "take one of the two out")


def _plain_words(node: Node) -> tuple[str, ...]:
    """Return the text of a list's entry, or the cells of a row; nothing where it is more."""
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
        whole_texts,
    ),
    Rule(
        "lone-quote",
        "warning",
        "A quotation mark that lost its partner shows that a text begins or ends elsewhere than "
        "its author meant.",
        '- [Mix by volume", 4:1]',
        '- ["Mix by volume", "4:1"]',
    ),
    Rule(
        "said-twice",
        "warning",
        "The same words twice in a row are a line that was pasted twice.",
        "stem: The comb shows 60 µm of wet film. The comb shows 60 µm of wet film.",
        "stem: The comb shows 60 µm of wet film.",
    ),
)
