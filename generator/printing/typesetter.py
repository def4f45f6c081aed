"""Run the typesetter: the one place that knows which engine makes the PDF."""

import json
import re
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from threading import local
from typing import Any

import typst

from generator.printing.font_files import unusable_cuts

TEMPLATES = Path(__file__).parent / "templates"
FAMILIES = (
    "Hepta Slab",
    "Familjen Grotesk",
    "Sometype Mono",
    "Guidecoat Symbols",
    # Latin, Greek and Cyrillic letters of people's names
    "Guidecoat Names",
)
# A fixed moment keeps the bytes of a paper the same on every run.
_TIMESTAMP = 0


class PrintingRefused(ValueError):
    """A paper cannot be printed; the message says why and what to change."""


class CharacterWithoutFont(PrintingRefused):
    """A character of the text is in no font."""


def typeset(template: str, content: Mapping[str, Any], *, fonts: Path) -> bytes:
    """Set one document and return its PDF.

    `template` names a file of `TEMPLATES` without its ending; `content` is plain JSON.
    Raises PrintingRefused when a font is missing or the engine cannot make an accessible PDF.
    """
    compiler = _compiler(fonts.resolve())
    try:
        made, warnings = compiler.compile_with_warnings(
            input=TEMPLATES / f"{template}.typ",
            format="pdf",
            sys_inputs={"content": json.dumps(content)},
            pdf_standards="ua-1",
            timestamp=_TIMESTAMP,
        )
    except typst.TypstError as refused:
        reason = " ".join((refused.message, *refused.hints))
        if "could not be displayed with font" in reason:
            raise _without_font(template, content, reason) from refused
        raise _refusal(template, content, reason) from refused
    if warnings or not isinstance(made, bytes):
        raise _refusal(template, content, "; ".join(map(str, warnings)) or "no single PDF")
    return made


def has_characters(text: str, *, fonts: Path) -> bool:
    """Return whether the typefaces of the papers have every character of a text.

    Raises PrintingRefused when a font is missing.
    """
    try:
        typeset("characters", {"text": text, "corner": "characters"}, fonts=fonts)
    except CharacterWithoutFont:
        return False
    return True


@cache
def _fonts(fonts: Path) -> typst.Fonts:
    # read and looked at once for all papers of a run
    known = typst.Fonts(include_system_fonts=False, font_paths=[fonts])
    missing = sorted(set(FAMILIES) - set(known.families()))
    if missing:
        raise PrintingRefused(f"No font file in {fonts} for: {', '.join(missing)}.")
    damaged = unusable_cuts(fonts)
    if damaged:
        raise PrintingRefused(f"Missing or damaged in {fonts}: {', '.join(damaged)}.")
    return known


class _Engines(local):
    """The engines of one thread; one engine never sets two papers at once."""

    def __init__(self) -> None:
        self.by_fonts: dict[Path, typst.Compiler] = {}


_ENGINES = _Engines()


def _compiler(fonts: Path) -> typst.Compiler:
    engines = _ENGINES.by_fonts
    if fonts not in engines:
        engines[fonts] = typst.Compiler(
            root=TEMPLATES, font_paths=_fonts(fonts), ignore_system_fonts=True
        )
    return engines[fonts]


def _refusal(template: str, content: Mapping[str, Any], reason: str) -> PrintingRefused:
    return PrintingRefused(f"Cannot print the {_document(template, content)}: {reason}.")


def _without_font(template: str, content: Mapping[str, Any], reason: str) -> CharacterWithoutFont:
    named = re.search(r'text `?"(.+?)"`? could not', reason, re.DOTALL)
    characters = named[1] if named else "a character of the text"
    return CharacterWithoutFont(
        f"Cannot print the {_document(template, content)}: no typeface of the papers has "
        f"'{characters}'; write it in Latin, Greek or Cyrillic letters."
    )


def _document(template: str, content: Mapping[str, Any]) -> str:
    which = f"of form {content['form']}" if "form" in content else f"'{content.get('corner')}'"
    return f"{template.replace('_', ' ')} {which}"
