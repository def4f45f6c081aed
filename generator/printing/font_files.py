"""The font files of the papers: each is there and whole, or no paper is set with another weight."""

import sys
from array import array
from pathlib import Path
from struct import unpack_from

CUTS = (
    *("hepta-slab-700", "familjen-grotesk-400", "familjen-grotesk-700"),
    *("sometype-mono-400", "sometype-mono-700", "guidecoat-symbols-400"),
    *("guidecoat-names-400", "guidecoat-names-700"),
)
_HEAD = 12
_ENTRY = 16


def unusable_cuts(folder: Path) -> tuple[str, ...]:
    """Return the cuts whose files are missing, cut off or damaged."""
    return tuple(cut for cut in CUTS if not _is_whole(folder / f"{cut}.ttf"))


def _is_whole(file: Path) -> bool:
    """Compare each table of a font with its checksum (OpenType, 'Table directory')."""
    data = file.read_bytes() if file.is_file() else b""
    if len(data) < _HEAD:
        return False
    count = unpack_from(">4xH", data)[0]
    if len(data) < _HEAD + count * _ENTRY:
        return False
    return count > 0 and all(
        _sum_of(data, tag, offset, length) == checksum
        for tag, checksum, offset, length in (
            unpack_from(">4sLLL", data, _HEAD + place * _ENTRY) for place in range(count)
        )
    )


def _sum_of(data: bytes, tag: bytes, offset: int, length: int) -> int | None:
    table = data[offset : offset + length]
    if len(table) < length:
        return None
    if tag == b"head":
        # the adjustment of the whole file stands in this table and is left out of its sum
        table = table[:8] + bytes(4) + table[12:]
    words = array("I", table + bytes(-length % 4))
    if sys.byteorder == "little":
        words.byteswap()
    return sum(words) & 0xFFFFFFFF
