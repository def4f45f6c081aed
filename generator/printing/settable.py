"""Which signs no typeface of the papers has, asked of the engine before anything is kept."""

from collections.abc import Iterable
from functools import cache
from pathlib import Path

from generator.printing.typesetter import has_signs

WAY_OUT = "write the name in Latin, Greek or Cyrillic letters"


def unsettable(texts: Iterable[str], fonts: Path) -> tuple[str, ...]:
    """Return the signs of some texts that cannot be printed, each once, in their order.

    fonts  the folder with the font files
    Raises PrintingRefused where a typeface of the papers is missing altogether.
    """
    signs = tuple(dict.fromkeys("".join(texts)))
    return tuple(_missing(signs, fonts.resolve()))


def _missing(signs: tuple[str, ...], fonts: Path) -> list[str]:
    if not signs or _can_set(signs, fonts):
        return []
    if len(signs) == 1:
        return list(signs)
    half = len(signs) // 2
    return [*_missing(signs[:half], fonts), *_missing(signs[half:], fonts)]


@cache
def _can_set(signs: tuple[str, ...], fonts: Path) -> bool:
    # apart from each other, so that none of them changes how another is written
    return has_signs(" ".join(signs), fonts=fonts)
