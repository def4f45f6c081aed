"""Choose what an answer key shows: the answer, what else is accepted, and why."""

from typing import Any

from generator.bank import transitive_closure
from generator.issued import (
    ForKey,
    IssuedEntry,
    IssuedForm,
    IssuedQuestion,
    IssuedSource,
    MatchAnswerKey,
    NumericAnswerKey,
    OptionsAnswerKey,
    OrderAnswerKey,
    WrittenAnswerKey,
)
from generator.printing.content.cautions import told_cautions
from generator.printing.content.form_facts import form_facts
from generator.printing.content.paper_content import lettered, numbered, shown_question
from generator.printing.content.result_words import luck_in_words, mastery_in_words
from generator.printing.content.short_answers import short_answer, with_unit
from generator.wording import (
    TAG_WORDS,
    counted,
    gate_in_words,
    marks_text,
    must_pass,
    total_marks,
    typst_of_line,
    typst_of_text,
)

_PAIR_CLASSES = {"danger": "protects people", "ruins": "saves the work"}


def answer_key_content(form: IssuedForm) -> dict[str, Any]:
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


def source_of(source: IssuedSource) -> dict[str, str]:
    """Write where a fact of a key comes from: its tag in words, and the document.

    A published document needs no words in front.
    """
    return {"tag": TAG_WORDS[source["tag"]], "text": str(source.get("text") or "")}


def _question(entry: IssuedEntry, gate: frozenset[int]) -> dict[str, Any]:
    question = entry["question"]
    return shown_question(question) | {
        "number": str(entry["number"]),
        "marks": marks_text(int(entry["marks"])),
        "name": question["id"],
        "safety": bool(question["safety"]),
        "must_pass": int(entry["number"]) in gate,
        "critical": _why_it_must_be_right(question) if int(entry["number"]) in gate else "",
        "short": short_answer(question),
        "accept": _accepted(question),
        "sources": [source_of(source) for source in question["sources"]],
        "key": _SOLUTIONS.of(question),
        "by_hand": _by_hand(question, int(entry["marks"])),
    }


def _why_it_must_be_right(question: IssuedQuestion) -> str:
    """Name the hazard and what it would do; empty for issues from before questions named one."""
    critical = question.get("critical")
    return f"{critical['title']}. {critical['reason']}" if critical else ""


def _by_hand(question: IssuedQuestion, marks: int) -> str:
    """Say how part marks are worked out with a pencil; empty where there are none."""
    worth = marks_text(marks)
    if question["kind"] == "multiple_response":
        right = sum(option["right"] for option in question["key"]["options"])
        return (
            f"Part marks: right letters less wrong letters, never below 0, times {worth}, "
            f"divided by {right}."
        )
    if question["kind"] == "match":
        return f"Part marks: {worth} for {len(question['key']['answers'])} pairs, shared evenly."
    if question["kind"] != "order":
        return ""
    key = question["key"]
    implied = sorted(transitive_closure([(pair["first"], pair["then"]) for pair in key["pairs"]]))
    said = (
        f"Part marks: of these {len(implied)}, those that are kept, times {worth}, divided by "
        f"{len(implied)}: {', '.join(f'{first} before {then}' for first, then in implied)}."
    )
    turned = any(pair["class"] == "danger" for pair in key["pairs"])
    return f"{said} No marks where a pair that protects people is turned round." if turned else said


def _accepted(question: IssuedQuestion) -> str:
    return question["key"]["band_text"] if question["kind"] == "numeric" else ""


def _says(key: NumericAnswerKey) -> list[Any] | None:
    return typst_of_text(key["says"]) if key.get("says") else None


def _number(key: NumericAnswerKey) -> dict[str, Any]:
    unit = key["unit_symbol"]
    return {
        "shown": with_unit(key["shown"], unit),
        "band": key["band_text"],
        "working": list(key["working"]),
        "says": _says(key),
        "slips": [
            {"shown": with_unit(slip["shown"], unit), "says": typst_of_line(slip["says"])}
            for slip in key["slips"]
        ],
    }


def _options(key: OptionsAnswerKey) -> dict[str, Any]:
    options = [
        {"mark": option["letter"], "text": typst_of_line(option["text"])}
        | {"right": option["right"], "says": typst_of_line(option["says"])}
        for option in key["options"]
    ]
    return {"options": options}


def _order(key: OrderAnswerKey) -> dict[str, Any]:
    texts = {step["mark"]: step["text"] for step in lettered(key["steps"])}
    pairs = [
        {"first": pair["first"], "then": pair["then"], "reason": typst_of_line(pair["reason"])}
        | {"class": _PAIR_CLASSES[pair["class"]]}
        for pair in key["pairs"]
    ]
    orders = int(key["orders"])
    return {
        "one_order": [{"mark": letter, "text": texts[letter]} for letter in key["one_order"]],
        "orders": f"{counted(orders, 'order is', 'orders are')} right.",
        "rule": typst_of_line(key["rule"]),
        "pairs": pairs,
    }


def _match(key: MatchAnswerKey) -> dict[str, Any]:
    right = {entry["mark"]: entry["text"] for entry in lettered(key["right"])}
    rows = [
        {"number": left["mark"], "left": left["text"], "letter": key["answers"][left["mark"]]}
        | {"right": right[key["answers"][left["mark"]]]}
        | {"says": typst_of_line(key["says"].get(left["mark"], ""))}
        for left in numbered(key["left"])
    ]
    return {"rows": rows}


def _written(key: WrittenAnswerKey) -> dict[str, Any]:
    points = [
        {"marks": marks_text(int(point["marks"])), "text": typst_of_line(point["text"])}
        for point in key["points"]
    ]
    return {"points": points, "model": typst_of_text(key["model"])}


_SOLUTIONS = ForKey(
    numeric=_number,
    choice=_options,
    multiple_response=_options,
    order=_order,
    match=_match,
    written=_written,
)
