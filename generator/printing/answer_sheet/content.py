"""Choose what an answer sheet shows: its marks, its codes and how to fill it in."""

from collections.abc import Mapping
from functools import cache
from io import BytesIO
from typing import Any

import segno

from generator.printing.answer_sheet.geometry import form_id, sheet_geometry
from generator.printing.answer_sheet.rules import filling_rules
from generator.printing.content import form_facts


def answer_sheet_content(form: Mapping[str, Any], large_print: bool = False) -> dict[str, Any]:
    """Choose the content of an answer sheet; `form` is the plain JSON of one form.

    Raises DoesNotFit when a question has more rings than fit side by side.
    """
    geometry = sheet_geometry(form, large_print=large_print)
    texts = [corner["text"] for page in geometry["pages"] for corner in page["corners"]]
    return form_facts(form) | {
        "geometry": geometry,
        "rules": filling_rules({entry["question"]["kind"] for entry in form["questions"]}),
        "code": form_code(form_id(form)),
        "corners": {text: corner_mark(text) for text in texts},
    }


def form_code(name: str) -> str:
    """Draw the QR code of a form's id as SVG; it carries the id and nothing else."""
    return _drawn(segno.make_qr(name, error="m"))


@cache
def corner_mark(text: str) -> str:
    """Draw the smallest Micro QR code of four digits as SVG."""
    return _drawn(segno.make_micro(text, version="M1"))


def _drawn(code: segno.QRCode) -> str:
    # No border: the layout keeps the paper around a code empty, as its standard asks.
    drawing = BytesIO()
    code.save(drawing, kind="svg", border=0, xmldecl=False, svgns=True, nl=False)
    return drawing.getvalue().decode("utf-8")
