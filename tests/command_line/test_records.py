"""`guidecoat records`: each command does what it says, privately, and refuses in a sentence."""

import csv
import json
import re
import shlex
import stat
from datetime import date
from io import StringIO
from pathlib import Path

import click
import pytest
from click.testing import Result

from generator.command_line.main import main
from generator.printing import PrintingRefused
from generator.records import open_records
from generator.records.certificates.certificates import all_certificates
from generator.records.practice.retention import NOTE, PERIODS
from generator.records.store.database import FILE_NAME
from generator.workflows.records import certificates
from tests.bank.small_bank import REPOSITORY
from tests.command_line.records_project import shop as shop
from tests.command_line.running import misuse, run
from tests.printing.pdf_reading import squeezed, whole_text
from tests.real import real_bank
from tests.records.small_records import WORK, bytes_of, passed, watched

ANN, TRAINER = "Apprentice 01", "Trainer 1"
GROUP = main.commands["records"]
assert isinstance(GROUP, click.Group)
COMMANDS = dict(GROUP.commands)


def records(shop: Path, *arguments: str) -> Result:
    """Run a command of the group that must succeed."""
    result = run(shop, "records", *arguments)
    assert result.exit_code == 0, result.output
    return result


def refused(shop: Path, *arguments: str) -> str:
    """Run a command of the group that the records must refuse; give its sentence."""
    result = run(shop, "records", *arguments)
    assert result.exit_code == 1, result.output
    assert result.stdout == ""
    assert result.stderr.startswith("Error: ")
    assert result.stderr.count("\n") == 1
    return result.stderr.removeprefix("Error: ").rstrip("\n")


def with_people(shop: Path) -> None:
    """Add two learners and a trainer."""
    records(shop, "people", "--roster", "roster.csv")
    records(shop, "people", "--roster", "trainers.csv", "--role", "trainer")


def look_at(shop: Path, *more: str) -> Result:
    """Record an observation."""
    start = ("observe", ANN, "mix_two_pack", "--observer", TRAINER, "--date", "2026-03-01")
    return records(shop, *start, "--as-of", "2026-11-25", *(more or ("protect=yes",)))


def trained(shop: Path) -> None:
    """Return a learner a passed paper, an observation and a date of training."""
    with_people(shop)
    with open_records(shop / "records") as connection:
        passed(connection, ANN)
        watched(connection, ANN, *WORK)
    records(shop, "date", ANN, "painter_training", "--done", "2024-02-29", "--as-of", "2026-11-25")


def certificate(shop: Path) -> Path:
    """Issue a certificate and give its file."""
    done = records(shop, "certificate", ANN, "--trainer", TRAINER, "--as-of", "2026-11-25")
    return shop / done.stdout.strip()


def others_may(shop: Path) -> list[str]:
    """Return what others than the owner could read or enter in the records."""
    paths = [shop / "records", *(shop / "records").rglob("*")]
    return [p.name for p in paths if stat.S_IMODE(p.stat().st_mode) & 0o077]


@pytest.mark.parametrize("name", COMMANDS)
def test_every_command_has_help_with_an_example_of_itself(name: str, tmp_path: Path) -> None:
    shown = run(tmp_path, "records", name, "--help")
    assert shown.exit_code == 0
    (line,) = re.findall(r"^ *Example: (.+)$", COMMANDS[name].help or "", re.MULTILINE)
    assert line in " ".join(shown.stdout.split())
    assert shlex.split(line)[:3] == ["guidecoat", "records", name]


def test_the_group_names_every_command() -> None:
    assert set(COMMANDS) == {
        *("issues", "print-again", "void", "people", "show", "take-out"),
        *("observe", "sheet", "date", "due", "certificate", "pack"),
        *("export", "erase", "backup", "check", "retention"),
    }


NEEDS = {
    "print-again": ("1",),
    "void": ("1", "--reason", "left in the canteen"),
    "show": (ANN,),
    "take-out": (ANN, "date", "1", "--reason", "slip"),
    "people": ("--list",),
    "observe": (ANN, "mix_two_pack", "--observer", TRAINER, "--date", "2026-03-01", "a=yes"),
    "sheet": ("mix_two_pack",),
    "date": (ANN, "fit_test", "--done", "2026-03-01"),
    "certificate": (ANN, "--trainer", TRAINER),
    "pack": ("--output", "pack"),
    "export": (ANN,),
    "erase": (ANN, "--yes"),
    "backup": ("--output", "backup.sqlite"),
}


@pytest.mark.parametrize("name", COMMANDS)
def test_outside_a_project_a_command_says_where_to_go(name: str, tmp_path: Path) -> None:
    said = misuse(tmp_path, "records", name, *NEEDS.get(name, ()))
    assert said.startswith("no course project here")
    assert list(tmp_path.iterdir()) == []


def test_people_are_added_once_with_their_role_and_listed_by_code(shop: Path) -> None:
    assert records(shop, "people", "--roster", "roster.csv").stdout == "2 added, 0 already there\n"
    assert records(shop, "people", "--roster", "roster.csv").stdout == "0 added, 2 already there\n"
    records(shop, "people", "--roster", "trainers.csv", "--role", "trainer")
    listed = records(shop, "people", "--list").stdout.splitlines()
    assert listed == ["Apprentice 01\tlearner", "Apprentice 02\tlearner", "Trainer 1\ttrainer"]
    assert "Ann Example" in records(shop, "people", "--names").stdout


def test_a_broken_roster_is_refused_with_its_places(shop: Path) -> None:
    (shop / "broken.csv").write_text("code\nA1\n=1+1\n", "utf-8")
    result = run(shop, "records", "people", "--roster", "broken.csv")
    assert result.exit_code == 1
    assert "broken.csv:3:1: error:" in result.stderr
    assert "nothing was written" in result.stderr
    assert not (shop / "records").exists()


def test_people_needs_something_to_do(shop: Path) -> None:
    wanted = "give --roster with a table, --person with a code, or --list"
    assert misuse(shop, "records", "people") == wanted


def test_an_observation_says_what_was_seen(shop: Path) -> None:
    with_people(shop)
    said = look_at(shop, "protect=yes", "stir_base=no", "--job", "Van door, job 12").stdout
    steps = real_bank().procedures["mix_two_pack"].record.steps
    (stir,) = (step.action for step in steps if step.step == "stir_base")
    assert said.startswith("observation 1: Mix a two-pack primer by volume: Safety steps 1 of ")
    assert said.endswith(f". Not done: {stir}. Not seen: {len(steps) - 2} steps\n")


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        ((ANN, "mix_two_pak", "protect=yes"), "did you mean 'mix_two_pack'?"),
        ((ANN, "mix_two_pack", "protekt=yes"), "did you mean 'protect'?"),
        ((ANN, "mix_two_pack", "protect=done"), "is not a step with =yes, =no or =not_seen"),
        ((ANN, "mix_two_pack"), "nothing was seen"),
        ((ANN, "mix_two_pack", "protect=yes", "--date", "1 March"), "is not a date such as"),
        ((ANN, "mix_two_pack", "protect=yes", "--date", "2099-01-01"), "is still to come"),
    ],
)
def test_an_observation_that_cannot_be_is_misuse(
    shop: Path, arguments: tuple[str, ...], said: str
) -> None:
    words = ("observe", "--observer", TRAINER, "--date", "2026-03-01", "--as-of", "2026-11-25")
    assert said in misuse(shop, "records", *words, *arguments)


def test_an_observer_who_is_not_in_the_records_is_refused(shop: Path) -> None:
    records(shop, "people", "--roster", "roster.csv")
    words = ("observe", ANN, "mix_two_pack", "protect=yes", "--date", "2026-03-01")
    said = refused(shop, *words, "--as-of", "2026-11-25", "--observer", TRAINER)
    assert said == (
        "'Trainer 1' is not in the records; add the person first: "
        'guidecoat records people --person "Trainer 1"'
    )


def test_a_date_tells_when_it_falls_due_and_by_which_rule(shop: Path) -> None:
    with_people(shop)
    words = ("date", ANN, "painter_training", "--done", "2024-02-29", "--as-of", "2026-11-25")
    assert records(shop, *words).stdout == (
        "painter training: 2024-02-29; due again on 2029-02-28: every 5 years (29 February counts "
        "as 28), 40 CFR 63.11173(g) (read where another text repeats it)\n"
    )


def test_a_retest_needs_its_paper_and_its_day(shop: Path) -> None:
    said = misuse(shop, "records", "date", ANN, "retest", "--done", "2026-03-01")
    assert said == "a retest needs --due and --subject with the name of the paper"


def test_a_date_to_come_is_refused(shop: Path) -> None:
    with_people(shop)
    words = ("date", ANN, "fit_test", "--done", "2026-11-26", "--as-of", "2026-11-25")
    assert refused(shop, *words) == "2026-11-26 is still to come; give the day it was done"


def test_the_due_list_counts_from_a_day_and_marks_what_is_overdue(shop: Path) -> None:
    with_people(shop)
    for kind, done in (("fit_test", "2025-12-31"), ("painter_training", "2022-01-15")):
        records(shop, "date", ANN, kind, "--done", done, "--as-of", "2026-11-25")
    early = records(shop, "due", "--as-of", "2026-11-25", "--within", "30")
    assert early.stdout == ""
    late = records(shop, "due", "--as-of", "2027-01-01", "--within", "30")
    lines = [line.split("\t") for line in late.stdout.splitlines()]
    assert [line[:4] for line in lines] == [
        ["2026-12-31", "OVERDUE", ANN, "fit test of the respirator"],
        ["2027-01-15", "due", ANN, "painter training"],
    ]
    assert "from memory, not checked against the rule" in lines[0][4]
    assert late.stderr == "2 on the list, 1 overdue, up to 30 days after 2027-01-01\n"


def test_without_a_day_the_due_list_counts_from_today(shop: Path) -> None:
    with_people(shop)
    said = records(shop, "due").stderr
    assert said.endswith(f"up to 60 days after {date.today().isoformat()}\n")


def test_a_certificate_is_printed_privately_under_its_number(shop: Path) -> None:
    trained(shop)
    path = certificate(shop)
    assert path == shop / "records" / "certificates" / "certificate-1.pdf"
    text = squeezed(whole_text(path.read_bytes()))
    for shown in ("Ann Example (Apprentice 01)", "Tess Model (Trainer 1)", "2029-02-28"):
        assert squeezed(shown) in text
    assert others_may(shop) == []
    first = path.read_bytes()
    path.unlink()
    again = records(shop, "certificate", ANN, "--again", "1")
    assert again.stdout.strip() == "records/certificates/certificate-1.pdf"
    assert path.read_bytes() == first


def test_a_certificate_without_its_parts_is_refused(shop: Path) -> None:
    with_people(shop)
    result = run(shop, "records", "certificate", ANN, "--trainer", TRAINER)
    assert (result.exit_code, result.stdout) == (1, "")
    first, *parts = result.stderr.splitlines()
    assert first == "Error: 'Apprentice 01' cannot have a certificate yet. Missing:"
    assert len(parts) == 1 + len(WORK) + 1
    assert all(": guidecoat " in part or "; guidecoat " in part for part in parts)
    assert not (shop / "records" / "certificates").exists()


def test_a_certificate_that_cannot_be_set_is_not_kept(
    shop: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    trained(shop)

    def unset(*_: object, **__: object) -> bytes:
        raise PrintingRefused("no font has the letters of a name")

    with monkeypatch.context() as broken:
        broken.setattr(certificates, "certificate_pdf", unset)
        said = refused(shop, "certificate", ANN, "--trainer", TRAINER)
    assert "no font has the letters of a name" in said
    with open_records(shop / "records") as connection:
        assert list(all_certificates(connection)) == []
    assert certificate(shop).name == "certificate-1.pdf"


def test_a_certificate_takes_a_trainer_or_a_number_and_only_of_that_person(shop: Path) -> None:
    trained(shop)
    certificate(shop)
    wanted = "name the trainer, or give --again with a number"
    assert misuse(shop, "records", "certificate", ANN) == wanted
    said = refused(shop, "certificate", "Apprentice 02", "--again", "1")
    assert said == "certificate 1 is another person's"


def test_a_pack_is_a_new_private_folder_of_tables_and_certificates(shop: Path) -> None:
    trained(shop)
    certificate(shop)
    records(shop, "pack", "--output", "inspection", "--as-of", "2026-11-25")
    folder = shop / "inspection"
    assert stat.S_IMODE(folder.stat().st_mode) == 0o700
    assert {stat.S_IMODE(path.stat().st_mode) for path in folder.iterdir()} == {0o600}
    assert whole_text((folder / "certificate-1.pdf").read_bytes())
    rows = list(csv.DictReader(StringIO((folder / "painter_training.csv").read_text("utf-8"))))
    assert rows[0]["first training"] == "2024-02-29"
    records(shop, "pack", "--output", "tables", "--no-pdf")
    assert {p.name for p in folder.iterdir()} - {p.name for p in (shop / "tables").iterdir()} == {
        "certificate-1.pdf"
    }


def test_a_certificate_that_cannot_be_set_does_not_keep_the_rest_from_the_inspector(
    shop: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    trained(shop)
    certificate(shop)

    def unset(*_: object, **__: object) -> bytes:
        raise PrintingRefused("no font has the letters of a name")

    monkeypatch.setattr(certificates, "certificate_pdf", unset)
    done = records(shop, "pack", "--output", "inspection")
    assert "left out: no font has the letters of a name" in done.stderr
    names = {path.name for path in (shop / "inspection").iterdir()}
    assert "certificates.json" in names and "certificate-1.pdf" not in names


def test_a_pack_never_mixes_with_what_is_there(shop: Path) -> None:
    with_people(shop)
    (shop / "inspection").mkdir()
    (shop / "inspection" / "mine.txt").write_text("mine")
    said = refused(shop, "pack", "--output", "inspection")
    assert said == "inspection: the folder exists and is not empty; choose another"
    assert [path.name for path in (shop / "inspection").iterdir()] == ["mine.txt"]
    assert not list(shop.glob(".new-*"))


def test_an_export_is_private_and_its_name_holds_nobody(shop: Path) -> None:
    trained(shop)
    path = shop / records(shop, "export", ANN).stdout.strip()
    assert path.parent == shop / "records" / "exports"
    assert "Apprentice" not in path.name and "Ann" not in path.name
    assert json.loads(path.read_text("utf-8"))["person"]["name"] == "Ann Example"
    assert others_may(shop) == []
    records(shop, "export", ANN, "--output", "mine.json")
    assert stat.S_IMODE((shop / "mine.json").stat().st_mode) == 0o600


def test_erasing_needs_yes_and_leaves_no_byte(shop: Path) -> None:
    trained(shop)
    certificate(shop)
    records(shop, "export", ANN)
    said = refused(shop, "erase", ANN)
    assert said == (
        "you are about to erase 'Apprentice 01': gone for good: 5 observations, 1 date, "
        "1 certificate; left without the person: 1 marked paper. Nobody is at the keyboard to say "
        "yes, so nothing was changed; add --yes if you mean it"
    )
    assert b"Ann Example" in bytes_of(shop / "records")
    told = records(shop, "erase", ANN, "--yes").stdout
    assert "by hand: backups, packs, papers and reports" in told
    assert ANN not in told
    for word in (b"Ann Example", ANN.encode()):
        assert word not in bytes_of(shop / "records")
    again = refused(shop, "erase", ANN, "--yes")
    assert again.startswith("'Apprentice 01' was erased from these records")


def test_erasing_a_trainer_takes_away_the_printed_certificates_that_name_them(shop: Path) -> None:
    trained(shop)
    path = certificate(shop)
    told = records(shop, "erase", TRAINER, "--yes").stdout
    assert "print again: 1" in told
    assert not path.exists()
    records(shop, "certificate", ANN, "--again", "1")
    assert "Tess" not in whole_text(path.read_bytes())
    assert b"Tess Model" not in bytes_of(shop / "records")


def test_a_backup_is_private_and_can_take_the_place_of_the_records(shop: Path) -> None:
    with_people(shop)
    assert records(shop, "backup", "--output", "copy.sqlite").stdout == "copy.sqlite: 0.1 MB\n"
    assert stat.S_IMODE((shop / "copy.sqlite").stat().st_mode) == 0o600
    assert refused(shop, "backup", "--output", "copy.sqlite").startswith(
        "'copy.sqlite' already exists"
    )
    (shop / "copy.sqlite").rename(shop / "records" / FILE_NAME)
    assert len(records(shop, "people", "--list").stdout.splitlines()) == 3


def test_the_check_finds_open_doors_and_damage(shop: Path) -> None:
    trained(shop)
    path = certificate(shop)
    assert records(shop, "check").stdout == "the records are intact\n"
    path.chmod(0o644)
    result = run(shop, "records", "check")
    assert (result.exit_code, result.stdout) == (1, "1 problem\n")
    assert "certificates/certificate-1.pdf can be read by others" in result.stderr
    (shop / "records" / FILE_NAME).write_bytes(b"no records" * 999)
    assert refused(shop, "check").startswith("the records in 'records' are damaged")


def test_retention_shows_every_period_with_source_and_never_acts(shop: Path) -> None:
    shown = records(shop, "retention").stdout
    for period in PERIODS:
        assert f"{period.jurisdiction}: {period.record}\n    keep: {period.keep}\n" in shown
        assert period.status_words in shown
    assert NOTE in shown
    assert not (shop / "records").exists()


def test_sheets_are_written_for_one_procedure_or_all(shop: Path) -> None:
    assert records(shop, "sheet", "mix_filler").stdout == "printed/sheet-mix_filler.pdf\n"
    every = records(shop, "sheet", "--all").stdout.splitlines()
    wanted = {p.stem for p in (REPOSITORY / "question_bank" / "procedures").glob("*.yml")}
    assert {line.removeprefix("printed/sheet-").removesuffix(".pdf") for line in every} == wanted
    said = misuse(shop, "records", "sheet")
    assert said.startswith("name one procedure, or give --all; the procedures: aluminium")
    assert "did you mean 'mix_filler'?" in misuse(shop, "records", "sheet", "mix_filer")
    assert not (shop / "records").exists()


def test_a_file_in_the_place_of_the_records_is_one_sentence(shop: Path) -> None:
    (shop / "records").write_text("")
    said = refused(shop, "people", "--list")
    assert said == "'records' is a file and cannot hold the records; move it away"


def test_no_name_and_no_code_leaves_the_records_by_itself(shop: Path) -> None:
    """Neither the site, the printed papers of this group, nor the name of any file."""
    trained(shop)
    certificate(shop)
    records(shop, "export", ANN)
    records(shop, "sheet", "mix_filler")
    outside = [p for p in shop.rglob("*") if p.is_file() and (shop / "records") not in p.parents]
    ours = [p for p in outside if p.suffix != ".csv"]
    assert {p.relative_to(shop).parts[0] for p in ours} <= {"printed", "mkdocs.yml", "site_theme"}
    for path in ours:
        assert b"Ann Example" not in path.read_bytes()
    for path in shop.rglob("*"):
        assert "Apprentice" not in path.name and "Ann" not in path.name
    with open_records(shop / "records") as connection:
        diary = [tuple(row) for row in connection.execute("SELECT at, action, detail FROM diary")]
    assert "Apprentice" not in str(diary) and "Ann" not in str(diary) and "Tess" not in str(diary)
    assert {row[1] for row in diary} >= {"people", "issue", "mark", "observe", "date"}
