"""Pages of a site as sections of one document: every place gets its page's name in front."""

import re
from collections.abc import Sequence
from html.parser import HTMLParser
from typing import NamedTuple

from markupsafe import Markup

MARK = "--"
_PATTERNS = re.compile(r'<svg class="patterns".*?</svg>\n?', re.DOTALL)
_BODY = re.compile(
    r'<title>(?P<title>.*?)</title>.*?<body class="(?P<kind>[^"]*)">\n(?P<top>.*?)'
    r'<main id="main" tabindex="-1">\n(?P<main>.*)</main>\n(?P<after>.*?)'
    r"(?P<foot><footer.*</footer>)",
    re.DOTALL,
)
_PLACES = re.compile(
    r'\s(?P<name>id|for|href|aria-labelledby|aria-describedby|fill|clip-path|mask)="(?P<value>[^"]*)"'
)
_PAGE = re.compile(r"(?P<page>[a-z0-9_-]+)\.html(?:#(?P<place>.*))?\Z")
_INSIDE = re.compile(r"url\(#(?P<place>[^)]+)\)\Z")


class NotThisTheme(ValueError):
    """A page does not have the frame that this theme puts around it."""


class Section(NamedTuple):
    """One page inside the one document; `name` is its place in it."""

    name: str
    title: str
    kind: str
    html: Markup


class Frame(NamedTuple):
    """What stands around every page, and the speck patterns that all panels share."""

    top: Markup
    foot: Markup
    patterns: Markup


def page_sections(pages: Sequence[str], texts: Sequence[str]) -> tuple[Frame, tuple[Section, ...]]:
    """Cut pages into sections and give the frame of the first one.

    pages  file names; texts: what the files hold, in the same order
    """
    cut = [_body(text) for text in texts]
    sections = tuple(
        Section(
            page.removesuffix(".html"),
            Markup(found["title"]).unescape(),
            found["kind"],
            Markup(_placed(found["main"] + found["after"], page.removesuffix(".html"))),
        )
        for page, found in zip(pages, cut, strict=True)
    )
    patterns = _PATTERNS.search(texts[0])
    top, foot = (Markup(_placed(cut[0][part], "")) for part in ("top", "foot"))
    return Frame(top, foot, Markup(patterns[0] if patterns else "")), sections


def _body(text: str) -> re.Match[str]:
    found = _BODY.search(text)
    if found is None:
        raise NotThisTheme("a page without the frame of this theme")
    return found


def _placed(html: str, page: str) -> str:
    writer = _Placer(page)
    writer.feed(_PATTERNS.sub("", html))
    writer.close()
    return "".join(writer.pieces)


class _Placer(HTMLParser):
    """Writes HTML as it was, with names of places changed; `page` is empty for the frame."""

    def __init__(self, page: str) -> None:
        super().__init__(convert_charrefs=False)
        self.pieces: list[str] = []
        self._page = page

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.pieces.append(_PLACES.sub(self._attribute, self.get_starttag_text() or ""))

    handle_startendtag = handle_starttag

    def handle_endtag(self, tag: str) -> None:
        self.pieces.append(f"</{tag}>")

    def handle_data(self, data: str) -> None:
        self.pieces.append(data)

    def handle_entityref(self, name: str) -> None:
        self.pieces.append(f"&{name};")

    def handle_charref(self, name: str) -> None:
        self.pieces.append(f"&#{name};")

    def _attribute(self, found: re.Match[str]) -> str:
        name, value = found["name"], found["value"]
        if name == "href":
            value = self._address(value)
        elif name in ("fill", "clip-path", "mask"):
            value = _INSIDE.sub(lambda part: f"url(#{self._place(part['place'])})", value)
        else:
            value = " ".join(self._place(place) for place in value.split())
        return f' {name}="{value}"'

    def _address(self, address: str) -> str:
        if address.startswith("#"):
            return "#" + self._place(address[1:])
        found = _PAGE.match(address)
        if found is None:
            return address
        return f"#{found['page']}{MARK}{found['place']}" if found["place"] else f"#{found['page']}"

    def _place(self, place: str) -> str:
        shared = not self._page or place.startswith("mist-") or place == "blocked"
        return place if shared else f"{self._page}{MARK}{place}"
