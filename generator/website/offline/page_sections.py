"""Pages of a site as sections of one document: every place gets its page's name in front."""

import re
from collections.abc import Sequence
from html.parser import HTMLParser
from typing import NamedTuple

from jinja2 import Environment
from markupsafe import Markup

from generator.website.context import BuiltPage

MARK = "--"
# places that all pages share: the specks of the panels and the caution sign
_SHARED = re.compile(r"(?:mist-[0-9]+|blocked|caution-sign)\Z")
_PLACES = re.compile(
    r'\s(?P<name>id|for|href|aria-labelledby|aria-describedby|fill|clip-path|mask)="(?P<value>[^"]*)"'
)
_PAGE = re.compile(r"(?P<page>[a-z0-9_-]+)\.html(?:#(?P<place>.*))?\Z")
_INSIDE = re.compile(r"url\(#(?P<place>[^)]+)\)\Z")


class Section(NamedTuple):
    """One page inside the one document; `name` is its place in it."""

    name: str
    title: str
    kind: str
    html: Markup


class Frame(NamedTuple):
    """What stands around every page."""

    top: Markup
    foot: Markup


def page_sections(
    pages: Sequence[BuiltPage], site_name: str, templates: Environment
) -> tuple[Frame, tuple[Section, ...]]:
    """Return pages as sections, and the frame that stands around them all.

    pages      in reading order; the first one is the course home
    templates  the theme's, of which frame/ is used
    """
    sections = tuple(
        Section(
            page.path.removesuffix(".html"),
            _title(page, site_name),
            f"page-{page.kind}",
            Markup(_placed(page.html + _filled("turn", page, templates), page.path)),
        )
        for page in pages
    )
    top, foot = (Markup(_placed(_filled(part, pages[0], templates))) for part in ("top", "foot"))
    return Frame(top, foot), sections


def _title(page: BuiltPage, site_name: str) -> str:
    return page.title if page.kind == "home" else f"{page.title} · {site_name}"


def _filled(part: str, page: BuiltPage, templates: Environment) -> str:
    return templates.get_template(f"frame/{part}.html").render(built=page)


def _placed(html: str, path: str = "") -> str:
    writer = _Placer(path.removesuffix(".html"))
    writer.feed(html)
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
        return place if not self._page or _SHARED.match(place) else f"{self._page}{MARK}{place}"
