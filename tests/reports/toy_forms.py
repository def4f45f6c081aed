"""Small forms written by hand, so that each test shows what was asked and what was answered."""

import sqlite3
from collections.abc import Mapping, Sequence
from fractions import Fraction
from typing import Any

from generator.marking import Chosen, Illegible, Response, mark_form, response_as_plain
from generator.records.issues.frozen_forms import FrozenForm
from generator.records.issues.issues import freeze, papers_written
from generator.records.sittings.form_marks import as_marked
from generator.records.sittings.sittings import NewSitting, keep_sittings
from generator.records.sittings.stored_marks import KeptMark
from generator.reports.answered_papers import Answer, SatPaper
from generator.reports.course_names import CourseNames

Plain = dict[str, Any]
AT = "2026-03-02T10:00:00"
NAMES = CourseNames(
    modules={"cleaning": "Cleaning", "filler": "Filler", "mixing": "Mixing"},
    objectives={
        "cleaning/wash": "Wash a panel",
        "filler/mix": "Mix filler",
        "filler/shape": "Shape filler",
        "mixing/cup": "Time a cup",
    },
    lessons=frozenset({"cleaning", "filler", "mixing"}),
    practised=frozenset({"filler/mix"}),
)


def choice(item: str, letters: str = "ABC", right: str = "air", objective: str = "") -> Plain:
    """Return a choice of air, water and sand, lettered in an order of its own."""
    texts = dict(zip(letters, ("air", "water", "sand"), strict=True))
    objective = objective or "/".join(item.split("/")[:2])
    return {
        "id": item,
        "kind": "choice",
        "module": objective.partition("/")[0],
        "objective": objective,
        "safety": False,
        "stem": f"What does {item} need?",
        "key": {
            "options": [
                {"letter": letter, "text": texts[letter], "right": texts[letter] == right}
                | {"says": f"About {texts[letter]}."}
                for letter in sorted(texts)
            ]
        },
    }


def form_of(
    label: str, questions: Sequence[Plain], *, marks: int = 1, gate: Sequence[int] = (), **more: Any
) -> Plain:
    """Return a form of some questions, each worth the same."""
    total = marks * len(questions)
    return {
        "form_id": more.get("form_id", f"F0RM{label}"),
        "title": "Toy check",
        "blueprint": "toy_check",
        "form": label,
        "edition": "1",
        "seed": "spring",
        "minutes": 10,
        "marks": total,
        "pass_percent": 80,
        "pass_marks": -(-total * 80 // 100),
        "gate": list(gate),
        "person": "",
        "guesser_passes": 0.0,
        "mastery_marks": None,
        "questions": [
            {"number": n, "marks": marks, "must_pass": n in gate, "question": question}
            for n, question in enumerate(questions, start=1)
        ],
        "constants": [],
        "cautions": [],
    }


def issue_of_forms(
    connection: sqlite3.Connection,
    forms: Sequence[Plain],
    codes: Sequence[str] = (),
    versions: Mapping[str, str] | None = None,
) -> int:
    """Freeze and issue forms; give the number of the issue."""
    persons = codes or [""] * len(forms)
    number = freeze(
        connection,
        blueprint=forms[0]["blueprint"],
        title=forms[0]["title"],
        seed=forms[0]["seed"],
        edition=forms[0]["edition"],
        bank_hash="b" * 12,
        settings={"paper": "a4"},
        forms=[FrozenForm(f["form"], f, p) for f, p in zip(forms, persons, strict=True)],
        at=AT,
        versions=versions,
    )
    papers_written(connection, number)
    return number


def text_chosen(question: Plain, *texts: str) -> Chosen:
    """Choose options by their text."""
    return Chosen(tuple(o["letter"] for o in question["key"]["options"] if o["text"] in texts))


def new_sitting(form: Plain, responses: Mapping[int, Response], person: str = "") -> NewSitting:
    """Return a sitting with its marks."""
    plain = {str(number): response_as_plain(given) for number, given in responses.items()}
    return NewSitting(form["form"], plain, as_marked(mark_form(form, responses)), person)


def keep(
    connection: sqlite3.Connection,
    issue: int,
    form: Plain,
    rows: Sequence[Sequence[str]],
    people: Sequence[str],
) -> None:
    """Keep a row of chosen texts for each person; '?' is illegible."""
    sittings = []
    for row, person in zip(rows, people, strict=True):
        responses: dict[int, Response] = {
            entry["number"]: Illegible() if text == "?" else text_chosen(entry["question"], text)
            for entry, text in zip(form["questions"], row, strict=True)
        }
        sittings.append(new_sitting(form, responses, person))
    keep_sittings(connection, issue, sittings, AT)


def answer(
    number: int,
    share: Fraction | int = 1,
    *,
    item: str = "filler/mix/ratio",
    status: str = "",
    must_pass: bool = False,
    marks: int = 1,
    question: Plain | None = None,
    findings: Plain | None = None,
    response: Plain | None = None,
) -> Answer:
    """Return an answer with its mark."""
    share = Fraction(share)
    status = status or ("right" if share == 1 else "part" if share else "wrong")
    found = findings or {}
    return Answer(
        number=number,
        marks=marks,
        must_pass=must_pass,
        question=question or choice(item),
        response=response or {},
        mark=KeptMark(number, share, status, found),
        left_out=bool(found.get("left_out")),
    )


def paper_of(answers: Sequence[Answer], verdict: str = "not_passed", **more: Any) -> SatPaper:
    """Return a paper of some answers."""
    counted = [a for a in answers if not a.left_out]
    most = sum(a.marks for a in counted)
    values = {
        "issue": 3,
        "blueprint": "toy_check",
        "title": "Toy check",
        "label": "B",
        "form_id": "F0RMB",
        "edition": "1",
        "person": "Apprentice 01",
        "sat": AT,
        "verdict": verdict,
        "points": sum((a.mark.share * a.marks for a in counted), Fraction(0)),
        "most": most,
        "pass_marks": -(-most * 80 // 100),
        "pass_percent": 80,
        "answers": tuple(answers),
    }
    return SatPaper(**(values | more))


def took(letter: str, text: str) -> Plain:
    """Return the finding of a wrong option."""
    return {"went_wrong": [{"about": "option", "place": letter, "text": text}], "notes": []}
