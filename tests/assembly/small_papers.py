"""A small bank with many items of each kind, for papers that a test plans itself."""

from collections.abc import Mapping
from pathlib import Path
from textwrap import dedent

from generator.bank import Bank, Entry
from generator.bank.models import Blueprint
from tests.questions.small_bank import (
    FIRST_JOB,
    FULL,
    PASTE,
    WASH_ORDER,
    WET_FILM,
    bank_of,
    items,
)

EXAM_CHOICE = FIRST_JOB.replace("use: study", "use: exam")
ITEMS = {
    "items/film_build/films.yml": items(wet=WET_FILM, wet_again=WET_FILM),
    "items/filler/mix.yml": items(
        paste=PASTE,
        kept=FIRST_JOB,
        **{f"choice_{number}": EXAM_CHOICE for number in range(6)},
    ),
    "items/filler/shape.yml": items(**{f"choice_{number}": EXAM_CHOICE for number in range(4)}),
    "items/cleaning/wash.yml": items(order=WASH_ORDER, first=FIRST_JOB),
}
RECORDS = {name: text for name, text in FULL.items() if not name.startswith("items/")}


def plan(*cells: str, pass_percent: int = 80) -> str:
    """Write a blueprint from its cells."""
    lines = "".join(f"  - {cell}\n" for cell in cells)
    return f"title: Check\nminutes: 20\npass_percent: {pass_percent}\ncells:\n{lines}"


def papers(
    folder: Path, blueprint: str, more: Mapping[str, str] | None = None
) -> tuple[Bank, Entry[Blueprint]]:
    """Return the bank of this file with a blueprint named 'check', and that blueprint."""
    files = {**ITEMS, **RECORDS, **(more or {}), "blueprints/check.yml": dedent(blueprint)}
    bank = bank_of(folder, files)
    return bank, bank.blueprints["check"]
