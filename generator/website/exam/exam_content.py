"""What a page to answer a form on a screen shows.

Only named fields are copied, so that no key can slip into the page unseen. Names of items stay
out as well: some of them say what is right. So does the seed: with the bank it gives the key.
"""

from collections.abc import Callable, Mapping
from typing import Any

from generator.website.questions import asks_unit
from generator.wording import KIND_WORDS, gate_rule, marks_text, must_pass, time_and_marks, ways

Plain = Mapping[str, Any]
_NAMED = ("form_id", "title", "edition", "person")


def sitting_content(form: Plain) -> dict[str, Any]:
    """Choose what the page holds; `form` is the plain JSON of one form."""
    gate = must_pass(form)
    return {
        **{name: str(form[name] or "") for name in _NAMED},
        "label": str(form["form"]),
        "minutes": int(form["minutes"]),
        "rules": time_and_marks(form, "screen"),
        "gate": gate_rule(form),
        "ways": ways(form, "screen"),
        "cautions": _cautions(form),
        "constants": [str(constant) for constant in form["constants"]],
        "questions": [_question(entry, gate) for entry in form["questions"]],
    }


def _cautions(form: Plain) -> list[str]:
    """Leave out what is shown beside a question."""
    beside = {entry["question"].get("caution") for entry in form["questions"]}
    return [str(caution) for caution in form["cautions"] if caution not in beside]


def _question(entry: Plain, gate: frozenset[int]) -> dict[str, Any]:
    question = entry["question"]
    kind, caution = str(question["kind"]), question["caution"]
    return {
        "number": int(entry["number"]),
        "marks": marks_text(int(entry["marks"])),
        "must_pass": int(entry["number"]) in gate,
        "kind": kind,
        "task": KIND_WORDS[kind].heading,
        "stem": str(question["stem"]),
        "caution": str(caution) if caution else "",
        "sheet": _table(question["sheet"]),
        "table": _table(question["table"]),
        "asks_unit": asks_unit(question),
        # the templates of the site look for what they show below this name
        "key": _SHOWN[kind](question["key"]),
    }


def _table(table: Plain | None) -> dict[str, Any] | None:
    if table is None:
        return None
    return {
        "title": str(table["title"]),
        "columns": [str(column) for column in table.get("columns", ())],
        "rows": [[str(cell) for cell in row] for row in table["rows"]],
    }


def _entries(entries: list[Plain], mark: str = "letter") -> list[dict[str, str]]:
    return [{mark: str(entry[mark]), "text": str(entry["text"])} for entry in entries]


_SHOWN: Mapping[str, Callable[[Plain], dict[str, Any]]] = {
    "numeric": lambda key: {"unit_symbol": str(key["unit_symbol"])},
    "choice": lambda key: {"options": _entries(key["options"])},
    "multiple_response": lambda key: {"options": _entries(key["options"])},
    "order": lambda key: {"steps": _entries(key["steps"])},
    "match": lambda key: {
        "left": _entries(key["left"], "number"),
        "right": _entries(key["right"]),
    },
    "written": lambda key: {},
}
