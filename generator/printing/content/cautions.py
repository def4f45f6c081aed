"""The cautions that come with the answers: each in full once, and named by its place after that."""

from collections.abc import Mapping, Sequence
from typing import Any

from generator.printing.content.form_facts import listed
from generator.printing.content.markup import block_nodes


def told_cautions(entries: Sequence[Mapping[str, Any]]) -> list[dict[str, Any]]:
    """Return for each question of a form the cautions told in full, and where the others stand.

    A form issued before cautions moved to the answers has none here.
    """
    first: dict[str, str] = {}
    told = []
    for entry in entries:
        texts = [str(caution["text"]) for caution in entry["question"].get("cautions", ())]
        again = dict.fromkeys(first[text] for text in texts if text in first)
        fresh = [block_nodes(text) for text in texts if text not in first]
        told.append({"cautions": fresh, "cautions_at": _place(list(again))})
        for text in texts:
            first.setdefault(text, str(entry["number"]))
    return told


def _place(numbers: Sequence[str]) -> str:
    if not numbers:
        return ""
    return f"Caution: see question{'s' * (len(numbers) > 1)} {listed(numbers)}."
