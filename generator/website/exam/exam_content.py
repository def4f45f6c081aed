"""What a page to answer a form on a screen shows.

Only named fields are copied, so that no key can slip into the page unseen. Names of items stay
out as well: some of them say what is right. So does the seed: with the bank it gives the key.
"""

from collections.abc import Iterable
from typing import Any, Final

from generator.issued import (
    FACTS,
    ForKey,
    IssuedEntry,
    IssuedExhibit,
    IssuedForm,
    LetteredText,
    NumberedText,
)
from generator.website.questions import asks_unit
from generator.wording import gate_rule, marks_text, must_pass, time_and_marks, ways


def sitting_content(form: IssuedForm) -> dict[str, Any]:
    """Choose what the page holds; `form` is the plain JSON of one form."""
    gate = must_pass(form)
    return {
        "form_id": str(form["form_id"] or ""),
        "title": str(form["title"] or ""),
        "edition": str(form["edition"] or ""),
        "person": str(form["person"] or ""),
        "label": str(form["form"]),
        "minutes": int(form["minutes"]),
        "rules": time_and_marks(form, "screen"),
        "gate": gate_rule(form),
        "ways": ways(form, "screen"),
        "cautions": _cautions(form),
        "constants": [str(constant) for constant in form["constants"]],
        "questions": [_question(entry, gate) for entry in form["questions"]],
    }


def _cautions(form: IssuedForm) -> list[str]:
    """Leave out what is shown beside a question."""
    beside = {entry["question"].get("caution") for entry in form["questions"]}
    return [str(caution) for caution in form["cautions"] if caution not in beside]


def _question(entry: IssuedEntry, gate: frozenset[int]) -> dict[str, Any]:
    question = entry["question"]
    kind, caution = question["kind"], question["caution"]
    return {
        "number": int(entry["number"]),
        "marks": marks_text(int(entry["marks"])),
        "must_pass": int(entry["number"]) in gate,
        "kind": kind,
        "task": FACTS.of(kind).on_screen,
        "stem": str(question["stem"]),
        "caution": str(caution) if caution else "",
        "sheet": _table(question["sheet"]),
        "table": _table(question["table"]),
        "asks_unit": asks_unit(question),
        # the templates of the site look for what they show below this name
        "key": _SHOWN.of(question),
    }


def _table(table: IssuedExhibit | None) -> dict[str, Any] | None:
    if table is None:
        return None
    return {
        "title": str(table["title"]),
        "columns": [str(column) for column in table.get("columns", ())],
        "rows": [[str(cell) for cell in row] for row in table["rows"]],
    }


def _lettered(entries: Iterable[LetteredText]) -> list[dict[str, str]]:
    return [{"letter": each["letter"], "text": each["text"]} for each in entries]


def _numbered(entries: Iterable[NumberedText]) -> list[dict[str, str]]:
    return [{"number": each["number"], "text": each["text"]} for each in entries]


_SHOWN: Final = ForKey[dict[str, Any]](
    numeric=lambda key: {"unit_symbol": key["unit_symbol"]},
    choice=lambda key: {"options": _lettered(key["options"])},
    multiple_response=lambda key: {"options": _lettered(key["options"])},
    order=lambda key: {"steps": _lettered(key["steps"])},
    match=lambda key: {"left": _numbered(key["left"]), "right": _lettered(key["right"])},
    written=lambda key: {},
)
