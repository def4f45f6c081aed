"""Read a PDF back with an independent library, as a screen reader or a printer would."""

from collections.abc import Iterator
from io import BytesIO
from pathlib import Path
from typing import Any

from pypdf import PdfReader

FONTS = Path(__file__).parents[2] / "site_theme" / "fonts_print"


def page_texts(document: bytes) -> list[str]:
    """Read the text of every page, with single spaces between the words."""
    return [" ".join(page.extract_text().split()) for page in PdfReader(BytesIO(document)).pages]


def whole_text(document: bytes) -> str:
    """Read the text of all pages as one."""
    return " ".join(page_texts(document))


def squeezed(text: str) -> str:
    """Drop all space: a reader of PDF guesses where spaces were."""
    return "".join(text.split())


def tags(document: bytes) -> Iterator[tuple[str, dict[str, Any]]]:
    """Walk the structure tree and give each element's kind with its own entries."""
    root = PdfReader(BytesIO(document)).trailer["/Root"]["/StructTreeRoot"]
    waiting = [root.get_object()]
    while waiting:
        element = waiting.pop()
        if not hasattr(element, "get"):
            continue
        if "/S" in element:
            yield str(element["/S"]), element
        children = element.get("/K", [])
        listed = children if isinstance(children, list) else [children]
        waiting.extend(child.get_object() for child in reversed(listed))


def font_descriptors(document: bytes) -> list[dict[str, Any]]:
    """Collect the descriptor of every font that a page or a drawing on it uses."""
    found: list[dict[str, Any]] = []
    waiting = [page["/Resources"].get_object() for page in PdfReader(BytesIO(document)).pages]
    while waiting:
        resources = waiting.pop()
        for font in resources.get("/Font", {}).values():
            inner = font.get_object()["/DescendantFonts"][0].get_object()
            found.append(inner["/FontDescriptor"].get_object())
        for drawing in resources.get("/XObject", {}).values():
            if "/Resources" in drawing.get_object():
                waiting.append(drawing.get_object()["/Resources"].get_object())
    return found
