"""Turn the Markdown of stems and feedback into plain nodes that the typesetter walks.

No text is ever handed to the typesetter as code or markup: a node carries its text as data.
"""

from functools import cache
from typing import TypeAlias

from markdown_it import MarkdownIt
from markdown_it.tree import SyntaxTreeNode

Node: TypeAlias = dict[str, "str | list[Node]"]

# Rules that would swallow characters of a short trade text or have no place on paper.
_SWITCHED_OFF = (
    *("heading", "lheading", "hr", "reference", "code", "blockquote"),
    *("html_block", "html_inline"),
)

_WRAPPERS = {
    "paragraph": "paragraph",
    "bullet_list": "bullets",
    "ordered_list": "numbers",
    "list_item": "item",
    "strong": "strong",
    "em": "emphasis",
    "table": "table",
    "tr": "row",
    "th": "cell",
    "td": "cell",
}
# An image leaves its words; pictures come to paper as figures, never out of a text.
_LITERAL = {"text": "text", "code_inline": "code", "fence": "code_block", "image": "text"}
_BREAKS = {"softbreak": " ", "hardbreak": "\n"}


def block_nodes(markdown: str) -> list[Node]:
    """Read a text of one or more paragraphs, lists or tables into nodes."""
    return _children(SyntaxTreeNode(_reader().parse(markdown)))


def inline_nodes(markdown: str) -> list[Node]:
    """Read a single line, such as an option, into nodes; None in it starts a list."""
    return _children(SyntaxTreeNode(_reader().parseInline(markdown)))


@cache
def _reader() -> MarkdownIt:
    reader = MarkdownIt("commonmark", {"html": False}).enable("table")
    return reader.disable(list(_SWITCHED_OFF))


def _children(tree: SyntaxTreeNode) -> list[Node]:
    return [node for child in tree.children for node in _nodes(child)]


def _nodes(tree: SyntaxTreeNode) -> list[Node]:
    if tree.type in _LITERAL:
        return [{"kind": _LITERAL[tree.type], "text": tree.content.removesuffix("\n")}]
    if tree.type in _BREAKS:
        return [{"kind": "text", "text": _BREAKS[tree.type]}]
    if tree.type in _WRAPPERS:
        return [{"kind": _WRAPPERS[tree.type], "children": _children(tree)}]
    # What is left (inline, link, thead, tbody) only groups: keep its children, drop its form.
    return _children(tree)
