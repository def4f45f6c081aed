"""Lessons with all of Markdown, our own headings, links, tables and blocks; records with less."""

import re
from collections.abc import Callable, Iterator, Sequence
from functools import cache, partial
from html import escape
from typing import Any

from markdown_it import MarkdownIt
from markdown_it.token import Token

from generator.website.context.addresses import SCHEMES, anchor_of, resolved
from generator.website.context.page_context import Heading, PageContext
from generator.wording import Node, html_of, line_nodes, text_nodes

Block = Callable[[PageContext, str, str], str]
# what is left of a link whose bracket was not closed, or that has a space in it
_LEFT_OVER = re.compile(rf"(?:\]\s*)?\(?\b(?:{'|'.join(SCHEMES)}):[a-z][a-z0-9_/]*|\]\([^)\s]*")
_BREAKS = ("softbreak", "hardbreak")
_NOTE = re.compile(r"<!--|</script", re.IGNORECASE)
LINKS = "write source:KEY, term:KEY, lesson:MODULE or the name of a page"
TABLE_START = '<div class="table-frame" role="region" aria-label="Table" tabindex="0"><table>'


def rendered(markdown: str, draft: PageContext, blocks: dict[str, Block] | None = None) -> str:
    """Render a text of any length; what it cites and its headings go into the draft."""
    env = {"draft": draft, "blocks": blocks or {}}
    return str(markdown_reader().render(markdown, env))


def prose(markdown: str, draft: PageContext) -> str:
    """Render a text of a record, such as a stem; what it cites goes into the draft."""
    nodes = text_nodes(markdown)
    for paragraph in nodes:
        draft.line = draft.base + paragraph.line + 1
        _look_at(paragraph.children, draft)
    return html_of(nodes, partial(_pointed, draft=draft))


def phrase(markdown: str, draft: PageContext) -> str:
    """Render one line, such as an option, without a paragraph around it."""
    nodes = line_nodes(markdown)
    draft.line = draft.base + 1
    _look_at(nodes, draft)
    return html_of(nodes, partial(_pointed, draft=draft))


def plain_words(markdown: str, draft: PageContext) -> str:
    """Return the words of one line, without any markup."""
    tokens = markdown_reader().parseInline(markdown, {"draft": draft, "blocks": {}})
    return " ".join(" ".join(map(token_words, tokens)).split())


def token_words(token: Token) -> str:
    """Return the words inside a token; a break between lines is a space."""
    parts = token.children or ()
    return "".join(" " if part.type in _BREAKS else part.content for part in parts)


@cache
def markdown_reader() -> MarkdownIt:
    """Return the one reader of Markdown, with what this site writes in its own way."""
    reader = MarkdownIt("commonmark", {"html": False}).enable("table").disable("code")
    reader.add_render_rule("fence", _fence)
    reader.add_render_rule("heading_open", _heading_open)
    reader.add_render_rule("table_open", lambda *_: TABLE_START)
    reader.add_render_rule("table_close", lambda *_: "</table></div>\n")
    for name in ("td_open", "th_open"):
        reader.add_render_rule(name, _cell_open)
    reader.core.ruler.push("links", _links)
    return reader


def _fence(writer: Any, tokens: Sequence[Token], place: int, options: Any, env: Any) -> str:
    token, draft = tokens[place], env["draft"]
    draft.line = draft.base + (token.map or [0])[0] + 1
    word, _, name = token.info.strip().partition(" ")
    block = env["blocks"].get(word)
    if block is not None:
        outside, draft.base = draft.base, draft.line
        draft.heard = ""
        html = str(block(draft, name.strip(), token.content))
        env.get("heard", {})[id(token)] = draft.heard
        draft.base = outside
        return html
    if word:
        known = ", ".join(sorted(env["blocks"])) or "none here"
        draft.report("lesson-block", f"there is no block '{word}'", f"blocks: {known}", word)
    return f"<pre><code>{escape(token.content)}</code></pre>\n"


def _heading_open(writer: Any, tokens: Sequence[Token], place: int, options: Any, env: Any) -> str:
    draft, level = env["draft"], int(tokens[place].tag[1])
    words = "".join(child.content for child in tokens[place + 1].children or ())
    anchor = draft.free_anchor(anchor_of(words))
    draft.headings.append(Heading(level, anchor, words))
    return f'<h{level} id="{anchor}">'


def _cell_open(writer: Any, tokens: Sequence[Token], place: int, options: Any, env: Any) -> str:
    token = tokens[place]
    side = str(token.attrs.get("style", "")).removeprefix("text-align:")
    scope = ' scope="col"' if token.tag == "th" else ""
    # an attribute 'style' would break the page's content policy
    place_class = f' class="to-{side}"' if side else ""
    return f"<{token.tag}{scope}{place_class}>"


def _look_at(nodes: Sequence[Node], draft: PageContext) -> None:
    everything = tuple(_every(nodes))
    for node in everything:
        if node.kind == "picture":
            _no_picture(draft)
    _left_over("".join(node.text for node in everything if node.kind == "text"), draft)


def _every(nodes: Sequence[Node]) -> Iterator[Node]:
    for node in nodes:
        yield node
        yield from _every(node.children)


def _links(state: Any) -> None:
    draft = state.env["draft"]
    for token in state.tokens:
        if token.children and token.map:
            draft.line = draft.base + token.map[0] + 1
        for child in token.children or ():
            if child.type == "link_open":
                child.attrs = {**_pointed(str(child.attrs["href"]), draft)}
            elif child.type == "image":
                _no_picture(draft)
        parts = token.children or ()
        _left_over("".join(part.content for part in parts if part.type == "text"), draft)


def _no_picture(draft: PageContext) -> None:
    message = "a picture is shown with a block, never out of the text"
    draft.report("lesson-link", message, "write a block ```figure NAME", "![")


def _left_over(plain: str, draft: PageContext) -> None:
    for found in _LEFT_OVER.finditer(plain):
        message = f"'{found[0]}' stays in the text as it is: this is no whole link"
        hint = "write [words](term:KEY) with no space between, and close both brackets"
        draft.report("lesson-link", message, hint, found[0])
    for found in _NOTE.finditer(plain):
        message = f"'{found[0]}' and what follows would be shown to learners as text"
        draft.report("lesson-note", message, "keep notes to yourself out of the text", found[0])


def _pointed(href: str, draft: PageContext) -> dict[str, str]:
    """Return the attributes of a link, and note what it cites; where it leads nowhere, say so."""
    scheme, _, key = href.partition(":")
    address = resolved(href, draft.course)
    if address is None:
        # where a name is known to be one, the name itself is pointed at
        shift = len(scheme) + 1 if key and scheme in SCHEMES else 0
        message = f"the link '{href}' leads nowhere"
        draft.report("lesson-link", message, LINKS, href or "]()", shift)
        return {"href": href}
    if scheme == "source":
        draft.cite(key)
    kind = {"class": f"to-{scheme}"} if scheme in ("source", "term") else {}
    return {"href": address, **kind}
