"""A page's Markdown as parts with their words, so that nothing has to read the HTML again."""

from collections.abc import Iterator, Sequence
from typing import Any, NamedTuple

from markdown_it.token import Token

from generator.website.context.page_context import Heading, PageContext
from generator.website.context.prose import Block, markdown_reader, token_words

# a block that is filled once the whole page is known, and so is a part of its own
LATE = "sources"
_CUT_AT = ("h1", "h2")


class PagePart(NamedTuple):
    """What stands from one heading of the first or second level to the next.

    heading       None where nothing stands above the part
    heading_html  the heading itself; html is what follows it
    words         its text, for a search
    blocks        words of the fenced blocks in it
    """

    heading: Heading | None
    heading_html: str
    html: str
    words: str
    blocks: tuple[str, ...]

    @property
    def is_late(self) -> bool:
        """Return whether it is filled once the whole page is known."""
        return self.blocks == (LATE,)


def page_parts(markdown: str, draft: PageContext, blocks: dict[str, Block]) -> tuple[PagePart, ...]:
    """Render a page part by part; what it cites and its headings go into the draft."""
    env: dict[str, Any] = {"draft": draft, "blocks": blocks, "heard": {}}
    tokens = markdown_reader().parse(markdown, env)
    return tuple(_part(run, draft, env) for run in _runs(tokens))


def _runs(tokens: Sequence[Token]) -> Iterator[list[Token]]:
    run: list[Token] = []
    for token in tokens:
        late = _is_late(token)
        if run and (late or _is_late(run[0]) or _is_cut(token)):
            yield run
            run = []
        run.append(token)
    if run:
        yield run


def _is_cut(token: Token) -> bool:
    return token.type == "heading_open" and token.level == 0 and token.tag in _CUT_AT


def _is_late(token: Token) -> bool:
    return token.type == "fence" and token.level == 0 and token.info.strip() == LATE


def _part(run: list[Token], draft: PageContext, env: dict[str, Any]) -> PagePart:
    reader = markdown_reader()
    size = 3 if _is_cut(run[0]) else 0
    above, below = run[:size], run[size:]
    heading_html = str(reader.renderer.render(above, reader.options, env))
    heading = draft.headings[-1] if above else None
    html = str(reader.renderer.render(below, reader.options, env))
    words = [
        env["heard"].get(id(token), "") if token.type == "fence" else token_words(token)
        for token in below
    ]
    fences = (token.info.split() for token in below if token.type == "fence")
    return PagePart(
        heading,
        heading_html,
        html,
        " ".join(" ".join(words).split()),
        tuple(info[0] for info in fences if info),
    )
