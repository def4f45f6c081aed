"""`guidecoat analyse` on what was issued: the figures of a table where everybody met one form."""

import csv
import json
import shutil
from io import StringIO
from pathlib import Path
from typing import Any

import pytest

from generator.records import open_records
from generator.records.issues.issues import void
from generator.records.people.people import add_people
from tests.bank.small_bank import REPOSITORY
from tests.command_line.running import misuse, run
from tests.reports.sat import AT, apprentices, issued, real_forms, sit, some_wrong
from tests.reports.toy_forms import choice, form_of, issue_of_forms, keep

PEOPLE = apprentices(36)
CODES = [person.code for person in PEOPLE]
ITEMS = [f"filler/mix/item_{n}" for n in range(1, 5)]
LETTERS = {"air": "B", "water": "C", "sand": "A"}
ROWS = [
    [("air", "water", "sand")[(n * 7 + k * 5 + n // 3) % 5 % 3] for k in range(4)]
    for n in range(36)
]


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    """Return a project with an issue of one form for all, and one of forms that differ."""
    root = tmp_path / "shop"
    (root / "question_bank").mkdir(parents=True)
    shutil.copy(REPOSITORY / "mkdocs.yml", root)
    with open_records(root / "records") as connection:
        add_people(connection, PEOPLE, AT)
        common = form_of("A", [choice(item, "BCA") for item in ITEMS])
        keep(connection, issue_of_forms(connection, [common]), common, ROWS, CODES)
        forms = [
            form_of(label, [choice(i) for i in ITEMS[k : k + 2]], form_id=f"SECOND{label}")
            for k, label in enumerate("AB")
        ]
        number = issue_of_forms(connection, [form | {"blueprint": "other"} for form in forms])
        for form in forms:
            keep(connection, number, form, [("air", "air"), ("air", "water")], CODES[:2])
    return root


def in_json(root: Path, *arguments: str) -> dict[str, Any]:
    """Run the command for a program."""
    result = run(root, "analyse", *arguments, "--format", "json")
    assert result.exit_code == 0, result.output
    found: dict[str, Any] = json.loads(result.stdout)
    return found


def as_table(root: Path) -> tuple[str, ...]:
    """Write the same answers as a table with its key; give the command's words."""
    text = StringIO()
    rows = [[code, *map(LETTERS.__getitem__, row)] for code, row in zip(CODES, ROWS, strict=True)]
    csv.writer(text).writerows([["person", *ITEMS], *rows])
    (root / "answers.csv").write_text(text.getvalue(), "utf-8")
    (root / "key.csv").write_text("item,key\n" + "".join(f"{i},B\n" for i in ITEMS), "utf-8")
    return "answers.csv", "--key", "key.csv"


def test_one_form_in_the_records_gives_the_figures_of_its_table(shop: Path) -> None:
    here = in_json(shop, "--issue", "1", "--cut", "2")
    table = in_json(shop, *as_table(shop), "--cut", "2")
    assert {name: here[name] for name in table if name != "items"} == {
        name: table[name] for name in table if name != "items"
    }
    assert [{name: item[name] for name in table["items"][0]} for item in here["items"]] == (
        table["items"]
    )
    assert here["alpha"] is not None and here["items"][0]["item_rest"] is not None


def test_the_text_of_one_form_is_that_of_its_table(shop: Path) -> None:
    here = run(shop, "analyse", "--issue", "1", "--cut", "2").stdout.splitlines()
    table = run(shop, "analyse", *as_table(shop), "--cut", "2").stdout.splitlines()
    assert here[0] == "Issues: 1"
    assert [line.replace(" (version bbbbbbbb)", "") for line in here[1:]] == table


def test_a_cut_that_is_not_given_is_that_of_the_form(shop: Path) -> None:
    assert in_json(shop, "--issue", "1")["decision"]["cut"] == 4


def test_the_documented_names_are_there(shop: Path) -> None:
    found = in_json(shop, "--issue", "2")
    assert {"issues", "waiting", "one_form", "common", "reasons", "trust"} <= set(found)
    assert {"version", "people", "facility", "item_rest", "flags"} <= set(found["items"][0])
    help_text = " ".join(run(shop, "analyse", "--help").stdout.split())
    for name in ("issues", "waiting", "one_form", "common", "version", "people"):
        assert f"`{name}`" in help_text


def test_forms_that_differ_say_what_they_have_in_common(shop: Path) -> None:
    found = in_json(shop, "--issue", "2")
    assert (found["one_form"], found["common"], found["alpha"]) == (False, [ITEMS[1]], None)
    assert found["reasons"]["alpha"] == "forms differ: 1 question stands on every form"
    text = run(shop, "analyse", "--issue", "2").stdout
    assert "People: 4   Items: 3, on forms that differ" in text
    assert "Everybody met 1 of the items" in text


def test_issues_are_pooled_by_item_version(shop: Path) -> None:
    found = in_json(shop, "--issue", "1", "--issue", "2", "--issue", "1")
    assert found["issues"] == [1, 2]
    assert {item["name"]: item["people"] for item in found["items"]} == dict(
        zip(ITEMS, (38, 40, 38, 36), strict=True)
    )


def test_a_blueprint_means_all_its_issues_that_were_not_voided(shop: Path) -> None:
    assert in_json(shop, "--blueprint", "other")["issues"] == [2]
    with open_records(shop / "records") as connection:
        void(connection, 2, "wrong day", AT)
    result = run(shop, "analyse", "--blueprint", "other")
    assert result.exit_code == 1
    assert "nothing was issued from the blueprint 'other'" in result.stderr
    hint = run(shop, "analyse", "--blueprint", "toy_chek").stderr
    assert "did you mean 'toy_check'?" in hint


def test_real_papers_of_one_person_each_are_analysed(tmp_path: Path, shop: Path) -> None:
    codes = tuple(CODES[:3])
    with open_records(shop / "records") as connection:
        forms = real_forms("new_hire_check", codes)
        number = issued(connection, forms, codes)
        for form in forms:
            sit(connection, number, form, some_wrong(1, 4))
    found = in_json(shop, "--issue", str(number))
    assert found["people"] == 3
    assert sum(item["people"] for item in found["items"]) == 3 * len(forms[0]["questions"])
    lost = sum(item["people"] - item["right"] for item in found["items"])
    assert lost == 3 * 2
    assert all(len(item["version"]) >= 8 for item in found["items"])


def test_what_cannot_be_analysed_is_refused_in_a_sentence(shop: Path) -> None:
    with open_records(shop / "records") as connection:
        empty = issue_of_forms(connection, [form_of("A", [choice(ITEMS[0])], form_id="EMPTY")])
        waits = form_of("A", [choice(ITEMS[0])], form_id="WAITS")
        waiting = issue_of_forms(connection, [waits])
        keep(connection, waiting, waits, [("?",)], [""])
    for number, says in (
        ("9", "there is no issue 9 in the records"),
        (str(empty), "nobody has answered these papers yet"),
        (str(waiting), "a person must still look at every paper"),
    ):
        result = run(shop, "analyse", "--issue", number)
        assert (result.exit_code, result.stdout) == (1, "")
        assert says in result.stderr and result.stderr.count("\n") == 1


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        ((), "give a table of RESPONSES with --key, or issues with --issue or --blueprint"),
        (("answers.csv", "--issue", "1"), "give a table of RESPONSES with --key, or issues"),
        (("answers.csv",), "a table of RESPONSES needs --key with the right answers"),
        (("--issue", "1", "--key", "key.csv"), "--key goes with RESPONSES"),
        (("--issue", "0"), "is not in the range"),
        (("--issue", "1", "--cut", "5"), "the cut 5 is above the 4 marks there are"),
        (("--issue", "2", "--cut", "1"), "a cut needs one form for everybody"),
    ],
)
def test_arguments_that_do_not_go_together_are_misuse(
    shop: Path, arguments: tuple[str, ...], says: str
) -> None:
    as_table(shop)
    assert says in misuse(shop, "analyse", *arguments)
