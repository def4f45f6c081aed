"""The id of a form: short enough to copy by hand, and another one for every other content."""

import json
from collections.abc import Mapping
from hashlib import sha256
from typing import Any

# no I, L, O and U: they are misread as 1, 0 and V
SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
LENGTH = 8


def form_id(plain: Mapping[str, Any]) -> str:
    """Return eight signs that stand for all that is printed on a form, but not for its person."""
    printed = {name: value for name, value in plain.items() if name != "person"}
    text = json.dumps(printed, ensure_ascii=False, sort_keys=True)
    number = int.from_bytes(sha256(text.encode("utf-8")).digest(), "big")
    places = (number // len(SIGNS) ** place % len(SIGNS) for place in range(LENGTH))
    return "".join(SIGNS[place] for place in places)
