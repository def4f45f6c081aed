"""Choose what the key of a whole class shows: question numbers down, forms across."""

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from generator.printing.content.class_key_layout import (
    Cell,
    Head,
    Sheet,
    layout_of,
    lines_of_letters,
)
from generator.printing.content.form_facts import counted, must_pass, total_marks

LEGEND = {
    "must": "must: the question has to be right on that form, whatever the marks.",
    "small": "A small figure under an answer: its marks, where the forms differ.",
    "*": "*: more than one order is right; see the pairs on the key of the form.",
    "number": "For a number, the key of the form says what else is accepted.",
    "match": "For a match, the letters stand in the order of its rows.",
    "w": "w: a written answer; see the marking guide.",
}


def class_key_content(
    forms: Sequence[Mapping[str, Any]], sheet: Sheet, large_print: bool
) -> dict[str, Any]:
    """Choose the content of a class key; `forms` are the plain JSON of at least one form.

    sheet  the size of the paper that it is printed on
    Forms may hold different questions, or none, at the same number.
    """
    count = max(len(form["questions"]) for form in forms)
    rows = [_row(number, forms) for number in range(1, count + 1)]
    heads = [Head(str(form["form"]), f"{form['pass_marks']}/{total_marks(form)}") for form in forms]
    layout = layout_of([row["cells"] for row in rows], heads, sheet, large_print)
    first, last = str(forms[0]["form"]), str(forms[-1]["form"])
    said = counted(len(forms), "form", "forms")
    return {
        "title": str(forms[0]["title"]),
        "edition": str(forms[0]["edition"]),
        "corner": said[:1].upper() + said[1:],
        "foot": [f"Form {first}" if len(forms) == 1 else f"Forms {first} to {last}"]
        + [f"Seed {forms[0]['seed']}"],
        "legend": [LEGEND[name] for name in LEGEND if name in _signs(forms, rows)],
        "rows": [row | {"cells": [_shown(cell) for cell in row["cells"]]} for row in rows],
        "forms": [{"label": head.label, "of": head.of} for head in heads],
        "layout": layout,
    }


def _row(number: int, forms: Sequence[Mapping[str, Any]]) -> dict[str, Any]:
    entries = [_entry(form, number) for form in forms]
    marks = {int(entry["marks"]) for entry in entries if entry}
    same = len(marks) == 1
    cells = [
        _cell(entry, number in must_pass(form), not same)
        for form, entry in zip(forms, entries, strict=True)
    ]
    return {"number": str(number), "marks": str(marks.pop()) if same else "", "cells": cells}


def _entry(form: Mapping[str, Any], number: int) -> Mapping[str, Any] | None:
    found = [entry for entry in form["questions"] if int(entry["number"]) == number]
    return found[0] if found else None


def _cell(entry: Mapping[str, Any] | None, must: bool, with_marks: bool) -> Cell:
    if entry is None:
        return Cell(("–",))
    question = entry["question"]
    lines = _CELLS[question["kind"]](question["key"])
    return Cell(lines, must, str(entry["marks"]) if with_marks else "")


def _shown(cell: Cell) -> dict[str, Any]:
    return {"lines": list(cell.lines), "must": cell.must, "marks": cell.marks}


def _signs(forms: Sequence[Mapping[str, Any]], rows: Sequence[Mapping[str, Any]]) -> set[str]:
    cells = [cell for row in rows for cell in row["cells"]]
    kinds = {entry["question"]["kind"] for form in forms for entry in form["questions"]}
    there = {
        "must": any(cell.must for cell in cells),
        "small": any(cell.marks for cell in cells),
        "*": any(line.endswith("*") for cell in cells for line in cell.lines),
        "number": "numeric" in kinds,
        "match": "match" in kinds,
        "w": "written" in kinds,
    }
    return {name for name, is_there in there.items() if is_there}


def _number(key: Mapping[str, Any]) -> tuple[str, ...]:
    return (str(key["shown"]),)


def _letters(key: Mapping[str, Any]) -> tuple[str, ...]:
    return lines_of_letters([o["letter"] for o in key["options"] if o["right"]])


def _order(key: Mapping[str, Any]) -> tuple[str, ...]:
    *lines, last = lines_of_letters(key["one_order"])
    return (*lines, last + "*" * (int(key["orders"]) > 1))


def _match(key: Mapping[str, Any]) -> tuple[str, ...]:
    return lines_of_letters(list(key["answers"].values()))


def _written(key: Mapping[str, Any]) -> tuple[str, ...]:
    return ("w",)


_CELLS: dict[str, Callable[[Mapping[str, Any]], tuple[str, ...]]] = {
    "numeric": _number,
    "choice": _letters,
    "multiple_response": _letters,
    "order": _order,
    "match": _match,
    "written": _written,
}
