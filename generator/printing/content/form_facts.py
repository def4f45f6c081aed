"""State the facts of a form that all its papers share."""

from collections.abc import Mapping
from typing import Any

_FOOT = ("form", "edition", "seed")


def form_facts(form: Mapping[str, Any]) -> dict[str, Any]:
    """Pick title, person and foot of a form; `form` is the plain JSON of one form."""
    named = {name: str(form.get(name) or "") for name in ("form_id", "person")}
    return {"title": str(form["title"])} | {name: str(form[name]) for name in _FOOT} | named


def words_of(name: str) -> str:
    """Write the last part of a record's name as words: film_build/wet_film is wet film."""
    return name.rpartition("/")[2].replace("_", " ")
