"""What the tests in Node are handed: vectors that both markers share, the units and the bundles."""

import json
from collections.abc import Iterator
from itertools import product
from pathlib import Path
from typing import Any

from generator.marking import response_as_plain
from generator.marking.typed_number import read_typed
from generator.website import bundles, sitting
from generator.website.question_html import marking_data
from generator.website.units_script import units_script
from tests.marking.vectors import marking_vectors

NUMBERS = ("0", "7", "12", "1234", "000", "")
MIDDLES = ("", ".", ",", "/", " ", "½", "1/2", " 1/2", ",5", ".25", ",234", "/0", "⅞", "\u00a03/4")
BEFORE = ("", "-", "\u2212", "+", "- ", " ", "=")
BEHIND = ("", " ", "µm", " mil", "\u00a0°C", ".", "-")


def write_shared(folder: Path) -> None:
    """Write all of it into a folder."""
    (folder / "units.js").write_text(units_script(), encoding="utf-8")
    for name, content in (
        ("vectors", list(_vectors())),
        ("numbers", list(_numbers())),
        ("bundles", _bundles()),
    ):
        (folder / f"{name}.json").write_text(json.dumps(content), encoding="utf-8")


def _vectors() -> Iterator[dict[str, Any]]:
    for vector in marking_vectors():
        (data,) = marking_data((vector.question,))["variants"]
        share = [vector.expected.numerator, vector.expected.denominator]
        answer = response_as_plain(vector.response)
        yield {"id": vector.question["id"], "data": data, "answer": answer, "share": share}


def _numbers() -> Iterator[dict[str, Any]]:
    """Give texts as they are typed, with what the marker of papers reads in them, or None."""
    for parts in product(BEFORE, NUMBERS, MIDDLES, BEHIND):
        text = "".join(parts)
        read = read_typed(text)
        found = None if isinstance(read, str) else [str(read.value), read.unit]
        yield {"text": text, "read": found}


def _bundles() -> dict[str, list[str]]:
    course = list(bundles.SCRIPTS)
    search = list(bundles.SEARCH_SCRIPTS)
    return {
        "course": course,
        "search": [*course, *search],
        "one file": [*course, *search, "one_file"],
        "exam": list(sitting.SCRIPTS),
    }
