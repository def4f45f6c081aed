"""One study question as a form that works with and without script."""

import re
from collections.abc import Mapping
from typing import Any

from generator.website.context import (
    PageContext,
    Question,
    SiteContext,
    Variants,
    cited_of_question,
)

# the author's words that make the unit part of the answer
_WITH_UNIT = re.compile(r"\b(?:with|and) (?:its|the) unit\b")
KIND_WORDS = {
    "numeric": "Work it out",
    "choice": "Choose one",
    "multiple_response": "Choose all that apply",
    "order": "Put in order",
    "match": "Pair them up",
    "written": "Write it down",
}


def question_html(
    variants: Variants, draft: PageContext, desk: SiteContext, label: str, level: int = 3
) -> str:
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
        asks_unit=asks_unit(question),
        is_theirs=draft.course.is_theirs(question),
        label=label,
        level=level,
        source_tags=cited_of_question(draft.course, question["sources"]),
    )


def asks_unit(question: Question) -> bool:
    """Say whether a number is wanted with its unit, as the words of the question say."""
    return question["kind"] == "numeric" and bool(_WITH_UNIT.search(question["stem"]))


def question_anchor(question: Question) -> str:
    """Return the place of a question on its page."""
    return "q-" + str(question["id"]).replace("/", "-").replace("#", "-")


def objective_of(question: Question) -> str:
    """Return the objective as module/objective, however the question spells it."""
    objective = str(question["objective"])
    return objective if "/" in objective else f"{question['module']}/{objective}"


def marking_data(variants: Variants) -> dict[str, Any]:
    """Return what the page's script needs to mark: no words that the page holds already."""
    return {
        "variants": [
            {"kind": question["kind"], **_marking(question, question["key"])}
            for question in variants
        ]
    }


def _marking(question: Question, key: Mapping[str, Any]) -> dict[str, Any]:
    kind = question["kind"]
    if kind == "numeric":
        return {**_numeric(key), "asks_unit": asks_unit(question)}
    if kind in ("choice", "multiple_response"):
        return {"right": [option["letter"] for option in key["options"] if option["right"]]}
    if kind == "order":
        return _order(key)
    if kind == "match":
        return {"answers": key["answers"]}
    return {"marks": [point["marks"] for point in key["points"]]}


def _order(key: Mapping[str, Any]) -> dict[str, Any]:
    return {
        "steps": "".join(step["letter"] for step in key["steps"]),
        "pairs": [
            {"first": pair["first"], "then": pair["then"], "danger": pair["class"] == "danger"}
            for pair in key["pairs"]
        ],
    }


def _numeric(key: Mapping[str, Any]) -> dict[str, Any]:
    bands = [{"low": slip["low"], "high": slip["high"]} for slip in key["slips"]]
    return {
        "low": key["low"],
        "high": key["high"],
        "unit": key["unit"],
        "symbol": key["unit_symbol"],
        "slips": bands,
    }
