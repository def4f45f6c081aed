"""Markdown to HTML, once, with our own headings, links, tables and fenced blocks."""

from collections.abc import Callable, Sequence
from functools import cache
from html import escape
from typing import Any

from markdown_it import MarkdownIt
from markdown_it.token import Token

from generator.website.addresses import anchor_of, resolved
from generator.website.draft import Draft, Heading

Block = Callable[[Draft, str, str], str]
TABLE_START = '<div class="table-frame" role="region" aria-label="Table" tabindex="0"><table>'


def rendered(markdown: str, draft: Draft, blocks: dict[str, Block] | None = None) -> str:
    """Render a text of any length; what it cites and its headings go into the draft."""
    env = {"draft": draft, "blocks": blocks or {}}
    return str(_reader().render(markdown, env))


def phrase(markdown: str, draft: Draft) -> str:
    """Render one line, such as an option, without a paragraph around it."""
    return str(_reader().renderInline(markdown, {"draft": draft, "blocks": {}}))


@cache
def _reader() -> MarkdownIt:
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
    draft.line = (token.map or [0])[0] + 1
    word, _, name = token.info.strip().partition(" ")
    block = env["blocks"].get(word)
    if block is not None:
        return str(block(draft, name.strip(), token.content))
    if word:
        known = ", ".join(sorted(env["blocks"])) or "none here"
        draft.report("lesson-block", f"there is no block '{word}'", f"blocks: {known}")
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


def _links(state: Any) -> None:
    draft = state.env["draft"]
    for token in state.tokens:
        for child in token.children or ():
            if child.type == "link_open":
                if token.map:
                    draft.line = token.map[0] + 1
                _point(child, draft)


def _point(link: Token, draft: Draft) -> None:
    href = str(link.attrs["href"])
    address = resolved(href, draft.course)
    if address is None:
        draft.report(
            "lesson-link",
            f"the link '{href}' leads nowhere",
            "write source:KEY, term:KEY, lesson:MODULE or the name of a page",
        )
        return
    scheme, _, key = href.partition(":")
    if scheme in ("source", "term"):
        link.attrs["class"] = f"to-{scheme}"
    if scheme == "source":
        draft.cite(key)
    link.attrs["href"] = address
