"""Which characters no typeface of the papers has, asked of the engine before anything is kept."""

from collections.abc import Iterable
from functools import cache
from pathlib import Path

from generator.printing.typesetter import has_characters

WAY_OUT = "write the name in Latin, Greek or Cyrillic letters"


def unsettable(texts: Iterable[str], fonts: Path) -> tuple[str, ...]:
    """Return the characters of some texts that cannot be printed, each once, in their order.

    fonts  the folder with the font files
    Raises PrintingRefused where a typeface of the papers is missing altogether.
    """
    characters = tuple(dict.fromkeys("".join(texts)))
    return tuple(_missing(characters, fonts.resolve()))


def _missing(characters: tuple[str, ...], fonts: Path) -> list[str]:
    if not characters or _can_set(characters, fonts):
        return []
    if len(characters) == 1:
        return list(characters)
    half = len(characters) // 2
    return [*_missing(characters[:half], fonts), *_missing(characters[half:], fonts)]


@cache
def _can_set(characters: tuple[str, ...], fonts: Path) -> bool:
    # apart from each other, so that none of them changes how another is written
    return has_characters(" ".join(characters), fonts=fonts)
