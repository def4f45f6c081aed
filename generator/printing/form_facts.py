"""State the facts of a form that all three papers share."""

from collections.abc import Mapping
from typing import Any

_FOOT = ("form", "edition", "seed")


def form_facts(form: Mapping[str, Any]) -> dict[str, Any]:
    """Pick title and foot numbers of a form; `form` is the plain JSON of one form."""
    return {"title": str(form["title"])} | {name: str(form[name]) for name in _FOOT}


def total_marks(form: Mapping[str, Any]) -> int:
    """Add the marks of all questions of a form."""
    return sum(int(entry["marks"]) for entry in form["questions"])


def marks_text(marks: int) -> str:
    """Write a number of marks with its word."""
    return counted(marks, "mark", "marks")


def counted(count: int, one: str, several: str) -> str:
    """Write a count with the word that fits it."""
    return f"{count} {one if count == 1 else several}"
