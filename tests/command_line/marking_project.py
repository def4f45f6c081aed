"""A course project in whose records small forms were issued, and tables to mark for it."""

import csv
import shutil
from collections.abc import Iterable, Mapping, Sequence
from io import StringIO
from pathlib import Path

from click.testing import Result

from generator.records import Person, open_records
from generator.records.issues.frozen_forms import FrozenForm
from generator.records.issues.issues import freeze, papers_written
from generator.records.people.people import add_people
from generator.records.sittings.corrections import corrections_of
from generator.records.sittings.sittings import Sitting, sittings_of
from tests.bank.small_bank import REPOSITORY
from tests.command_line.running import run
from tests.marking.issued import Plain
from tests.marking.small_forms import ANN, BOB, RIGHT_CELLS, small_form

AT = "2026-03-02T10:00:00"
TRAINER = "Trainer 1"
HEADER = ("form", "label", "person", "1", "2", "3", "4", "5", "6")
WRONG_CELLS = ("A", "B", "30", "D C B A", "1A 2B 3C", "0 0 0")


def marking_project(root: Path, *forms: Plain) -> Path:
    """Make a project with people and one issue: forms for Ann and Bob, and one for nobody."""
    (root / "question_bank").mkdir(parents=True)
    shutil.copy(REPOSITORY / "mkdocs.yml", root)
    made = forms or (
        small_form("A", ANN, must_pass=(1,)),
        small_form("B", BOB, must_pass=(1,)),
        small_form("C", must_pass=(1,)),
    )
    with open_records(root / "records") as connection:
        add_people(connection, [Person(ANN, "Ann Example"), Person(BOB)], AT)
        add_people(connection, [Person(TRAINER, role="trainer")], AT)
    issue_forms(root, made)
    return root


def issue_forms(root: Path, forms: Iterable[Plain]) -> int:
    """Freeze forms as an issue and give its number."""
    with open_records(root / "records") as connection:
        number = freeze(
            connection,
            blueprint="small_check",
            title="Small check",
            seed="spring",
            edition="1",
            bank_hash="b" * 12,
            settings={"paper": "a4"},
            forms=[FrozenForm(form["form"], form, form["person"]) for form in forms],
            at=AT,
        )
        papers_written(connection, number)
    return number


def row(label: str, *cells: str, person: str = "") -> tuple[str, ...]:
    """Return the row of a form; without cells every answer is right."""
    filled = cells or RIGHT_CELLS
    return (small_form(label)["form_id"], label, person, *filled, *[""] * (6 - len(filled)))


def table(root: Path, *rows: Sequence[str], name: str = "answers.csv") -> str:
    """Write a filled-in table and give its name."""
    text = StringIO()
    csv.writer(text).writerows([HEADER, *rows])
    (root / name).write_text(text.getvalue(), "utf-8")
    return name


def marked(root: Path, *arguments: str) -> Result:
    """Run `guidecoat mark`, which must succeed."""
    result = run(root, "mark", *arguments)
    assert result.exit_code == 0, result.output
    return result


def kept(root: Path, issue: int = 1) -> dict[str, Sitting]:
    """Return the sittings of an issue by the label of their form and their person."""
    with open_records(root / "records") as connection:
        found = sittings_of(connection, issue)
    return {f"{s.label} {s.person}".strip(): s for s in found}


def verdicts(root: Path) -> Mapping[str, str]:
    """Return the verdict of each sitting."""
    return {name: sitting.marked.verdict for name, sitting in kept(root).items()}


def corrections(root: Path) -> int:
    """Count the corrections of the first issue."""
    with open_records(root / "records") as connection:
        return len(corrections_of(connection, 1))


def refused(shop: Path, *arguments: str) -> str:
    """Run `guidecoat mark` that must refuse and keep nothing; give what it says."""
    before = kept(shop)
    result = run(shop, "mark", *arguments)
    assert result.exit_code == 1, result.output
    assert result.stdout == ""
    assert kept(shop) == before
    return result.stderr
