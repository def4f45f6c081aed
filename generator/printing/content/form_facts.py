"""State the facts of a form that all its papers share."""

from collections.abc import Sequence
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


def must_pass(form: IssuedForm) -> frozenset[int]:
    """Return the numbers of the questions that must be right, whatever the marks."""
    return frozenset(int(number) for number in form.get("gate", ()))


def gate_in_words(form: IssuedForm) -> str:
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


def total_marks(form: IssuedForm) -> int:
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
