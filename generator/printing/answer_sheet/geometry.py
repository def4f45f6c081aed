"""Say where every mark of an answer sheet is, so that a reader of scans knows where to look."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from generator.printing.answer_sheet.fields import DoesNotFit, Field, field_of
from generator.printing.answer_sheet.measures import (
    CODE_FIRST,
    CODE_LATER,
    CORNER,
    FIELDS_END,
    FRAME_HEIGHT,
    FRAME_WIDTH,
    LARGE,
    LAYOUT,
    NORMAL,
    PAPERS,
    RING_LINE,
    Measures,
)
from generator.printing.answer_sheet.rules import lines_of_rules

# Gaps between fields in mm, roomiest first: the first that saves no page is taken.
_GAPS = (8.0, 6.5, 5.0, 4.0, 3.0, 2.4)
_CORNERS = (
    ("top_left", 0.0, 0.0),
    ("top_right", FRAME_WIDTH - CORNER, 0.0),
    ("bottom_left", 0.0, FRAME_HEIGHT - CORNER),
    ("bottom_right", FRAME_WIDTH - CORNER, FRAME_HEIGHT - CORNER),
)


@dataclass(frozen=True, slots=True)
class _Placed:
    page: int
    left: float
    top: float
    field: Field


def sheet_geometry(form: Mapping[str, Any], *, large_print: bool = False) -> dict[str, Any]:
    """Return the positions of all marks of a form's answer sheet as plain JSON.

    Lengths are mm; x to the right and y down from the top left of the frame, whose corners are
    the outer corners of the corner marks. `papers` says where the frame lies on each paper.
    `corners` hold the Micro QR texts page and corner (0111 is page 11, corner 1), `code` the
    QR code with the form's id only. `fields` give per question the groups of rings: `value`
    and centre of each ring; `several` where more than one ring of a group may be filled.
    A number's groups are its places from the left, each a digit or the decimal point; the
    groups of an order are places, those of a match the rows. A written question has none.
    Raises DoesNotFit when a question has more rings than fit side by side.
    """
    measures = LARGE if large_print else NORMAL
    fields = [field_of(entry, measures) for entry in form["questions"]]
    lines = lines_of_rules({field.kind for field in fields}, measures.signs)
    first = measures.head + lines * measures.line
    placed = _roomiest(fields, first, measures)
    pages = max((place.page for place in placed), default=1)
    return {
        "layout": LAYOUT,
        "form_id": form_id(form),
        "large_print": large_print,
        "frame": {"width": FRAME_WIDTH, "height": FRAME_HEIGHT},
        "papers": {name: dict(paper) for name, paper in PAPERS.items()},
        "ring": {"diameter": measures.bubble, "line": RING_LINE},
        "pages": [_page(number, placed) for number in range(1, pages + 1)],
        "measures": {"column": measures.column, "label": measures.label}
        | {"caption": measures.caption, "down": measures.down}
        | {"first": _mm(first), "later": measures.later},
    }


def form_id(form: Mapping[str, Any]) -> str:
    """Return what the code of a form carries: its id, or its name where it has none."""
    return str(form.get("form_id") or form["form"])


def _roomiest(fields: Sequence[Field], first: float, measures: Measures) -> list[_Placed]:
    tried = [_flow(fields, first, gap, measures) for gap in _GAPS]
    return min(tried, key=lambda placed: max((place.page for place in placed), default=1))


def _flow(fields: Sequence[Field], first: float, gap: float, measures: Measures) -> list[_Placed]:
    """Set fields down the columns and over the pages in the order of their numbers."""
    placed: list[_Placed] = []
    page, column, top = 1, 0, first
    for field in fields:
        while top + field.height > FIELDS_END:
            if page > 1 and top == measures.later:
                raise DoesNotFit(f"question {field.number} is taller than the sheet")
            page, column = (page, column + 1) if column + 1 < measures.columns else (page + 1, 0)
            top = first if page == 1 else measures.later
        left = column * (measures.column + measures.gutter)
        placed.append(_Placed(page, left, top, field))
        top += field.height + gap
    return placed


def _page(number: int, placed: Sequence[_Placed]) -> dict[str, Any]:
    corners = [
        {"corner": name, "text": f"{number:03}{place}", "left": left, "top": top, "size": CORNER}
        for place, (name, left, top) in enumerate(_CORNERS, 1)
    ]
    code = dict(
        zip(("left", "top", "size"), CODE_FIRST if number == 1 else CODE_LATER, strict=True)
    )
    fields = [_field(place) for place in placed if place.page == number]
    return {"page": number, "corners": corners, "code": code, "fields": fields}


def _field(place: _Placed) -> dict[str, Any]:
    field = place.field
    return {
        "number": field.number,
        "kind": field.kind,
        "several": field.kind == "multiple_response",
        "left": _mm(place.left),
        "top": _mm(place.top),
        "height": _mm(field.height),
        "caption": field.caption,
        "boxes": [
            {"left": _mm(place.left + left), "top": _mm(place.top + top)}
            | {"width": _mm(width), "height": _mm(height)}
            for left, top, width, height in field.boxes
        ],
        "groups": [
            {
                "group": group.name,
                "marks": [
                    {"value": value, "x": _mm(place.left + x), "y": _mm(place.top + y)}
                    for value, x, y in group.marks
                ],
            }
            for group in field.groups
        ],
    }


def _mm(length: float) -> float:
    return round(length, 3)
