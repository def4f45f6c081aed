"""Make the reports on paper: for a person, for a class, and the profile of a new hire."""

from collections.abc import Mapping
from pathlib import Path
from typing import Any

from generator.printing.content import inline_nodes
from generator.printing.paper import PaperSize, sheet_of_paper
from generator.printing.typesetter import typeset

# texts of the bank, which may hold light markup
MARKED_UP = frozenset(("text", "took", "stem"))


def report(
    content: Mapping[str, Any], *, paper: PaperSize, fonts: Path, large_print: bool = False
) -> bytes:
    """Set a report as a tagged PDF.

    content  the plain JSON of a report as `generator.reports` gives it
    Raises PrintingRefused when it cannot be set.
    """
    shown = _with_nodes(dict(content)) | sheet_of_paper(paper, large_print)
    return typeset(f"report_{content['kind']}", shown, fonts=fonts)


def _with_nodes(value: Any, name: str = "") -> Any:
    if isinstance(value, Mapping):
        return {key: _with_nodes(inner, key) for key, inner in value.items()}
    if isinstance(value, list | tuple):
        return [_with_nodes(inner, name) for inner in value]
    return inline_nodes(value) if name in MARKED_UP and isinstance(value, str) else value
