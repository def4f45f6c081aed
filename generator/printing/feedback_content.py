"""Choose what a feedback sheet shows: what each question was about, and room for its result.

Only names and marks of a question are copied, so no key can slip into the sheet unseen.
"""

from collections.abc import Mapping
from typing import Any

from generator.printing.form_facts import (
    counted,
    form_facts,
    gate_in_words,
    marks_text,
    must_pass,
    total_marks,
    words_of,
)

SAYS = (
    "A result says what these answers show. It never says that a person may do hazardous work "
    "alone."
)
STUDY = (
    "Tick Study where a mark is missing: read the part of the lesson that the row names, and try "
    "its practice questions again."
)
ASK = "If you think that a question or its marking is wrong, say so: it will be looked at again."


def feedback_sheet_content(form: Mapping[str, Any]) -> dict[str, Any]:
    """Choose the content of a feedback sheet; `form` is the plain JSON of one form."""
    questions, gate = form["questions"], must_pass(form)
    return form_facts(form) | {
        "summary": f"{counted(len(questions), 'question', 'questions')}, "
        f"{marks_text(total_marks(form))} in all. Pass: {marks_text(int(form['pass_marks']))} "
        f"({form['pass_percent']} %).",
        "gate": gate_in_words(form),
        "marks": str(total_marks(form)),
        "notes": [STUDY, ASK, SAYS],
        # forms of an earlier version carry no titles
        "rows": [
            _row(entry, int(entry["number"]) in gate, form.get("titles", {})) for entry in questions
        ],
    }


def _row(entry: Mapping[str, Any], must: bool, titles: Mapping[str, str]) -> dict[str, Any]:
    question = entry["question"]
    return {
        "number": str(entry["number"]),
        "marks": str(entry["marks"]),
        "must_pass": must,
        "lesson": titles.get(question["module"]) or _capital(words_of(question["module"])),
        "about": titles.get(question["objective"]) or _capital(words_of(question["objective"])),
    }


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]
