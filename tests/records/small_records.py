"""Small records: a trainer, two learners, a paper of three questions, answers with marks."""

import sqlite3
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import date
from fractions import Fraction
from pathlib import Path
from typing import Any

from generator.records import Person, open_records
from generator.records.certificates.certificates import Training
from generator.records.issues.frozen_forms import FrozenForm
from generator.records.issues.issues import freeze, papers_written
from generator.records.people.people import add_people
from generator.records.practice.dated_facts import DatedFact, add_fact
from generator.records.practice.observations import Observation, ObservedStep, observe
from generator.records.sittings.sittings import NewSitting, keep_sittings
from generator.records.sittings.stored_marks import KeptMark, Marked, Verdict

AT = "2026-03-02T10:00:00"
TODAY = date(2026, 11, 25)
ANN = Person("Apprentice 01", "Ann Example")
BOB = Person("Apprentice 02", "Bob Sample")
TRAINER = Person("Trainer 1", "Tess Model", "trainer")
PLAN = "painter_training"
TRAINING = Training("1", frozenset({PLAN}))
# what has to be watched, in the order of the certificate
WORK = ("set_the_gun", "flow_cup", "spray_flat_panel", "change_filters", "clean_the_gun")


@contextmanager
def small_records(folder: Path) -> Iterator[sqlite3.Connection]:
    """Open new records with a trainer and two learners."""
    with open_records(folder / "records") as connection:
        add_people(connection, (ANN, BOB, TRAINER), AT)
        yield connection


def question(number: int, text: str = "") -> dict[str, Any]:
    """Return a choice question as plain JSON."""
    return {
        "id": f"mixing/flow_cup/item_{number}",
        "objective": "mixing/flow_cup",
        "kind": "choice",
        "stem": f"What does step {number} need? {text}",
        "key": {"options": [{"letter": "A", "text": "Air", "right": True, "says": "Yes."}]},
    }


def form(label: str = "A", person: str = "", text: str = "") -> FrozenForm:
    """Return a form of three questions of two marks."""
    content = {
        "title": "Cup check",
        "blueprint": "cup_check",
        "form": label,
        "edition": "1",
        "seed": "spring",
        "person": person,
        "questions": [
            {"number": n, "marks": 2, "must_pass": n == 1, "question": question(n, text)}
            for n in (1, 2, 3)
        ],
    }
    return FrozenForm(label, content, person)


# one question for each topic of painter training; which guns are allowed belongs to two of them
OBJECTIVES = ("spray_gun/allowed_guns", "spray_gun/gun_stroke", "booth_climate/change_filters")


def training_form(
    label: str = "A", person: str = "", objectives: Sequence[str] = OBJECTIVES
) -> FrozenForm:
    """Return a form of painter training that asks these objectives."""
    plain = form(label, person)
    content = plain.content | {
        "blueprint": PLAN,
        "pass_percent": 80,
        "questions": [
            {**entry, "question": {**entry["question"], "objective": objective}}
            for entry, objective in zip(plain.content["questions"], objectives, strict=True)
        ],
    }
    return FrozenForm(label, content, person)


def issued(connection: sqlite3.Connection, *forms: FrozenForm, blueprint: str = "cup_check") -> int:
    """Freeze and issue forms; give the number of the issue."""
    number = freeze(
        connection,
        blueprint=blueprint,
        title="Cup check",
        seed="spring",
        edition="1",
        bank_hash="b" * 12,
        settings={"paper": "a4"},
        forms=forms,
        at=AT,
    )
    papers_written(connection, number)
    return number


def marked(*shares: int, verdict: Verdict = "passed", says: str = "Well done.") -> Marked:
    """Return a marking; a share is 1 for right and 0 for wrong."""
    marks = tuple(
        KeptMark(n, Fraction(share), "right" if share else "wrong", {"notes": [says]})
        for n, share in enumerate(shares, start=1)
    )
    return Marked(verdict, Fraction(2 * sum(shares)), 2 * len(shares), marks)


def sitting(label: str = "A", person: str = "", answer: str = "A", **more: Any) -> NewSitting:
    """Return a sitting with all right, or with other marks as `marked` takes them."""
    responses = {str(n): {"form": "chosen", "letters": [answer]} for n in (1, 2, 3)}
    marks = more.get("marks", marked(1, 1, 1))
    return NewSitting(label, responses, marks, person, more.get("sat", ""))


def bytes_of(folder: Path) -> bytes:
    """Return the bytes of every file in a folder, one after the other."""
    return b"\n".join(path.read_bytes() for path in sorted(folder.rglob("*")) if path.is_file())


ALL_DONE = (
    ObservedStep("gloves_on", "Put the gloves on", True, "yes"),
    ObservedStep("work", "Do the work", False, "yes"),
)
STEPS = (
    ObservedStep("gloves_on", "Put the gloves on", True, "yes"),
    ObservedStep("stir", "Stir the mix", False, "not_seen"),
)


def look(
    person: str = ANN.code, steps: tuple[ObservedStep, ...] = STEPS, **more: str
) -> Observation:
    """Return an observation of two steps."""
    text = {"observer": TRAINER.code, "observed": "2026-03-01", "procedure": "mix_two_pack"} | more
    return Observation(person=person, title="Mix a two-pack", steps=steps, **text)


def watched(connection: sqlite3.Connection, code: str, *work: str, **more: str) -> None:
    """Watch a person do pieces of work with every step done."""
    for procedure in work:
        observe(connection, look(code, ALL_DONE, procedure=procedure, **more), AT)


def passed(connection: sqlite3.Connection, code: str = ANN.code) -> int:
    """Let a person pass the paper of painter training; give the number of the issue."""
    number = issued(connection, training_form("A", code), blueprint=PLAN)
    keep_sittings(connection, number, [sitting("A")], AT, TRAINER.code)
    return number


def trained(connection: sqlite3.Connection, code: str = ANN.code, **look_more: str) -> None:
    """Return a person all that a certificate asks for."""
    passed(connection, code)
    watched(connection, code, *WORK, **look_more)
    add_fact(connection, DatedFact(code, "painter_training", "2024-02-29"), AT, TODAY)
