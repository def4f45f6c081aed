"""Choose what an answer key shows: the answer, what else is accepted, and why."""

from collections.abc import Callable, Mapping
from typing import Any

from generator.bank import closure
from generator.printing.content.cautions import told_cautions
from generator.printing.content.form_facts import (
    counted,
    form_facts,
    gate_in_words,
    marks_text,
    must_pass,
    total_marks,
)
from generator.printing.content.markup import block_nodes, inline_nodes
from generator.printing.content.paper_content import lettered, shown_question
from generator.printing.content.result_words import luck_in_words, mastery_in_words
from generator.printing.content.short_answers import short_answer, with_unit

_TAGS = {
    "published": "",
    "common_practice": "Common practice in the trade, no published source",
    "from_memory": "From memory, not checked against a document",
}
_PAIR_CLASSES = {"danger": "protects people", "ruins": "saves the work"}


def answer_key_content(form: Mapping[str, Any]) -> dict[str, Any]:
    """Choose the content of an answer key; `form` is the plain JSON of one form."""
    return form_facts(form) | {
        "summary": f"{marks_text(total_marks(form))} in all. Pass: "
        f"{marks_text(int(form['pass_marks']))} ({form['pass_percent']} %).",
        "shows": [
            said
            for said in (gate_in_words(form), luck_in_words(form), mastery_in_words(form))
            if said
        ],
        "questions": [
            _question(entry, must_pass(form)) | told
            for entry, told in zip(form["questions"], told_cautions(form["questions"]), strict=True)
        ],
    }


def source_of(source: Mapping[str, Any]) -> dict[str, str]:
    """Write where a fact of a key comes from: its tag in words, and the document.

    A published document needs no words in front.
    """
    return {"tag": _TAGS[source["tag"]], "text": str(source.get("text") or "")}


def _question(entry: Mapping[str, Any], gate: frozenset[int]) -> dict[str, Any]:
    question = entry["question"]
    return shown_question(question) | {
        "number": str(entry["number"]),
        "marks": marks_text(int(entry["marks"])),
        "name": question["id"],
        "safety": bool(question["safety"]),
        "must_pass": int(entry["number"]) in gate,
        "critical": _why_it_must_be_right(question) if int(entry["number"]) in gate else "",
        "short": short_answer(question),
        "accept": str(question["key"].get("band_text") or ""),
        "sources": [source_of(source) for source in question["sources"]],
        "key": _SOLUTIONS[question["kind"]](question["key"]),
        "by_hand": _by_hand(question, int(entry["marks"])),
    }


def _why_it_must_be_right(question: Mapping[str, Any]) -> str:
    """Name the hazard and what it would do; empty for issues from before questions named one."""
    critical = question.get("critical") or {}
    return f"{critical['title']}. {critical['reason']}" if critical else ""


def _by_hand(question: Mapping[str, Any], marks: int) -> str:
    """Say how part marks are worked out with a pencil; empty where there are none."""
    key, worth = question["key"], marks_text(marks)
    if question["kind"] == "multiple_response":
        right = sum(option["right"] for option in key["options"])
        return (
            f"Part marks: right letters less wrong letters, never below 0, times {worth}, "
            f"divided by {right}."
        )
    if question["kind"] == "match":
        return f"Part marks: {worth} for {len(key['answers'])} pairs, shared evenly."
    if question["kind"] != "order":
        return ""
    implied = sorted(closure([(pair["first"], pair["then"]) for pair in key["pairs"]]))
    said = (
        f"Part marks: of these {len(implied)}, those that are kept, times {worth}, divided by "
        f"{len(implied)}: {', '.join(f'{first} before {then}' for first, then in implied)}."
    )
    turned = any(pair["class"] == "danger" for pair in key["pairs"])
    return f"{said} No marks where a pair that protects people is turned round." if turned else said


def _says(key: Mapping[str, Any]) -> list[Any] | None:
    return block_nodes(key["says"]) if key.get("says") else None


def _number(key: Mapping[str, Any]) -> dict[str, Any]:
    unit = key["unit_symbol"]
    return {
        "shown": with_unit(key["shown"], unit),
        "band": key["band_text"],
        "working": list(key["working"]),
        "says": _says(key),
        "slips": [
            {"shown": with_unit(slip["shown"], unit), "says": inline_nodes(slip["says"])}
            for slip in key["slips"]
        ],
    }


def _options(key: Mapping[str, Any]) -> dict[str, Any]:
    options = [
        {"mark": option["letter"], "text": inline_nodes(option["text"])}
        | {"right": option["right"], "says": inline_nodes(option["says"])}
        for option in key["options"]
    ]
    return {"options": options}


def _order(key: Mapping[str, Any]) -> dict[str, Any]:
    texts = {step["mark"]: step["text"] for step in lettered(key["steps"])}
    pairs = [
        {"first": pair["first"], "then": pair["then"], "reason": inline_nodes(pair["reason"])}
        | {"class": _PAIR_CLASSES[pair["class"]]}
        for pair in key["pairs"]
    ]
    orders = int(key["orders"])
    return {
        "one_order": [{"mark": letter, "text": texts[letter]} for letter in key["one_order"]],
        "orders": f"{counted(orders, 'order is', 'orders are')} right.",
        "rule": inline_nodes(key["rule"]),
        "pairs": pairs,
    }


def _match(key: Mapping[str, Any]) -> dict[str, Any]:
    right = {entry["mark"]: entry["text"] for entry in lettered(key["right"])}
    rows = [
        {"number": left["mark"], "left": left["text"], "letter": key["answers"][left["mark"]]}
        | {"right": right[key["answers"][left["mark"]]]}
        | {"says": inline_nodes(key["says"].get(left["mark"], ""))}
        for left in lettered(key["left"], "number")
    ]
    return {"rows": rows}


def _written(key: Mapping[str, Any]) -> dict[str, Any]:
    points = [
        {"marks": marks_text(int(point["marks"])), "text": inline_nodes(point["text"])}
        for point in key["points"]
    ]
    return {"points": points, "model": block_nodes(key["model"])}


_SOLUTIONS: dict[str, Callable[[Mapping[str, Any]], dict[str, Any]]] = {
    "numeric": _number,
    "choice": _options,
    "multiple_response": _options,
    "order": _order,
    "match": _match,
    "written": _written,
}
