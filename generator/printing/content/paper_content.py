"""Choose what a question paper shows.

Only named fields of a question are copied, so no key can slip into the paper unseen.
"""

from collections.abc import Callable, Mapping
from typing import Any

from generator.printing.content.form_facts import form_facts, marks_text, must_pass
from generator.printing.content.markup import block_nodes, inline_nodes
from generator.printing.content.paper_rules import paper_rules

_LINES_PER_MARK = 3
_FEWEST_LINES, _MOST_LINES = 4, 12
_TASKS = {
    "numeric": "number and unit",
    "choice": "one answer",
    "multiple_response": "one or more answers",
    "order": "put in order",
    "match": "match",
    "written": "written answer",
}


def question_paper_content(form: Mapping[str, Any]) -> dict[str, Any]:
    """Choose the content of a question paper; `form` is the plain JSON of one form."""
    return form_facts(form) | {
        "rules": paper_rules(form),
        "cautions": [block_nodes(caution) for caution in _cautions_of_all(form)],
        "questions": [_question(entry, must_pass(form)) for entry in form["questions"]],
        "constants": [_constant(constant) for constant in form.get("constants", ())],
    }


def shown_question(question: Mapping[str, Any]) -> dict[str, Any]:
    """Choose what paper and key both show of a question: kind, stem, caution, tables."""
    caution = question.get("caution")
    return {
        "kind": question["kind"],
        "stem": block_nodes(question["stem"]),
        "caution": block_nodes(caution) if caution else None,
        "sheet": _sheet(question.get("sheet")),
        "table": _table(question.get("table")),
    }


def lettered(entries: list[Mapping[str, Any]], mark: str = "letter") -> list[dict[str, Any]]:
    """Choose mark and text of options, steps or the sides of a match."""
    return [{"mark": str(entry[mark]), "text": inline_nodes(entry["text"])} for entry in entries]


def _cautions_of_all(form: Mapping[str, Any]) -> list[str]:
    """Leave out what stands beside a question, so that the first page keeps its room."""
    beside = {entry["question"].get("caution") for entry in form["questions"]}
    return [caution for caution in form.get("cautions", ()) if caution not in beside]


def _question(entry: Mapping[str, Any], gate: frozenset[int]) -> dict[str, Any]:
    question = entry["question"]
    kind = question["kind"]
    return shown_question(question) | {
        "number": str(entry["number"]),
        "marks": marks_text(int(entry["marks"])),
        "must_pass": int(entry["number"]) in gate,
        "task": _TASKS[kind],
        "answer": _ANSWER_SPACES[kind](question["key"]),
    }


def _sheet(sheet: Mapping[str, Any] | None) -> dict[str, Any] | None:
    return _table({"columns": (), **sheet}) if sheet else None


def _table(table: Mapping[str, Any] | None) -> dict[str, Any] | None:
    if table is None:
        return None
    return {
        "title": inline_nodes(table["title"]),
        "columns": [inline_nodes(column) for column in table["columns"]],
        "rows": [[inline_nodes(str(cell)) for cell in row] for row in table["rows"]],
    }


def _constant(constant: Any) -> list[Any]:
    cells = (constant,) if isinstance(constant, str) else constant
    return [inline_nodes(str(cell)) for cell in cells]


def _unit(key: Mapping[str, Any]) -> dict[str, Any]:
    return {"unit": key["unit_symbol"]}


def _options(key: Mapping[str, Any]) -> dict[str, Any]:
    return {"options": lettered(key["options"])}


def _steps(key: Mapping[str, Any]) -> dict[str, Any]:
    return {"steps": lettered(key["steps"])}


def _sides(key: Mapping[str, Any]) -> dict[str, Any]:
    return {"left": lettered(key["left"], "number"), "right": lettered(key["right"])}


def _lines(key: Mapping[str, Any]) -> dict[str, Any]:
    wanted = _LINES_PER_MARK * sum(int(point["marks"]) for point in key["points"])
    return {"lines": min(_MOST_LINES, max(_FEWEST_LINES, wanted))}


_ANSWER_SPACES: dict[str, Callable[[Mapping[str, Any]], dict[str, Any]]] = {
    "numeric": _unit,
    "choice": _options,
    "multiple_response": _options,
    "order": _steps,
    "match": _sides,
    "written": _lines,
}
