"""Records with real forms that were sat: questions from the real bank, answers marked by rule."""

import sqlite3
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from functools import cache
from pathlib import Path
from typing import Any

from generator.assembly import assemble, form_as_plain, form_labels
from generator.marking import (
    Awarded,
    Blank,
    Chosen,
    Illegible,
    Matched,
    Ordered,
    Response,
    Typed,
    mark_form,
    response_as_plain,
)
from generator.questions import askables, item_versions
from generator.records import Person, open_records
from generator.records.issues.frozen_forms import FrozenForm
from generator.records.issues.issues import freeze, papers_written
from generator.records.people.people import add_people
from generator.records.sittings.form_marks import as_marked
from generator.records.sittings.sittings import NewSitting, keep_sittings
from tests.records.real_bank import real_bank

Plain = dict[str, Any]
Answering = Callable[[Plain], Response]
AT = "2026-03-02T10:00:00"
TRAINER = Person("Trainer 1", "Tess Model", "trainer")


def apprentices(count: int) -> tuple[Person, ...]:
    """Return so many learners with codes and names."""
    return tuple(Person(f"Apprentice {n:02}", f"Learner Name {n:02}") for n in range(1, count + 1))


@cache
def versions() -> Mapping[str, str]:
    """Return the version of every askable of the real bank."""
    return item_versions(real_bank(), askables(real_bank()))


@cache
def real_forms(blueprint: str, people: tuple[str, ...], seed: str = "spring") -> tuple[Plain, ...]:
    """Assemble a form of the real bank for each person."""
    bank = real_bank()
    labels = form_labels(len(people))
    named = people if all(people) else ()
    built = assemble(bank, bank.blueprints[blueprint], seed, labels, named)
    return tuple(form_as_plain(form) for form in built.forms)


@contextmanager
def records_with(folder: Path, people: Sequence[Person]) -> Iterator[sqlite3.Connection]:
    """Open new records with a trainer and some learners."""
    with open_records(folder / "records") as connection:
        add_people(connection, (*people, TRAINER), AT)
        yield connection


def issued(connection: sqlite3.Connection, forms: Sequence[Plain], codes: Sequence[str]) -> int:
    """Freeze and issue forms; give the number of the issue."""
    number = freeze(
        connection,
        blueprint=forms[0]["blueprint"],
        title=forms[0]["title"],
        seed=forms[0]["seed"],
        edition=forms[0]["edition"],
        bank_hash="b" * 12,
        settings={"paper": "a4", "large_print": False, "on_screen": False},
        forms=[
            FrozenForm(form["form"], form, code) for form, code in zip(forms, codes, strict=True)
        ],
        at=AT,
        versions=versions(),
    )
    papers_written(connection, number)
    return number


def sit(
    connection: sqlite3.Connection,
    issue: int,
    form: Plain,
    answer: Callable[[Plain, int], Response | None],
    person: str = "",
    at: str = AT,
) -> None:
    """Answer a form, mark it and keep it; an answer of nothing is not entered."""
    responses = {
        entry["number"]: response
        for entry in form["questions"]
        if (response := answer(entry["question"], entry["number"])) is not None
    }
    plain = {str(number): response_as_plain(given) for number, given in responses.items()}
    marked = as_marked(mark_form(form, responses))
    keep_sittings(connection, issue, [NewSitting(form["form"], plain, marked, person)], at)


def right(question: Plain) -> Response:
    """Return a fully right answer."""
    key = question["key"]
    match question["kind"]:
        case "choice" | "multiple_response":
            return Chosen(tuple(o["letter"] for o in key["options"] if o["right"]))
        case "numeric":
            return Typed(f"{key['shown']} {key['unit_symbol']}".strip())
        case "order":
            return Ordered(tuple(key["one_order"]))
        case "match":
            return Matched(tuple(key["answers"].items()))
    return Awarded(tuple(point["marks"] for point in key["points"]))


def wrong(question: Plain, which: int = 0) -> Response:
    """Return a wrong answer, and a known slip where the question has one."""
    key = question["key"]
    match question["kind"]:
        case "choice":
            letters = [o["letter"] for o in key["options"] if not o["right"]]
            return Chosen((letters[which % len(letters)],))
        case "multiple_response":
            return Chosen(tuple(o["letter"] for o in key["options"] if not o["right"])[:1])
        case "numeric":
            slips = key["slips"]
            return Typed(slips[which % len(slips)]["shown"]) if slips else Typed("987654")
        case "order":
            return Ordered(tuple(reversed(key["one_order"])))
        case "match":
            numbers = list(key["answers"])
            letters = list(key["answers"].values())
            return Matched(tuple(zip(numbers, (*letters[1:], letters[0]), strict=True)))
    return Awarded(tuple(0 for _ in key["points"]))


def some_wrong(*numbers: int) -> Callable[[Plain, int], Response]:
    """Answer rightly but for some numbers."""
    return lambda question, number: (
        wrong(question, number) if number in numbers else right(question)
    )


BLANK, ILLEGIBLE = Blank(), Illegible()
