"""Forms to answer on a screen: a small one with every kind, and forms of the real bank."""

from functools import cache
from typing import Any

from generator.assembly import build_forms, form_as_plain
from generator.assembly.forms.form_plain import CONSTANTS
from tests.records.real_bank import real_bank
from tests.website.small_questions import (
    CHOICE,
    MATCH,
    ORDER,
    SEVERAL,
    WET_FILM,
    WITH_UNIT,
    WRITTEN,
)

FORM_ID = "7KQ2M4TX"
KINDS = (CHOICE, SEVERAL, WET_FILM[0], ORDER, MATCH, WRITTEN, WITH_UNIT)


def small_form(person: str = "", **more: Any) -> dict[str, Any]:
    """Return a form with one question of each kind; the second one must be right."""
    return {
        "form_id": FORM_ID,
        "title": "Film build check",
        "blueprint": "film_build_check",
        "form": "A",
        "edition": "2026 spring",
        "seed": "a seed that nobody may see",
        "minutes": 25,
        "marks": 8,
        "pass_percent": 80,
        "pass_marks": 7,
        "gate": [2],
        "person": person,
        "guesser_passes": 0.0123,
        "mastery_marks": 8,
        "questions": [
            {
                "number": number,
                "marks": 2 if question["kind"] == "written" else 1,
                "must_pass": number == 2,
                "question": question,
            }
            for number, question in enumerate(KINDS, start=1)
        ],
        "constants": list(CONSTANTS),
        "cautions": [ORDER["caution"], "Air-fed protection stays on until the booth is clear."],
        **more,
    }


@cache
def real_form(blueprint: str) -> dict[str, Any]:
    """Return the form A of a blueprint of the real bank."""
    bank = real_bank()
    (form,) = build_forms(bank, bank.blueprints[blueprint], "on screen", ("A",))
    return form_as_plain(form)
