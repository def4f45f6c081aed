"""State the facts of a form that all its papers share."""

from typing import Any

from generator.issued import IssuedForm


def form_facts(form: IssuedForm) -> dict[str, Any]:
    """Pick title, person and foot of a form; `form` is the plain JSON of one form."""
    return {
        "title": str(form["title"]),
        "form": str(form["form"]),
        "edition": str(form["edition"]),
        "seed": str(form["seed"]),
        "form_id": str(form.get("form_id") or ""),
        "person": str(form.get("person") or ""),
    }


def words_of(name: str) -> str:
    """Write the last part of a record's name as words: film_build/wet_film is wet film."""
    return name.rpartition("/")[2].replace("_", " ")
