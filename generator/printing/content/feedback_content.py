"""Choose what a feedback sheet shows: what each question was about, and room for its result.

Only names and marks of a question are copied, so no key can slip into the sheet unseen, and of
the cautions only those that a hazard says in the same words wherever it is met.
"""

from collections.abc import Mapping
from typing import Any

from generator.printing.content.form_facts import (
    counted,
    form_facts,
    gate_in_words,
    marks_text,
    must_pass,
    total_marks,
    words_of,
)
from generator.printing.content.markup import block_nodes

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
        "cautions": [block_nodes(caution) for caution in _cautions(form)],
        # forms of an earlier version carry no titles
        "rows": [
            _row(entry, int(entry["number"]) in gate, form.get("titles", {})) for entry in questions
        ],
    }


def _cautions(form: Mapping[str, Any]) -> list[str]:
    """Return the cautions of all hazards of the work that the form asks about, each once."""
    said = [c for entry in form["questions"] for c in entry["question"].get("cautions", ())]
    return list(dict.fromkeys(caution["text"] for caution in said if caution["hazard"]))


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
