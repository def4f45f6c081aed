"""State the facts of a form that all its papers share."""

from collections.abc import Mapping, Sequence
from typing import Any

_FOOT = ("form", "edition", "seed")


def form_facts(form: Mapping[str, Any]) -> dict[str, Any]:
    """Pick title, person and foot of a form; `form` is the plain JSON of one form."""
    named = {name: str(form.get(name) or "") for name in ("form_id", "person")}
    return {"title": str(form["title"])} | {name: str(form[name]) for name in _FOOT} | named


def must_pass(form: Mapping[str, Any]) -> frozenset[int]:
    """Return the numbers of the questions that must be right, whatever the marks."""
    return frozenset(int(number) for number in form.get("gate", ()))


def gate_in_words(form: Mapping[str, Any]) -> str:
    """Say which questions must be right and what missing one means; empty without a gate."""
    numbers = [str(number) for number in sorted(must_pass(form))]
    if not numbers:
        return ""
    if len(numbers) == 1:
        return (
            f"Question {numbers[0]} must be right. Missing it means not passed, whatever the marks."
        )
    return (
        f"Questions {listed(numbers)} must be right. "
        "Missing one means not passed, whatever the marks."
    )


def total_marks(form: Mapping[str, Any]) -> int:
    """Add the marks of all questions of a form."""
    return sum(int(entry["marks"]) for entry in form["questions"])


def marks_text(marks: int) -> str:
    """Write a number of marks with its word."""
    return counted(marks, "mark", "marks")


def counted(count: int, one: str, several: str) -> str:
    """Write a count with the word that fits it."""
    return f"{count} {one if count == 1 else several}"


def listed(words: Sequence[str]) -> str:
    """Write words as a sentence lists them: one, two and three."""
    return " and ".join([", ".join(words[:-1])] * bool(words[1:]) + list(words[-1:]))


def words_of(name: str) -> str:
    """Write the last part of a record's name as words: film_build/wet_film is wet film."""
    return name.rpartition("/")[2].replace("_", " ")
