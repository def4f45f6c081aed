"""Light markup of the bank's texts: one reading into nodes, written as HTML or for the typesetter.

A text is one or more paragraphs with emphasis, strong words, code, line breaks and links. Anything
else, such as '# 3 paper' or '> 40 µm', is what it looks like: letters. `blocks_in` finds what an
author may have meant as a list, a table or a heading. Lessons are read elsewhere, with all of
Markdown.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from html import escape
from typing import Literal, TypeAlias

from markdown_it import MarkdownIt
from markdown_it.tree import SyntaxTreeNode

Kind = Literal[
    "paragraph", "text", "emphasis", "strong", "code", "soft_break", "hard_break", "link", "picture"
]
# attributes of a link by its address
Link: TypeAlias = Callable[[str], Mapping[str, str]]
TypstNode: TypeAlias = dict[str, "str | list[TypstNode]"]

_BLOCKS = ("code", "fence", "blockquote", "hr", "list", "reference", "html_block")
_HEADINGS = ("heading", "lheading")
_KINDS: Mapping[str, Kind] = {
    "paragraph": "paragraph",
    "text": "text",
    "em": "emphasis",
    "strong": "strong",
    "code_inline": "code",
    "softbreak": "soft_break",
    "hardbreak": "hard_break",
    "link": "link",
    "image": "picture",
}
_TAGS: Mapping[Kind, str] = {"emphasis": "em", "strong": "strong"}
_MEANT = {
    "bullet_list": "a list",
    "ordered_list": "a list",
    "table": "a table",
    "fence": "a block of code",
    "hr": "a line across",
    "heading": "a heading",
}


@dataclass(frozen=True, slots=True)
class Node:
    """A piece of a text.

    text    of a leaf: its letters
    target  of a link: its address
    line    of a paragraph: how many lines of the text lie before it
    """

    kind: Kind
    text: str = ""
    children: tuple["Node", ...] = ()
    target: str = ""
    line: int = 0


def text_nodes(markdown: str) -> tuple[Node, ...]:
    """Read a text of one or more paragraphs."""
    return _children(SyntaxTreeNode(_reader().parse(markdown)))


def line_nodes(markdown: str) -> tuple[Node, ...]:
    """Read a single line, such as an option, without a paragraph around it."""
    return _children(SyntaxTreeNode(_reader().parseInline(markdown)))


def html_of(nodes: Sequence[Node], link: Link | None = None) -> str:
    """Return nodes as HTML; without `link`, of a link only its words are left."""
    return "".join(_html(node, link) for node in nodes)


def typst_of(nodes: Sequence[Node]) -> list[TypstNode]:
    """Return nodes as data for the typesetter, which never runs a text; a link leaves its words."""
    return [written for node in nodes for written in _typst(node)]


def html_of_text(markdown: str) -> str:
    """Return a text of one or more paragraphs as HTML without links."""
    return html_of(text_nodes(markdown))


def html_of_line(markdown: str) -> str:
    """Return a single line as HTML without links."""
    return html_of(line_nodes(markdown))


def typst_of_text(markdown: str) -> list[TypstNode]:
    """Return a text of one or more paragraphs for the typesetter."""
    return typst_of(text_nodes(markdown))


def typst_of_line(markdown: str) -> list[TypstNode]:
    """Return a single line for the typesetter."""
    return typst_of(line_nodes(markdown))


def blocks_in(markdown: str) -> Iterator[tuple[int, str]]:
    """Return what looks like a block and is shown as letters: its line from 0, and what it is.

    A list of one line is a text such as '1. coat', and a line may begin with '#' or '>'.
    """
    tree = SyntaxTreeNode(_whole_reader().parse(markdown))
    for node in tree.children:
        one_line = node.type.endswith("_list") and len(node.children) == 1
        if node.type in _MEANT and not one_line:
            yield (node.map or (0, 0))[0], _MEANT[node.type]


@cache
def _reader() -> MarkdownIt:
    reader = MarkdownIt("commonmark", {"html": False})
    return reader.disable([*_BLOCKS, *_HEADINGS, "html_inline", "autolink"])


@cache
def _whole_reader() -> MarkdownIt:
    whole = MarkdownIt("commonmark", {"html": False}).enable("table")
    return whole.disable(["code", "heading", "blockquote"])


def _children(tree: SyntaxTreeNode) -> tuple[Node, ...]:
    return tuple(node for child in tree.children for node in _nodes(child))


def _nodes(tree: SyntaxTreeNode) -> tuple[Node, ...]:
    kind = _KINDS.get(tree.type)
    if kind is None:
        # what is left only groups
        return _children(tree)
    if kind in ("text", "code", "picture"):
        return (Node(kind, tree.content),)
    line = tree.map[0] if tree.map else 0
    return (Node(kind, "", _children(tree), str(tree.attrs.get("href", "")), line),)


def _html(node: Node, link: Link | None) -> str:
    inside = html_of(node.children, link)
    match node.kind:
        case "text" | "picture":
            return _escaped(node.text)
        case "code":
            return f"<code>{_escaped(node.text)}</code>"
        case "soft_break":
            return "\n"
        case "hard_break":
            return "<br />\n"
        case "link":
            return _anchor(node.target, inside, link)
        case "paragraph":
            return f"<p>{inside}</p>\n"
    return f"<{_TAGS[node.kind]}>{inside}</{_TAGS[node.kind]}>"


def _anchor(target: str, inside: str, link: Link | None) -> str:
    if link is None:
        return inside
    said = "".join(f' {name}="{escape(value)}"' for name, value in link(target).items())
    return f"<a{said}>{inside}</a>"


def _escaped(text: str) -> str:
    return escape(text, quote=False).replace('"', "&quot;")


def _typst(node: Node) -> list[TypstNode]:
    match node.kind:
        case "text" | "picture":
            return [{"kind": "text", "text": node.text}]
        case "code":
            return [{"kind": "code", "text": node.text}]
        case "soft_break":
            return [{"kind": "text", "text": " "}]
        case "hard_break":
            return [{"kind": "text", "text": "\n"}]
        case "link":
            return typst_of(node.children)
    return [{"kind": node.kind, "children": typst_of(node.children)}]
