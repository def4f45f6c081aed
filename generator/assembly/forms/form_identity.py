"""The id of a form: short enough to copy by hand, and another one for every other content."""

import json
from collections.abc import Mapping
from hashlib import sha256
from typing import Any

# no I, L, O and U: they are misread as 1, 0 and V
CHARACTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
LENGTH = 8


def form_id(plain: Mapping[str, Any]) -> str:
    """Return eight characters that identify all that is printed on a form, but not its person."""
    printed = {name: value for name, value in plain.items() if name != "person"}
    text = json.dumps(printed, ensure_ascii=False, sort_keys=True)
    number = int.from_bytes(sha256(text.encode("utf-8")).digest(), "big")
    places = (number // len(CHARACTERS) ** place % len(CHARACTERS) for place in range(LENGTH))
    return "".join(CHARACTERS[place] for place in places)
