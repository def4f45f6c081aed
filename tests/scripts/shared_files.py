"""What the tests in Node are handed: vectors that both markers share, the units and the bundles."""

import json
from collections.abc import Iterator
from fractions import Fraction
from itertools import product
from pathlib import Path
from random import Random
from typing import Any

from generator.marking import mark_response, response_as_plain, response_from_plain
from generator.marking.answers.typed_number import read_typed
from generator.website.context.bundles import SCRIPTS as COURSE_SCRIPTS
from generator.website.context.bundles import SEARCH_SCRIPTS
from generator.website.exam.exam_page import SCRIPTS as EXAM_SCRIPTS
from generator.website.pages.units_script import units_script
from generator.website.questions.marking_data import marking_data
from tests.marking.vectors import marking_vectors

NUMBERS = ("0", "7", "12", "1234", "000", "")
MIDDLES = ("", ".", ",", "/", " ", "½", "1/2", " 1/2", ",5", ".25", ",234", "/0", "⅞", "\u00a03/4")
BEFORE = ("", "-", "\u2212", "+", "- ", " ", "=")
BEHIND = ("", " ", "µm", " mil", "\u00a0°C", ".", "-")
ALPHABET = "0123456789.,/ -½¼⅔⅞µm\u00a0="
RANDOM_TEXTS = 3000
# sizes of units: NIST SP 811, Appendix B
UNITS = {
    ("um", "µm", "127.5", "128.5"): ("0.128 mm", "128 microns", "5.04 mil", "128 g", "128 mm"),
    ("degC", "°C", "19.5", "20.5"): ("68 °F", "68 f", "293.15 K", "20"),
    ("K", "K", "9.5", "10.5"): ("18 °F", "10 °C", "18 °F difference", "10"),
    ("us_gal", "US gal", "1", "2"): ("4 L", "1.5 gallons", "1 imp gal", "192 US fl oz"),
}


def write_shared(folder: Path) -> None:
    """Write all of it into a folder."""
    (folder / "units.js").write_text(units_script(), encoding="utf-8")
    for name, content in (
        ("vectors", [*_vectors(), *_unit_vectors()]),
        ("numbers", list(_numbers())),
        ("bundles", _bundles()),
    ):
        (folder / f"{name}.json").write_text(json.dumps(content), encoding="utf-8")


def _vectors() -> Iterator[dict[str, Any]]:
    for vector in marking_vectors():
        answer = response_as_plain(vector.response)
        yield _vector(vector.question, answer, vector.expected)


def _unit_vectors() -> Iterator[dict[str, Any]]:
    for (unit, symbol, low, high), texts in UNITS.items():
        key = {"unit": unit, "unit_symbol": symbol, "low": low, "high": high, "slips": []}
        key |= {"shown": low, "step": "1", "says": ""}
        question = {"id": f"bench/{unit}", "kind": "numeric", "stem": "?", "key": key}
        for text in texts:
            answer = {"form": "typed", "text": text}
            yield _vector(
                question, answer, mark_response(question, response_from_plain(answer)).share
            )


def _vector(question: dict[str, Any], answer: Any, share: Fraction) -> dict[str, Any]:
    (data,) = marking_data((question,))["variants"]
    earned = [share.numerator, share.denominator]
    return {"id": question["id"], "data": data, "answer": answer, "share": earned}


def _numbers() -> Iterator[dict[str, Any]]:
    """Return texts as they are typed, with what the marker of papers reads in them, or None."""
    chance = Random(1)
    texts = ["".join(parts) for parts in product(BEFORE, NUMBERS, MIDDLES, BEHIND)]
    texts += ["".join(chance.choices(ALPHABET, k=1 + at % 9)) for at in range(RANDOM_TEXTS)]
    for text in texts:
        read = read_typed(text)
        found = None if isinstance(read, str) else [str(read.value), read.unit]
        yield {"text": text, "read": found}


def _bundles() -> dict[str, list[str]]:
    course = list(COURSE_SCRIPTS)
    search = list(SEARCH_SCRIPTS)
    return {
        "course": course,
        "search": [*course, *search],
        "one file": [*course, *search, "one_file"],
        "exam": list(EXAM_SCRIPTS),
    }
