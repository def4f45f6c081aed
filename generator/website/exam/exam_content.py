"""What a page to answer a form on a screen shows.

Only named fields are copied, so that no key can slip into the page unseen. Names of items stay
out as well: some of them say what is right. So does the seed: with the bank it gives the key.
"""

from collections.abc import Callable, Mapping
from typing import Any

from generator.website.questions import KIND_WORDS, asks_unit

Plain = Mapping[str, Any]
_NAMED = ("form_id", "title", "edition", "person")


def sitting_content(form: Plain) -> dict[str, Any]:
    """Choose what the page holds; `form` is the plain JSON of one form."""
    gate = frozenset(int(number) for number in form["gate"])
    return {
        **{name: str(form[name] or "") for name in _NAMED},
        "label": str(form["form"]),
        "minutes": int(form["minutes"]),
        "rules": _rules(form),
        "gate": gate_sentence(gate),
        "ways": _ways(form),
        "cautions": _cautions(form),
        "constants": [str(constant) for constant in form["constants"]],
        "questions": [_question(entry, gate) for entry in form["questions"]],
    }


def gate_sentence(gate: frozenset[int]) -> str:
    """Say which questions must be right and what missing one means; empty without a gate."""
    numbers = [str(number) for number in sorted(gate)]
    if not numbers:
        return ""
    if len(numbers) == 1:
        return (
            f"Question {numbers[0]} must be right. Missing it means not passed, whatever the marks."
        )
    named = f"{', '.join(numbers[:-1])} and {numbers[-1]}"
    return f"Questions {named} must be right. Missing one means not passed, whatever the marks."


def _rules(form: Plain) -> list[str]:
    count, marks = len(form["questions"]), int(form["marks"])
    return [
        f"You have {_counted(int(form['minutes']), 'minute')}. When they are over you can still "
        "answer and hand in; the file says how long it took.",
        f"There {'is' if count == 1 else 'are'} {_counted(count, 'question')} worth "
        f"{_counted(marks, 'mark')} together. You pass with "
        f"{_counted(int(form['pass_marks']), 'mark')} ({form['pass_percent']} %).",
    ]


def _ways(form: Plain) -> list[str]:
    several = any(e["question"]["kind"] == "multiple_response" for e in form["questions"])
    cancels = (
        "Where more than one answer can be right, each wrong one you mark cancels a right one. "
        "No question goes below 0."
    )
    return [
        "A calculator is allowed. Round only your last figure, the way the question says.",
        "Answer every question. A wrong answer takes no marks from another question.",
        *([cancels] if several else []),
        "Each answer is kept on this device at once, so a reload or an empty battery takes "
        "nothing. At the end you save one file and hand it in.",
        "The result says what these answers show. Passing allows nobody to do hazardous work.",
    ]


def _cautions(form: Plain) -> list[str]:
    """Leave out what stands beside a question."""
    beside = {entry["question"].get("caution") for entry in form["questions"]}
    return [str(caution) for caution in form["cautions"] if caution not in beside]


def _question(entry: Plain, gate: frozenset[int]) -> dict[str, Any]:
    question = entry["question"]
    kind, caution = str(question["kind"]), question["caution"]
    return {
        "number": int(entry["number"]),
        "marks": _counted(int(entry["marks"]), "mark"),
        "must_pass": int(entry["number"]) in gate,
        "kind": kind,
        "task": KIND_WORDS[kind],
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


def _counted(count: int, word: str) -> str:
    return f"{count} {word}" if count == 1 else f"{count} {word}s"


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
