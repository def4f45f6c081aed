"""What leaves the records: a person's own data, an inspector's tables, a backup."""

import csv
import json
import stat
from io import StringIO

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.records import Person, RecordsRefused, open_records
from generator.records.certificates.certificates import certify
from generator.records.leaving.inspector_pack import pack_tables
from generator.records.leaving.person_export import export_person
from generator.records.leaving.safe_csv import defused, table_text
from generator.records.people.people import add_people, all_people
from generator.records.practice.dated_facts import DatedFact, add_fact
from generator.records.practice.observations import observe
from generator.records.practice.retention import PERIODS
from generator.records.sittings.corrections import Correction, correct
from generator.records.sittings.sittings import sittings_of
from generator.records.store.backup import back_up
from generator.records.store.database import FILE_NAME, integrity_problems
from tests.records.small_disk import small_disk as small_disk
from tests.records.small_records import (
    ANN,
    AT,
    BOB,
    TODAY,
    TRAINER,
    TRAINING,
    WORK,
    form,
    look,
    marked,
    small_records,
    trained,
)

RUNS = ("=", "+", "-", "@", "\t", "\r", "\uff1d", "\uff0b", "\uff0d", "\uff20")
EVIL = '=HYPERLINK("x";"y")'


def rows_of(text):
    """Read a table back as a spreadsheet would."""
    return list(csv.DictReader(StringIO(text)))


def everything(connection):
    """Fill every table about one person."""
    trained(connection, job="Van door, job 12", note="Stir longer")
    certify(connection, ANN.code, TRAINER.code, TRAINING, AT, TODAY)
    add_fact(connection, DatedFact(ANN.code, "fit_test", "2025-11-01"), AT, TODAY)
    number = sittings_of(connection, 1)[0].number
    change = Correction("mixing/flow_cup/item_1", {"accept": ["B"]}, "two are right", TRAINER.code)
    correct(connection, 1, change, {number: marked(1, 1, 0)}, AT)


def test_an_export_holds_all_there_is_about_a_person_with_replaced_marks(tmp_path):
    with small_records(tmp_path) as connection:
        everything(connection)
        plain = json.loads(json.dumps(export_person(connection, ANN.code)))
    assert plain["person"] == {"code": ANN.code, "name": ANN.name, "role": "learner", "added": AT}
    (paper,) = plain["papers"]
    assert paper["questions"][0]["stem"] == form().content["questions"][0]["question"]["stem"]
    (sat,) = paper["sittings"]
    assert sat["answers"]["1"] == {"form": "chosen", "letters": ["A"]}
    assert [m["points"] for m in sat["markings"]] == ["6", "4"]
    assert [m["correction"] for m in sat["markings"]] == [None, 1]
    assert plain["practice"][0]["job"] == "Van door, job 12"
    assert plain["practice"][0]["steps"][1] == {
        "does": "Do the work",
        "starred": False,
        "seen": "yes",
    }
    assert [d["done"] for d in plain["dates"]] == ["2024-02-29", "2025-11-01"]
    assert [c["number"] for c in plain["certificates"]] == [1]


def test_an_export_counts_what_a_person_did_for_others_without_naming_them(tmp_path):
    with small_records(tmp_path) as connection:
        everything(connection)
        plain = export_person(connection, TRAINER.code)
        with pytest.raises(RecordsRefused, match="'Nobody' is not in the records"):
            export_person(connection, "Nobody")
    assert plain["work_for_others"] == {
        "papers_marked": 1,
        "observed": len(WORK),
        "certificates_signed": 1,
        "corrections_decided": 1,
    }
    assert ANN.code not in json.dumps(plain)


def test_a_pack_has_each_painter_with_first_training_latest_refresher_and_next_one(tmp_path):
    """40 CFR 63.11177(a): each painter, with the first date and the latest refresher."""
    with small_records(tmp_path) as connection:
        everything(connection)
        add_fact(connection, DatedFact(ANN.code, "painter_training", "2026-05-31"), AT, TODAY)
        pack = {name: data.decode() for name, data in pack_tables(connection, TODAY).items()}
    training = {row["code"]: row for row in rows_of(pack["painter_training.csv"])}
    assert training[ANN.code] == {
        "code": ANN.code,
        "name": ANN.name,
        "first training": "2024-02-29",
        "latest refresher": "2026-05-31",
        "next due": "2031-05-31",
    }
    assert training[BOB.code]["first training"] == "none entered"
    (result,) = rows_of(pack["results.csv"])
    assert (result["code"], result["result"], result["marker"]) == (
        ANN.code,
        "passed, 4 of 6 marks",
        TRAINER.code,
    )
    steps = rows_of(pack["observations.csv"])
    assert [(r["starred"], r["seen"]) for r in steps] == [("yes", "yes"), ("no", "yes")] * len(WORK)
    assert [c["number"] for c in json.loads(pack["certificates.json"])] == [1]
    assert [r["overdue"] for r in rows_of(pack["due.csv"])] == ["yes", "no"]
    assert [r["done"] for r in rows_of(pack["dates.csv"])] == [
        "2024-02-29",
        "2025-11-01",
        "2026-05-31",
    ]
    assert len(rows_of(pack["keep_times.csv"])) == len(PERIODS)


def test_the_text_of_a_pack_names_every_file_in_it(tmp_path):
    with small_records(tmp_path) as connection:
        pack = pack_tables(connection, TODAY)
    text = pack["READ_FIRST.txt"].decode()
    assert all(name in text for name in pack if name != "READ_FIRST.txt")
    assert "never says that a person is fit" in text


def test_no_cell_of_a_pack_runs_as_a_formula(tmp_path):
    with small_records(tmp_path) as connection:
        add_people(connection, [Person(f"{EVIL}", EVIL)], AT)
        for mark in RUNS:
            observe(connection, look(EVIL, job=f"{mark}1+1", note=f" {mark}cmd|' /C calc'!A0"), AT)
        add_fact(connection, DatedFact(EVIL, "sign_off", "2026-01-01", subject="=1"), AT, TODAY)
        pack = pack_tables(connection, TODAY)
    cells = [
        cell
        for name, data in pack.items()
        if name.endswith(".csv")
        for row in csv.reader(StringIO(data.decode()))
        for cell in row
    ]
    assert f"'{EVIL}" in cells
    assert [cell for cell in cells if cell.lstrip().startswith(RUNS)] == []


@given(st.text())
def test_any_text_is_defused_and_stays_on_one_line(text):
    cell = defused(text)
    assert not cell.lstrip().startswith(RUNS)
    assert cell.isprintable()
    ((read,),) = csv.reader(StringIO(table_text((text,), ())))
    assert read == cell


@given(st.text(st.characters(categories=["L", "N"]), max_size=20))
def test_letters_and_digits_are_left_alone(text):
    assert defused(text) == text


def test_a_backup_taken_while_the_records_are_in_use_is_whole_and_private(tmp_path):
    target = tmp_path / "backup.sqlite"
    with small_records(tmp_path) as connection:
        everything(connection)
        assert back_up(connection, target) == target.stat().st_size
        add_people(connection, [Person("Apprentice 03")], AT)
    assert stat.S_IMODE(target.stat().st_mode) == 0o600
    assert {path.name for path in tmp_path.iterdir()} == {"records", "backup.sqlite"}
    place = tmp_path / "restored"
    place.mkdir()
    target.rename(place / FILE_NAME)
    with open_records(place) as connection:
        assert integrity_problems(connection) == ()
        assert all_people(connection) == (ANN, BOB, TRAINER)
        assert connection.execute("SELECT count(*) FROM markings").fetchone()[0] == 2


def test_a_backup_never_takes_the_place_of_a_file(tmp_path):
    target = tmp_path / "backup.sqlite"
    target.write_bytes(b"older")
    with small_records(tmp_path) as connection:
        with pytest.raises(RecordsRefused, match="'backup.sqlite' is there already"):
            back_up(connection, target)
        with pytest.raises(RecordsRefused, match="there is no folder 'nowhere'"):
            back_up(connection, tmp_path / "nowhere" / "backup.sqlite")
    assert target.read_bytes() == b"older"


def test_a_backup_that_finds_the_disk_full_leaves_nothing_behind(tmp_path, small_disk):
    with small_records(tmp_path) as connection:
        rows = [("", "fill", "x" * 4000)] * 700
        connection.executemany("INSERT INTO diary (at, action, detail) VALUES (?, ?, ?)", rows)
        with pytest.raises(RecordsRefused, match="could not be written: the disk is full"):
            back_up(connection, small_disk / "backup.sqlite")
        assert list(small_disk.iterdir()) == []
        assert len(all_people(connection)) == 3


def test_damage_is_found_by_the_integrity_check(tmp_path):
    with small_records(tmp_path) as connection:
        everything(connection)
        assert integrity_problems(connection) == ()
        connection.execute("PRAGMA foreign_keys = OFF")
        connection.execute("DELETE FROM people WHERE code = ?", (ANN.code,))
        assert any(p.startswith("observations row") for p in integrity_problems(connection))
