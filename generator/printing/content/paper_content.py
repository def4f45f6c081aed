"""Choose what a question paper shows.

Only named fields of a question are copied, so no key can slip into the paper unseen.
"""

from collections.abc import Iterable
from typing import Any

from generator.issued import (
    FACTS,
    ForKey,
    IssuedEntry,
    IssuedExhibit,
    IssuedForm,
    IssuedQuestion,
    LetteredText,
    MatchAnswerKey,
    NumberedText,
    NumericAnswerKey,
    OptionsAnswerKey,
    OrderAnswerKey,
    WrittenAnswerKey,
)
from generator.printing.content.form_facts import form_facts
from generator.printing.content.paper_rules import paper_rules
from generator.wording import marks_text, must_pass, typst_of_line, typst_of_text

_LINES_PER_MARK = 3
_FEWEST_LINES, _MOST_LINES = 4, 12


def question_paper_content(form: IssuedForm) -> dict[str, Any]:
    """Choose the content of a question paper; `form` is the plain JSON of one form."""
    return form_facts(form) | {
        "rules": paper_rules(form),
        "cautions": [typst_of_text(caution) for caution in _cautions_of_all(form)],
        "questions": [_question(entry, must_pass(form)) for entry in form["questions"]],
        "constants": [_constant(constant) for constant in form.get("constants", ())],
    }


def shown_question(question: IssuedQuestion) -> dict[str, Any]:
    """Choose what paper and key both show of a question: kind, stem, caution, tables."""
    caution = question.get("caution")
    return {
        "kind": question["kind"],
        "stem": typst_of_text(question["stem"]),
        "caution": typst_of_text(caution) if caution else None,
        "sheet": _table(question.get("sheet")),
        "table": _table(question.get("table")),
    }


def lettered(entries: Iterable[LetteredText]) -> list[dict[str, Any]]:
    """Choose letter and text of options, steps or the right side of a match."""
    return [{"mark": each["letter"], "text": typst_of_line(each["text"])} for each in entries]


def numbered(entries: Iterable[NumberedText]) -> list[dict[str, Any]]:
    """Choose number and text of the left side of a match."""
    return [{"mark": each["number"], "text": typst_of_line(each["text"])} for each in entries]


def _cautions_of_all(form: IssuedForm) -> list[str]:
    """Leave out what is shown beside a question, so that the first page keeps its room."""
    beside = {entry["question"].get("caution") for entry in form["questions"]}
    return [caution for caution in form.get("cautions", ()) if caution not in beside]


def _question(entry: IssuedEntry, gate: frozenset[int]) -> dict[str, Any]:
    question = entry["question"]
    return shown_question(question) | {
        "number": str(entry["number"]),
        "marks": marks_text(int(entry["marks"])),
        "must_pass": int(entry["number"]) in gate,
        "task": FACTS.of(question["kind"]).on_paper,
        "answer": _ANSWER_SPACES.of(question),
    }


def _table(table: IssuedExhibit | None) -> dict[str, Any] | None:
    if table is None:
        return None
    return {
        "title": typst_of_line(table["title"]),
        "columns": [typst_of_line(column) for column in table.get("columns", ())],
        "rows": [[typst_of_line(str(cell)) for cell in row] for row in table["rows"]],
    }


def _constant(constant: Any) -> list[Any]:
    cells = (constant,) if isinstance(constant, str) else constant
    return [typst_of_line(str(cell)) for cell in cells]


def _unit(key: NumericAnswerKey) -> dict[str, Any]:
    return {"unit": key["unit_symbol"]}


def _options(key: OptionsAnswerKey) -> dict[str, Any]:
    return {"options": lettered(key["options"])}


def _steps(key: OrderAnswerKey) -> dict[str, Any]:
    return {"steps": lettered(key["steps"])}


def _sides(key: MatchAnswerKey) -> dict[str, Any]:
    return {"left": numbered(key["left"]), "right": lettered(key["right"])}


def _lines(key: WrittenAnswerKey) -> dict[str, Any]:
    wanted = _LINES_PER_MARK * sum(int(point["marks"]) for point in key["points"])
    return {"lines": min(_MOST_LINES, max(_FEWEST_LINES, wanted))}


_ANSWER_SPACES = ForKey(
    numeric=_unit,
    choice=_options,
    multiple_response=_options,
    order=_steps,
    match=_sides,
    written=_lines,
)
