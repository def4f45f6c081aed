"""A workbook unpacked within limits and packed anew, so that no part of it can do harm."""

import zipfile
from io import BytesIO

MOST_BYTES = 8_000_000
MOST_PARTS = 300
# no part of a workbook declares entities; a part that does is made to hurt
_DECLARATIONS = (b"<!DOCTYPE", b"<!ENTITY")
_OTHER_WIDTHS = (b"\xff\xfe", b"\xfe\xff", b"<\x00", b"\x00<")


class WorkbookRefused(ValueError):
    """A file that is not read at all."""


def safely_packed(data: bytes) -> BytesIO:
    """Return the same workbook with parts that are as long as they say and declare nothing.

    Raises WorkbookRefused for one that holds too much or declares entities, and whatever the
    library raises for one that is damaged.
    """
    parts = _parts(data)
    _refuse_declarations(parts)
    return _packed_plainly(parts)


def _parts(data: bytes) -> dict[str, bytes]:
    """Unpack every part, never more than it says and never more than the limit."""
    with zipfile.ZipFile(BytesIO(data)) as archive:
        listed = archive.infolist()
        if len(listed) > MOST_PARTS or sum(part.file_size for part in listed) > MOST_BYTES:
            raise WorkbookRefused(f"this workbook unpacks to more than {MOST_BYTES // 10**6} MB")
        parts = {}
        for part in listed:
            # a read without a number of bytes unpacks all, whatever the part says of its size
            with archive.open(part) as unpacking:
                parts[part.filename] = unpacking.read(MOST_BYTES)
    return parts


def _refuse_declarations(parts: dict[str, bytes]) -> None:
    for part in parts.values():
        if part.startswith(_OTHER_WIDTHS) or any(word in part for word in _DECLARATIONS):
            raise WorkbookRefused("this workbook holds parts that no spreadsheet writes")


def _packed_plainly(parts: dict[str, bytes]) -> BytesIO:
    plain = BytesIO()
    with zipfile.ZipFile(plain, "w", zipfile.ZIP_STORED) as archive:
        for name, part in parts.items():
            archive.writestr(zipfile.ZipInfo(name), part)
    return plain
