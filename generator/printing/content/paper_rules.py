"""The rules on the first page of a question paper, in plain words."""

from collections.abc import Mapping
from typing import Any

from generator.printing.content.form_facts import (
    counted,
    gate_in_words,
    marks_text,
    must_pass,
    total_marks,
)


def paper_rules(form: Mapping[str, Any]) -> list[str]:
    """State time, marks, gate and ways of a form; `form` is its plain JSON."""
    return [rule for rule in (*_time_and_marks(form), *_ways(form)) if rule]


def _time_and_marks(form: Mapping[str, Any]) -> list[str]:
    marks, count = total_marks(form), len(form["questions"])
    gate = gate_in_words(form)
    return [
        f"Time: {counted(int(form['minutes']), 'minute', 'minutes')}.",
        f"There {'is' if count == 1 else 'are'} {counted(count, 'question', 'questions')} "
        f"worth {marks_text(marks)} together. You pass with {marks_text(int(form['pass_marks']))}"
        f" ({form['pass_percent']} %).",
        f"{gate} Part of the marks is not enough. {_sign(form)}" if gate else "",
    ]


def _sign(form: Mapping[str, Any]) -> str:
    several = len(must_pass(form)) > 1
    return f"{'They are' if several else 'It is'} marked MUST BE RIGHT."


def _ways(form: Mapping[str, Any]) -> list[str]:
    return [
        "A calculator is allowed. Round only your last figure, the way the question says.",
        "Answer every question. A wrong answer takes no marks from another question.",
        "Where more than one answer can be right, each wrong one you mark cancels a right one. No "
        "question goes below 0."
        if any(entry["question"]["kind"] == "multiple_response" for entry in form["questions"])
        else "",
        _caution_rule(form),
        "Work on this paper. If you have an answer sheet, copy your answers to the answer sheet. "
        "Only the sheet is marked then. Written answers stay on this paper.",
        "The result says what these answers show. It never says that a person is fit or allowed "
        "to do hazardous work.",
    ]


def _caution_rule(form: Mapping[str, Any]) -> str:
    """Say what to do with the cautions that stand beside questions; empty where none does."""
    cautioned = [e["question"] for e in form["questions"] if e["question"].get("caution")]
    if any(question.get("hands_on") for question in cautioned):
        return "A caution stands where you handle the thing itself. Read it before you touch it."
    # forms issued before cautions moved to the feedback are printed again word for word
    old = "A caution stands with the question it belongs to. Heed it when you do the work."
    return old if cautioned else ""
