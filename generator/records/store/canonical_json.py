"""Plain data as one line of text, the same text for the same data."""

import json
import zlib
from typing import Any


def plain_text(value: Any) -> str:
    """Return JSON with its names in order and without spaces."""
    return json.dumps(value, ensure_ascii=False, sort_keys=True, separators=(",", ":"))


def packed(value: Any) -> bytes:
    """Return plain data as compressed bytes, for what is long and seldom read."""
    return zlib.compress(plain_text(value).encode("utf-8"))


def unpacked(data: bytes) -> Any:
    """Return back what `packed` took."""
    return json.loads(zlib.decompress(data))
