"""A slip of the hand asks first, says what it takes with it, and can be taken back."""

from contextlib import chdir
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.command_line import asking
from generator.command_line.main import main
from generator.records import open_records
from generator.records.people.people import all_people
from generator.records.sittings.results import all_results
from tests.command_line.records_project import shop as shop
from tests.command_line.running import misuse, run
from tests.command_line.test_records import ANN, TRAINER, records, refused, with_people
from tests.records.small_records import passed

ON = ("--on", "2026-11-25")


def answered(shop: Path, answer: str, *arguments: str) -> Result:
    """Run a command of the group with somebody at the keyboard who answers."""
    with chdir(shop), pytest.MonkeyPatch.context() as patch:
        patch.setattr(asking, "somebody_is_there", lambda: True)
        return CliRunner().invoke(main, ["records", *arguments], input=answer)


def results(shop: Path) -> int:
    """Count the results that stand."""
    with open_records(shop / "records") as connection:
        return len(list(all_results(connection)))


def with_a_paper(shop: Path) -> None:
    """Let a learner pass a paper."""
    with_people(shop)
    with open_records(shop / "records") as connection:
        passed(connection, ANN)


VOID = ("void", "1", "--reason", "typo, meant 11")


def test_a_void_in_a_pipe_is_refused_and_says_what_it_would_take(shop: Path) -> None:
    with_a_paper(shop)
    assert refused(shop, *VOID) == (
        "you are about to void issue 1, painter_training: 1 form, 1 marked paper. Nobody is at the "
        "keyboard to say yes, so nothing was changed; add --yes if you mean it"
    )
    assert results(shop) == 1


@pytest.mark.parametrize("answer", ["n\n", "\n", ""])
def test_a_void_asks_and_anything_but_yes_changes_nothing(shop: Path, answer: str) -> None:
    with_a_paper(shop)
    asked = answered(shop, answer, *VOID)
    assert asked.exit_code == 1
    assert "1 marked paper" in asked.stderr
    assert "None of it counts until the void is taken back. Void it?" in asked.stderr
    assert asked.stderr.rstrip().endswith("Error: nothing was changed")
    assert results(shop) == 1


@pytest.mark.parametrize("asked", [False, True])
def test_a_void_is_taken_back_whole(shop: Path, asked: bool) -> None:
    with_a_paper(shop)
    done = answered(shop, "y\n", *VOID) if asked else run(shop, "records", *VOID, "--yes")
    assert done.exit_code == 0
    assert done.stdout == "voided: issue 1, painter_training: 1 form, 1 marked paper\n"
    assert "guidecoat records void 1 --take-back" in done.stderr
    assert results(shop) == 0
    assert refused(shop, *VOID, "--yes") == "issue 1 was voided already: typo, meant 11"
    back = records(shop, "void", "1", "--take-back", "--reason", "meant issue 11")
    assert back.stdout == "in use again: issue 1, painter_training: 1 form, 1 marked paper\n"
    assert results(shop) == 1
    listed = records(shop, "issues").stdout
    assert "voided: typo, meant 11; taken back: meant issue 11" in listed


def test_an_erasure_asks_at_the_keyboard(shop: Path) -> None:
    with_people(shop)
    kept = answered(shop, "n\n", "erase", ANN)
    assert kept.exit_code == 1
    assert "Nothing brings it back. Erase?" in kept.stderr
    assert answered(shop, "y\n", "erase", ANN).exit_code == 0
    with open_records(shop / "records") as connection:
        assert ANN not in {person.code for person in all_people(connection)}


@pytest.mark.parametrize(
    ("kind", "more", "said"),
    [
        (
            "painter_training",
            ("--done", "1999-01-01"),
            "would be overdue at once, since 2004-01-01",
        ),
        ("medical", ("--done", "1999-01-01"), "is more than 10 years ago"),
        ("medical", ("--done", "2026-01-01", "--due", "2062-01-01"), "would be due only on 2062"),
    ],
)
def test_a_day_that_looks_odd_is_asked_about(
    shop: Path, kind: str, more: tuple[str, ...], said: str
) -> None:
    with_people(shop)
    words = ("date", ANN, kind, *more, *ON)
    assert said in refused(shop, *words)
    assert answered(shop, "n\n", *words).exit_code == 1
    assert "date 1" not in records(shop, "show", ANN).stdout
    records(shop, *words, "--yes")
    assert "date 1" in records(shop, "show", ANN).stdout


def test_a_date_is_corrected_and_what_it_was_is_shown(shop: Path) -> None:
    with_people(shop)
    records(shop, "date", ANN, "painter_training", "--done", "2023-03-02", *ON)
    right = ("date", ANN, "painter_training", "--done", "2026-03-02", *ON)
    assert misuse(shop, "records", *right, "--instead-of", "1") == (
        "--instead-of and --reason go together"
    )
    records(shop, *right, "--instead-of", "1", "--reason", "wrong year")
    shown = records(shop, "show", ANN).stdout.splitlines()
    assert shown[:3] == [
        "Apprentice 01, learner",
        "date 1: painter training, 2023-03-02; taken out, counts no more",
        "date 2: painter training, 2026-03-02",
    ]
    assert shown[3].endswith(
        "date 1: painter training, 2023-03-02 -> painter training, 2026-03-02 (wrong year)"
    )


def test_a_look_is_corrected(shop: Path) -> None:
    with_people(shop)
    look = ("observe", ANN, "mix_two_pack", "--observer", TRAINER, "protect=yes", *ON)
    records(shop, *look, "--date", "2026-03-01")
    records(shop, *look, "--date", "2026-03-02", "--instead-of", "1", "--reason", "wrong day")
    shown = records(shop, "show", ANN).stdout
    assert "observation 1: Mix a two-pack primer by volume, 2026-03-01; taken out" in shown
    assert "observation 2: Mix a two-pack primer by volume, 2026-03-02\n" in shown


def test_what_was_entered_for_somebody_else_is_taken_out_and_put_back(shop: Path) -> None:
    with_people(shop)
    records(shop, "date", ANN, "fit_test", "--done", "2026-03-01", *ON)
    out = ("take-out", ANN, "date", "1", "--reason", "another person's")
    assert refused(shop, *out).startswith("date 1, fit test of the respirator, 2026-03-01. Nobody")
    assert answered(shop, "y\n", *out).exit_code == 0
    assert records(shop, "due", "--within", "9999", *ON).stdout == ""
    back = records(shop, "take-out", ANN, "date", "1", "--put-back", "--reason", "it was hers")
    assert back.stdout == "date 1 counts again: fit test of the respirator, 2026-03-01\n"
    assert "2027-03-01" in records(shop, "due", "--within", "9999", *ON).stdout


def test_one_person_is_added_without_a_file_and_corrected(shop: Path) -> None:
    add = ("people", "--person", "Apprentice 09", "--name", "Nina Sampel")
    assert records(shop, *add).stdout == "1 added, 0 there already\n"
    again = records(shop, "people", "--person", "Apprentice 09", "--name", "Nina Sample")
    assert again.stdout == "0 added, 1 there already\n"
    assert "has another name or role in the records and keeps it" in again.stderr
    right = ("--name", "Nina Sample", "--role", "marker", "--reason", "misspelt")
    said = records(shop, "people", "--person", "Apprentice 09", *right).stdout
    assert said == "'Apprentice 09' is corrected; what it was stays in the records\n"
    assert "Apprentice 09\tmarker\tNina Sample" in records(shop, "people", "--names").stdout
    shown = records(shop, "show", "Apprentice 09").stdout
    assert "Sam" not in shown
    named = records(shop, "show", "Apprentice 09", "--names").stdout
    assert "name: Nina Sampel -> Nina Sample (misspelt)" in named


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--person", "=1+1"), "would run as a formula"),
        (("--person", "../01"), "cannot be a code"),
        (("--name", "Nina"), "say --person as well"),
        (("--person", "A9", "--add", "roster.csv"), "not both"),
    ],
)
def test_a_person_who_cannot_be_added_is_misuse(
    shop: Path, words: tuple[str, ...], said: str
) -> None:
    assert said in misuse(shop, "records", "people", *words)
    assert not (shop / "records").exists()


def test_an_old_roster_does_not_bring_an_erased_person_back(shop: Path) -> None:
    with_people(shop)
    records(shop, "erase", ANN, "--yes")
    said = refused(shop, "people", "--add", "roster.csv")
    assert said == (
        "'Apprentice 01' was erased from these records; take that line out of the roster. "
        "Somebody who comes back gets a new code"
    )
