"""Time every command that uses the records, with its memory: 5,000 people with 20 results each.

Run it by `python tests/benchmarks/bench_records.py`. It fills a folder first, which takes minutes;
name a folder to fill it once and use it again.

Each result is a paper of 20 questions with its answers, marks and findings.
"""

import csv
import os
import random
import shutil
import sys
import tempfile
import time
from collections.abc import Iterator, Sequence
from fractions import Fraction
from io import StringIO
from pathlib import Path
from typing import Any

import openpyxl

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from generator.marking import answer_table  # noqa: E402
from generator.records import Person, open_records  # noqa: E402
from generator.records.issues.frozen_forms import FrozenForm  # noqa: E402
from generator.records.issues.issues import exposure, freeze, papers_written  # noqa: E402
from generator.records.people.people import add_people  # noqa: E402
from generator.records.practice.dated_facts import DatedFact, add_fact  # noqa: E402
from generator.records.practice.observations import observe  # noqa: E402
from generator.records.sittings.answers import shares_of_items  # noqa: E402
from generator.records.sittings.sittings import NewSitting, keep_sittings  # noqa: E402
from generator.records.sittings.stored_marks import KeptMark, Marked  # noqa: E402
from tests.records.small_records import AT, TODAY, TRAINER, look  # noqa: E402

PEOPLE, RESULTS, CLASS, QUESTIONS = 5_000, 20, 200, 20
ITEMS, VARIANTS = 400, 12
MOST_SECONDS, MOST_MEGABYTES = 2.0, 300.0
OBJECTIVES = ("mixing/flow_cup", "filler/mix", "primers/block", "spray_gun/gun_stroke")
SAYS = "A longer sentence that tells why this is right, as long as the usual ones of the bank are."
ANN, BOB = "Apprentice 0042", "Apprentice 0043"
# a paper and a page for each of 200 people take the time that they take; the memory is limited
WHOLE_CLASS = ("report", "1")


def question(item: int, variant: int) -> dict[str, Any]:
    """Return a choice question of the usual size."""
    options = [
        {"letter": x, "text": f"Way {x} of item {item}", "right": x == "B", "says": SAYS}
        for x in "ABC"
    ]
    return {
        "id": f"{OBJECTIVES[item % 4]}/item_{item:03}",
        "objective": OBJECTIVES[item % 4],
        "kind": "choice",
        "stem": f"Item {item} with the numbers of variant {variant}. {SAYS} {SAYS}",
        "sheet": None,
        "table": None,
        "sources": [{"tag": "common_practice", "key": "", "text": "Common practice"}],
        "key": {"options": options},
    }


STOCK = [[question(item, variant) for variant in range(VARIANTS)] for item in range(ITEMS)]


def form(label: str, person: str, chance: random.Random) -> FrozenForm:
    """Return a form of 20 questions for a person."""
    items = chance.sample(range(ITEMS), QUESTIONS)
    entries = [
        {"number": n, "marks": 1, "must_pass": n < 3, "question": STOCK[i][chance.randrange(12)]}
        for n, i in enumerate(items, start=1)
    ]
    head = {"title": "Paper", "form": label, "seed": "s", "edition": "1", "person": person}
    head["form_id"] = "".join(chance.choices("0123456789ABCDEFGHJKMNPQRSTVWXYZ", k=8))
    cut = {"marks": QUESTIONS, "pass_percent": 80, "pass_marks": 16, "gate": [1, 2]}
    return FrozenForm(label, {**head, **cut, "questions": entries}, person)


def sitting(label: str, chance: random.Random) -> NewSitting:
    """Return answers with marks and findings, four of five right."""
    letters = ["B" if chance.random() < 0.8 else chance.choice("AC") for _ in range(QUESTIONS)]
    marks = [mark(number, letter) for number, letter in enumerate(letters, start=1)]
    points = sum((mark.share for mark in marks), Fraction(0))
    verdict = "passed" if points >= 16 else "not_passed"
    responses = {
        str(number): {"form": "chosen", "letters": [letter]}
        for number, letter in enumerate(letters, start=1)
    }
    return NewSitting(label, responses, Marked(verdict, points, QUESTIONS, tuple(marks)))


def mark(number: int, letter: str) -> KeptMark:
    """Mark a letter, with findings as marking gives them."""
    said = [{"about": "option", "place": letter, "text": SAYS}]
    if letter == "B":
        return KeptMark(number, Fraction(1), "right", {"notes": said})
    return KeptMark(number, Fraction(0), "wrong", {"went_wrong": said})


def fill(folder: Path) -> None:
    """Write people, papers, answers, dates and practice."""
    chance = random.Random(1)
    people = [Person(f"Apprentice {n:04}", f"Name {n}") for n in range(PEOPLE)]
    with open_records(folder) as connection:
        connection.execute("PRAGMA synchronous = OFF")
        add_people(connection, [*people, TRAINER], AT)
        for start in range(0, PEOPLE, CLASS):
            for paper in range(RESULTS):
                one_class(connection, people[start : start + CLASS], paper, chance)
        for person in people:
            for kind in ("painter_training", "fit_test"):
                day = f"{chance.randrange(2021, 2026)}-{chance.randrange(1, 13):02}-15"
                add_fact(connection, DatedFact(person.code, kind, day), AT, TODAY)
            observe(connection, look(person.code), AT)


def one_class(
    connection: Any, people: Sequence[Person], paper: int, chance: random.Random
) -> tuple[float, float]:
    """Issue and mark one paper for a class; give the seconds of each."""
    forms = [form(str(n), person.code, chance) for n, person in enumerate(people)]
    start = time.perf_counter()
    number = issue_forms(connection, forms, paper)
    between = time.perf_counter()
    answers = [sitting(form.label, chance) for form in forms]
    middle = time.perf_counter()
    keep_sittings(connection, number, answers, AT)
    return between - start, time.perf_counter() - middle


def issue_forms(connection: Any, forms: Sequence[FrozenForm], paper: int) -> int:
    """Issue the forms of a class and give the number of the issue."""
    number = freeze(
        connection,
        blueprint=f"paper_{paper}",
        title=f"Paper {paper}",
        seed="s",
        edition="1",
        bank_hash="b" * 12,
        settings={},
        forms=forms,
        at=AT,
    )
    papers_written(connection, number)
    return number


COMMANDS: tuple[tuple[str, ...], ...] = (
    ("people", "--list"),
    ("date", ANN, "fit_test", "--done", "2026-01-15"),
    ("observe", ANN, "mix_two_pack", "protect=yes", "--observer", TRAINER.code)
    + ("--date", "2026-03-01"),
    ("due", "--within", "60"),
    ("certificate", ANN, "--trainer", TRAINER.code),
    ("pack", "inspection"),
    ("export", ANN),
    ("erase", ANN, "--yes"),
    ("backup", "copy.sqlite"),
    ("check",),
    ("retention",),
    ("sheet", "mix_two_pack"),
)


# on the first issue, which a whole class answered
REPORTS: tuple[tuple[str, ...], ...] = (
    ("report", "1", "--class"),
    ("report", "1", "--form", "7"),
    ("report", "1", "--person", BOB),
    ("analyse", "--issue", "1"),
    ("analyse", "--blueprint", "paper_0"),
    WHOLE_CLASS,
)


def run(root: Path, words: Sequence[str], expected: int = 0) -> tuple[float, float, float]:
    """Run a command in a project; give seconds, seconds of the processor, and most memory in MB."""
    start = time.perf_counter()
    child = os.fork()
    if child == 0:
        os.chdir(root)
        os.environ["PYTHONPATH"] = str(ROOT)
        os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
        os.dup2(1, 2)
        os.execv(sys.executable, [sys.executable, "-m", "generator", *words])
    _, status, used = os.wait4(child, 0)
    if os.waitstatus_to_exitcode(status) != expected:
        raise SystemExit(f"'{' '.join(words)}' did not end with {expected}")
    seconds = time.perf_counter() - start
    return seconds, used.ru_utime + used.ru_stime, used.ru_maxrss / 1024


def measured(root: Path) -> Iterator[tuple[str, float, float, float]]:
    """Return name, seconds, processor seconds and MB of every command, run one after the other."""
    for words in COMMANDS:
        yield words[0], *run(root, ("records", *words))
    for words in REPORTS:
        yield " ".join(words[:3]).replace("--", ""), *run(root, words)
    number = tables_to_mark(root)
    yield "mark 200 papers", *run(root, ("mark", "answers.csv"))
    yield "mark them again", *run(root, ("mark", "answers.csv"))
    yield "mark a workbook", *run(root, ("mark", "answers.xlsx"))
    yield "refuse 200 papers", *run(root, ("mark", "strange.csv"), 1)
    which = ("--form", "0", "--question", "1", "--leave-out", "--reason", "unclear", "--yes")
    yield "correct", *run(root, ("correct", str(number), *which))


def tables_to_mark(root: Path) -> int:
    """Issue papers to a class and write its answers as tables; give the number of the issue."""
    chance = random.Random(3)
    labels = [str(n) for n in range(CLASS)]
    forms = [form(label, f"Apprentice {200 + int(label):04}", chance) for label in labels]
    with open_records(root / "records") as connection:
        number = issue_forms(connection, forms, 98)
    rows = list(csv.reader(StringIO(answer_table([form.content for form in forms]))))
    filled = [rows[0], *([*row[:3], *"ABBCB" * (QUESTIONS // 5)] for row in rows[1:])]
    strange = [rows[0], *([f"{row[0][:6]}ZZ", *row[1:]] for row in filled[1:])]
    for name, cells in (("answers.csv", filled), ("strange.csv", strange)):
        with (root / name).open("w", encoding="utf-8", newline="") as file:
            csv.writer(file).writerows(cells)
    book = openpyxl.Workbook()
    for row in filled:
        book.active.append(row)
    book.save(root / "answers.xlsx")
    return number


def inside(root: Path) -> Iterator[tuple[str, float]]:
    """Return name and seconds of what issuing, marking and analysing ask of the records."""
    chance = random.Random(2)
    people = [Person(f"Apprentice {n:04}") for n in range(100, 100 + CLASS)]
    with open_records(root / "records") as connection:
        seconds = one_class(connection, people, 99, chance)
        yield from zip(("freeze 200 forms", "keep 200 sittings"), seconds, strict=True)
        for work in (exposure, shares_of_items):
            start = time.perf_counter()
            work(connection)
            yield work.__name__, time.perf_counter() - start


def project(place: Path, kept: Path) -> Path:
    """Make a project with the real bank and a copy of the filled records."""
    root = place / "shop"
    root.mkdir()
    for name in ("question_bank", "course", "site_theme", "mkdocs.yml"):
        (root / name).symlink_to(ROOT / name)
    if not (kept / "records").exists():
        start = time.perf_counter()
        fill(kept / "records")
        print(f"filled in {time.perf_counter() - start:.0f} s")
    shutil.copytree(kept / "records", root / "records")
    return root


def main(kept: Path | None) -> None:
    """Print one line a command, and stop with exit 1 when one is over its limits."""
    over = False
    with tempfile.TemporaryDirectory() as temporary:
        root = project(Path(temporary), kept or Path(temporary))
        size = sum(path.stat().st_size for path in (root / "records").iterdir()) / 1e6
        print(
            f"{PEOPLE} people, {PEOPLE * RESULTS} results of {QUESTIONS} questions, {size:.0f} MB"
        )
        print(f"{'command':<20}{'seconds':>9}{'processor':>11}{'MB':>6}")
        for name, seconds, busy, megabytes in measured(root):
            late = seconds > MOST_SECONDS and name != " ".join(WHOLE_CLASS)
            late |= megabytes > MOST_MEGABYTES
            over |= late
            line = f"{name:<20}{seconds:>9.2f}{busy:>11.2f}{megabytes:>6.0f}"
            print(line + ("   OVER" if late else ""))
        for name, seconds in inside(root):
            print(f"{name:<20}{seconds:>9.2f}")
    sys.exit(over)


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else None)
