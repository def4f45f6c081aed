"""Choose what an answer sheet shows: a place for every answer and the code of the form."""

from collections.abc import Callable, Mapping
from io import BytesIO
from typing import Any

import segno

from generator.printing.form_facts import form_facts


def answer_sheet_content(form: Mapping[str, Any]) -> dict[str, Any]:
    """Choose the content of an answer sheet; `form` is the plain JSON of one form."""
    rows = [_row(entry) for entry in form["questions"]]
    return form_facts(form) | {"code": form_code(str(form["form"])), "rows": rows}


def form_code(form: str) -> str:
    """Draw the QR code of a form name as SVG; it carries the name and nothing else."""
    drawing = BytesIO()
    code = segno.make_qr(form, error="m")
    code.save(drawing, kind="svg", border=4, xmldecl=False, svgns=True, nl=False)
    return drawing.getvalue().decode("utf-8")


def _row(entry: Mapping[str, Any]) -> dict[str, Any]:
    question = entry["question"]
    kind = question["kind"]
    return {"number": str(entry["number"]), "kind": kind} | _PLACES[kind](question["key"])


def _letters(key: Mapping[str, Any]) -> dict[str, Any]:
    return {"letters": [option["letter"] for option in key["options"]]}


def _places(key: Mapping[str, Any]) -> dict[str, Any]:
    return {"boxes": [str(place) for place in range(1, len(key["steps"]) + 1)]}


def _numbers(key: Mapping[str, Any]) -> dict[str, Any]:
    return {"boxes": [str(entry["number"]) for entry in key["left"]]}


def _number(key: Mapping[str, Any]) -> dict[str, Any]:
    return {"unit": key["unit_symbol"]}


def _nothing(key: Mapping[str, Any]) -> dict[str, Any]:
    return {}


_PLACES: dict[str, Callable[[Mapping[str, Any]], dict[str, Any]]] = {
    "choice": _letters,
    "multiple_response": _letters,
    "order": _places,
    "match": _numbers,
    "numeric": _number,
    "written": _nothing,
}
