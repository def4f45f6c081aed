"""Drawings of the course: they go into pages as they are, so they hold shapes and words only."""

import re
from collections.abc import Iterator
from pathlib import Path
from xml.etree import ElementTree

from generator.diagnostics import Place, Problem

RULE = "figure-drawing"
_SHAPES = frozenset(
    (
        *("svg", "g", "defs", "title", "desc", "text", "tspan", "path", "rect", "circle"),
        *("ellipse", "line", "polyline", "polygon", "pattern", "clipPath", "mask", "marker"),
        *("linearGradient", "radialGradient", "stop", "use", "symbol"),
    )
)
_NAMESPACE = "{http://www.w3.org/2000/svg}"
_OUTSIDE = re.compile(r"url\((?!#)|^\s*(?:javascript|data|https?):|^//", re.IGNORECASE)


def drawing_problems(course: Path) -> Iterator[Problem]:
    """Return what in the drawings of a course could run, load or break out of its page."""
    for path in sorted((course / "figures").glob("*.svg")):
        shown = f"{course.name}/figures/{path.name}"
        try:
            text = path.read_text("utf-8-sig")
        except UnicodeDecodeError:
            message = "the file is not UTF-8 text"
            yield Problem(Place(shown, 1, 1), "error", "file-unreadable", message)
            continue
        yield from _problems(text, shown)


def _problems(text: str, shown: str) -> Iterator[Problem]:
    # a page reads these in another way than a drawing program does
    for sign in re.finditer(r"<[!?]", text):
        line = text.count("\n", 0, sign.start()) + 1
        column = sign.start() - text.rfind("\n", 0, sign.start())
        message = f"'{sign[0]}' begins a note or a declaration, which has no place in a page"
        yield Problem(Place(shown, line, column), "error", RULE, message, "take it out")
        return
    try:
        root = ElementTree.fromstring(text)
    except ElementTree.ParseError as error:
        line, column = error.position
        place = Place(shown, line, column + 1)
        yield Problem(place, "error", RULE, "the drawing cannot be read from here on", _WHOLE)
        return
    for said in dict.fromkeys(_refused(root)):
        yield Problem(Place(shown, 1, 1), "error", RULE, said, "draw it with shapes and words")


def _refused(root: ElementTree.Element) -> Iterator[str]:
    if root.tag != f"{_NAMESPACE}svg":
        yield "the drawing does not begin with <svg xmlns=...>"
    for element in root.iter():
        name = str(element.tag).removeprefix(_NAMESPACE)
        if name not in _SHAPES:
            yield f"a drawing holds no '{name.rpartition('}')[2]}'"
        for attribute, value in element.attrib.items():
            short = attribute.rpartition("}")[2]
            if short.lower().startswith("on"):
                yield f"'{short}' runs a program"
            elif (short == "href" and not value.startswith("#")) or _OUTSIDE.search(value):
                yield f"'{short}' leads out of the drawing"


_WHOLE = "save it again as plain SVG"
