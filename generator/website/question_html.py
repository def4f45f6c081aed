"""One study question as a form that works with and without script."""

from collections.abc import Mapping
from typing import Any

from generator.website.course import Question, Variants
from generator.website.desk import Desk, cited_of_question
from generator.website.draft import Draft

KIND_WORDS = {
    "numeric": "Work it out",
    "choice": "Choose one",
    "multiple_response": "Choose all that apply",
    "order": "Put in order",
    "match": "Pair them up",
    "written": "Write it down",
}


def question_html(variants: Variants, draft: Draft, desk: Desk, label: str, level: int = 3) -> str:
    """Write one item with all its variants.

    label  what the item is called on its page, such as "Question 7"
    level  level of its heading
    """
    question = variants[0]
    return desk.fill(
        "questions/question.html",
        draft,
        q=question,
        variants=variants,
        data=marking_data(variants),
        anchor=question_anchor(question),
        objective=objective_of(question),
        kind_words=KIND_WORDS[question["kind"]],
        label=label,
        level=level,
        source_tags=cited_of_question(draft.course, question["sources"]),
    )


def question_anchor(question: Question) -> str:
    """Give the place of a question on its page."""
    return "q-" + str(question["id"]).replace("/", "-").replace("#", "-")


def objective_of(question: Question) -> str:
    """Give the objective as module/objective, however the question spells it."""
    objective = str(question["objective"])
    return objective if "/" in objective else f"{question['module']}/{objective}"


def marking_data(variants: Variants) -> dict[str, Any]:
    """Give what the page's script needs to mark: no words that the page holds already."""
    return {
        "variants": [
            {"kind": question["kind"], **_marking(question["kind"], question["key"])}
            for question in variants
        ]
    }


def _marking(kind: str, key: Mapping[str, Any]) -> dict[str, Any]:
    if kind == "numeric":
        return _numeric(key)
    if kind in ("choice", "multiple_response"):
        return {"right": [option["letter"] for option in key["options"] if option["right"]]}
    if kind == "order":
        return {"pairs": [{"first": pair["first"], "then": pair["then"]} for pair in key["pairs"]]}
    return {"answers": key["answers"]} if kind == "match" else {}


def _numeric(key: Mapping[str, Any]) -> dict[str, Any]:
    bands = [{"low": slip["low"], "high": slip["high"]} for slip in key["slips"]]
    return {
        "low": key["low"],
        "high": key["high"],
        "unit": key["unit"],
        "symbol": key["unit_symbol"],
        "slips": bands,
    }
