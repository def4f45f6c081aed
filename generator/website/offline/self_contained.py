"""A document that opens by a double click: all is inside it, and its policy lets nothing in.

A script or style is allowed by its hash (Content Security Policy level 3), never by a host.
"""

import re
from base64 import b64encode
from hashlib import sha256
from html import escape
from pathlib import Path

_ASSET = re.compile(r"url\((fonts/[a-z0-9-]+\.woff2|mark\.svg)\)")
_KINDS = {".woff2": "font/woff2", ".svg": "image/svg+xml"}


class BrokenScript(Exception):
    """A script would end its own element; the text says which."""


def policy(script: str, style: str) -> str:
    """Return the content policy: only this script and this style, and no address at all."""
    return (
        f"default-src 'none'; script-src '{_print(script)}'; "
        f"style-src '{_print(style)}'; font-src data:; img-src data:; "
        "base-uri 'none'; form-action 'none'"
    )


def policy_without_script(style: str) -> str:
    """Return the content policy of a page that only has this style and its fonts."""
    return (
        f"default-src 'none'; style-src '{_print(style)}'; font-src data:; "
        "base-uri 'none'; form-action 'none'"
    )


def whole_script(text: str) -> str:
    """Return a script back, or raise BrokenScript where it would end its own element."""
    if "</script" in text or "<!--" in text:
        raise BrokenScript("a script of the course holds the end of a script element")
    return text


def with_fonts(style: str, assets: Path) -> str:
    """Put the typefaces and the mark that a style sheet names into it.

    assets  the folder that the style sheet stands in
    """

    def inside(found: re.Match[str]) -> str:
        path = assets / found[1]
        return f"url({data_address(path, _KINDS[path.suffix])})"

    return _ASSET.sub(inside, style)


def data_address(path: Path, kind: str) -> str:
    """Return a file as an address that holds it; `kind` is its media type."""
    return f"data:{kind};base64,{b64encode(path.read_bytes()).decode('ascii')}"


def licences(assets: Path) -> str:
    """Return the licences of the typefaces as text for a page."""
    files = sorted((assets / "fonts").glob("LICENCE-*.txt"))
    return escape("\n\n".join(path.read_text(encoding="utf-8").strip() for path in files))


def _print(text: str) -> str:
    return "sha256-" + b64encode(sha256(text.encode("utf-8")).digest()).decode("ascii")
