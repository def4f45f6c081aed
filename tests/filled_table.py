"""Fills in the table of answers of an issue as a class would that knows so much."""

import csv
from pathlib import Path

from generator.records import open_records
from generator.records.issues.issues import issue_of

ANSWERS = Path("printed") / "issue-1" / "answers.csv"


def right_answer(question: dict) -> str:
    """Return what a person who knows would write into the table."""
    key, kind = question["key"], question["kind"]
    if kind in ("choice", "multiple_response"):
        return " ".join(option["letter"] for option in key["options"] if option["right"])
    if kind == "numeric":
        return key["shown"]
    if kind == "order":
        return " ".join(key["one_order"])
    if kind == "match":
        return " ".join(f"{number}{letter}" for number, letter in key["answers"].items())
    return " ".join(str(point["marks"]) for point in key["points"])


def fill_in(shop: Path, known: dict[str, int]) -> None:
    """Fill in the table: each person answers so many questions from the first, and leaves the rest.

    known  how many, by the person's code
    """
    with open_records(shop / "records") as connection:
        forms = {form.form_id: form for form in issue_of(connection, 1).forms}
    head, *rows = csv.reader((shop / ANSWERS).read_text("utf-8").splitlines())
    assert [row[0] for row in rows] == list(forms)
    for row in rows:
        form = forms[row[0]]
        for entry in form.content["questions"][: known[form.person]]:
            row[head.index(str(entry["number"]))] = right_answer(entry["question"])
    with (shop / ANSWERS).open("w", encoding="utf-8", newline="") as table:
        csv.writer(table).writerows([head, *rows])
