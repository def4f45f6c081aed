"""The cautions that come with the answers: each in full once, and named by its place after that."""

from collections.abc import Sequence
from typing import Any

from generator.issued import IssuedEntry
from generator.wording import listed, typst_of_text


def told_cautions(entries: Sequence[IssuedEntry]) -> list[dict[str, Any]]:
    """Return for each question of a form the cautions told in full, and where the others are.

    A form issued before cautions moved to the answers has none here.
    """
    first: dict[str, str] = {}
    told = []
    for entry in entries:
        texts = [caution["text"] for caution in entry["question"].get("cautions", ())]
        again = dict.fromkeys(first[text] for text in texts if text in first)
        fresh = [typst_of_text(text) for text in texts if text not in first]
        told.append({"cautions": fresh, "cautions_at": _place(list(again))})
        for text in texts:
            first.setdefault(text, str(entry["number"]))
    return told


def _place(numbers: Sequence[str]) -> str:
    if not numbers:
        return ""
    return f"Caution: see question{'s' * (len(numbers) > 1)} {listed(numbers)}."
