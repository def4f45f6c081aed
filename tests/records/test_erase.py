"""Erasing a person leaves neither code nor name anywhere in the bytes of the records."""

import random
import sqlite3
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.records import Person, RecordsRefused, open_records
from generator.records.certificates.certificates import certificate_of, certify
from generator.records.issues.issues import exposure, freeze, issue_of, void
from generator.records.leaving.erase import LINKS, OWNED, erase_person
from generator.records.leaving.redaction import without
from generator.records.people.people import add_people, all_people
from generator.records.practice.dated_facts import DatedFact, add_fact, facts_of
from generator.records.practice.observations import observations_of, observe
from generator.records.sittings.answers import shares_of_items
from generator.records.sittings.corrections import Correction, correct, corrections_of
from generator.records.sittings.results import results_of
from generator.records.sittings.sittings import NewSitting, keep_sittings, sittings_of
from generator.records.store.database import FILE_NAME, integrity_problems
from tests.records.small_records import (
    ANN,
    AT,
    BOB,
    TODAY,
    TRAINER,
    TRAINING,
    bytes_of,
    form,
    issued,
    look,
    marked,
    sitting,
    small_records,
    trained,
)


def left_of(folder, person):
    """Return which of a person's words stand in the bytes of a folder, in any case of letters."""
    data = bytes_of(folder).lower()
    return [w for w in (person.code, person.name) if w and w.lower().encode() in data]


def lived_in(connection):
    """Put the names into every place that takes a code or a free text."""
    trained(connection, ANN.code, job=f"Door of {ANN.name}", note=f"{ANN.code} needs more time")
    trained(connection, BOB.code, note=f"helped by {ANN.name.upper()}")
    for code in (ANN.code, BOB.code):
        certify(connection, code, TRAINER.code, TRAINING, AT, TODAY)
        subject = f"spraying, with {ANN.name}"
        add_fact(connection, DatedFact(code, "sign_off", "2026-01-01", subject=subject), AT, TODAY)
    freeze(
        connection,
        blueprint="cup_check",
        title="Cup check",
        seed="s",
        edition="1",
        bank_hash="b",
        settings={"roster": f"{ANN.code}.csv"},
        forms=(form("A", ANN.code),),
        at=AT,
    )
    standing = {
        s.number: marked(1, 1, 1, says=f"{ANN.name} was right") for s in sittings_of(connection, 1)
    }
    item = "mixing/flow_cup/item_1"
    change = Correction(item, {"asked_by": ANN.code}, f"asked by {ANN.name}", TRAINER.code)
    correct(connection, 1, change, standing, AT)
    typed = {"1": {"form": "typed", "text": f"128 um, {ANN.name}"}}
    number = issued(connection, form("A", ANN.code))
    row = NewSitting("A", typed, marked(1, 1, 1, says=f"{ANN.code} wrote 128"))
    keep_sittings(connection, number, [row], AT, TRAINER.code)
    void(connection, number, f"{ANN.name} was ill", AT)


@pytest.mark.parametrize("person", [ANN, TRAINER])
def test_no_byte_of_the_file_holds_code_or_name_of_the_erased(tmp_path, person):
    with small_records(tmp_path) as connection:
        lived_in(connection)
    folder = tmp_path / "records"
    assert left_of(folder, person) == [person.code, person.name]
    with open_records(folder) as connection:
        erased = erase_person(connection, person.code, AT)
        assert erased.pages_clear
        assert left_of(folder, person) == []
        assert integrity_problems(connection) == ()
        assert connection.execute("PRAGMA foreign_keys").fetchone()[0] == 1
    assert left_of(folder, person) == []
    assert left_of(folder, BOB) == [BOB.code, BOB.name]


def test_other_people_keep_all_that_is_theirs(tmp_path):
    with small_records(tmp_path) as connection:
        lived_in(connection)
        before = (results_of(connection, BOB.code), facts_of(connection, BOB.code))
        seen = observations_of(connection, BOB.code)
        erase_person(connection, ANN.code, AT)
        assert all_people(connection) == (BOB, TRAINER)
        after = (results_of(connection, BOB.code), facts_of(connection, BOB.code))
        assert after[0] == before[0]
        assert [f.subject for f in after[1]] == ["", "spraying, with (erased)"]
        assert observations_of(connection, BOB.code) == tuple(
            replace(one, note="helped by (erased)") for one in seen
        )


def test_marks_stay_without_the_person_for_statistics(tmp_path):
    with small_records(tmp_path) as connection:
        lived_in(connection)
        shares, counts = shares_of_items(connection), exposure(connection)
        erase_person(connection, ANN.code, AT)
        assert (shares_of_items(connection), exposure(connection)) == (shares, counts)
        assert [s.person for s in sittings_of(connection, 1)] == [""]
        assert issue_of(connection, 1).forms[0].content["person"] == ""
        with pytest.raises(RecordsRefused, match="was erased from these records"):
            results_of(connection, ANN.code)


def test_answers_and_findings_lose_the_name_that_was_typed_into_them(tmp_path):
    with small_records(tmp_path) as connection:
        lived_in(connection)
        typed = max(number for number in range(1, 9) if sittings_of(connection, number))
        erase_person(connection, ANN.code, AT)
        (stands,) = sittings_of(connection, typed)
    assert stands.responses["1"]["text"] == "128 um, (erased)"
    assert stands.marked.marks[0].findings == {"notes": ["(erased) wrote 128"]}


def test_a_certificate_of_another_no_longer_names_the_erased_trainer(tmp_path):
    with small_records(tmp_path) as connection:
        lived_in(connection)
        erased = erase_person(connection, TRAINER.code, AT)
        assert (erased.certificates, erased.reprint) == ((), (1, 2))
        content = certificate_of(connection, 2).content
        assert content["trainer"] == {"code": "(erased)", "name": "(erased)"}
        assert content["practice"][0]["observer"] == "(erased)"
        assert content["person"] == {"code": BOB.code, "name": BOB.name}
        assert observations_of(connection, BOB.code)[0].observer == ""
        assert corrections_of(connection, 1)[0].decided_by == ""


def test_the_erased_persons_own_certificates_are_named_by_number(tmp_path):
    with small_records(tmp_path) as connection:
        lived_in(connection)
        assert erase_person(connection, ANN.code, AT).certificates == (1,)
        with pytest.raises(RecordsRefused, match="there is no certificate 1"):
            certificate_of(connection, 1)


@pytest.mark.parametrize("seed", [0, 3, 4])
def test_rows_that_moved_between_pages_leave_no_copy_behind(tmp_path, seed):
    """Rows that grow in the middle of a table push others to new pages; SQLite 3.40 leaves copies
    in the old ones for these seeds when deleted content alone is overwritten.
    """
    order, odd = random.Random(seed), Person("Oddly 01", "Xaver Oddly")
    with small_records(tmp_path) as connection:
        connection.execute("PRAGMA synchronous = OFF")
        add_people(connection, [odd], AT)
        for _ in range(150):
            issued(connection)
        for number in order.sample(range(1, 151), 150):
            who = odd.name if number % 3 == 0 else "someone"
            more = " and more" * order.randrange(60)
            void(connection, number, f"{who} was ill{more}", AT)
        assert left_of(tmp_path / "records", odd) == [odd.code, odd.name]
        erase_person(connection, odd.code, AT)
    assert b"Oddly" not in bytes_of(tmp_path / "records")


@given(
    code=st.from_regex(r"[A-Za-z]{4,9}[0-9]{4}", fullmatch=True),
    name=st.from_regex(r"[A-Z][a-z]{5,9} [A-Z][a-z]{5,9}", fullmatch=True),
)
@settings(max_examples=15, deadline=None)
def test_whoever_it_is_no_byte_is_left(tmp_path_factory, code, name):
    person, place = Person(code, name), tmp_path_factory.mktemp("erased")
    with small_records(place) as connection:
        add_people(connection, [person], AT)
        trained(connection, code, job=f"for {name}")
        certify(connection, code, TRAINER.code, TRAINING, AT, TODAY)
        erase_person(connection, code, AT)
    assert left_of(place / "records", person) == []


def test_a_short_code_is_no_trace_in_answers_and_sentences(tmp_path):
    short = Person("A", "")
    with small_records(tmp_path) as connection:
        add_people(connection, [short], AT)
        number = issued(connection, form("A", "A"))
        keep_sittings(connection, number, [sitting("A")], AT)
        observe(connection, look(note="use cup A"), AT)
        erase_person(connection, "A", AT)
        assert sittings_of(connection, number)[0].responses == sitting().responses
        assert observations_of(connection, ANN.code)[0].note == "use cup A"


@pytest.mark.parametrize(
    ("value", "cleaned"),
    [
        ("Ann Example", "(erased)"),
        ("by ann example.", "by (erased)."),
        ("Ann Examples", "Ann Examples"),
        ({"a": ["Apprentice 01", 3, None]}, {"a": ["(erased)", 3, None]}),
        ("Apprentice 011", "Apprentice 011"),
    ],
)
def test_only_whole_names_and_codes_are_taken_out(value, cleaned):
    assert without(value, ANN) == cleaned


def test_while_another_program_reads_old_pages_it_is_said(tmp_path, monkeypatch):
    monkeypatch.setattr("generator.records.store.database.WAIT_SECONDS", 0.05)
    with small_records(tmp_path) as connection:
        reader = sqlite3.connect(tmp_path / "records" / FILE_NAME, isolation_level=None)
        reader.execute("BEGIN")
        reader.execute("SELECT * FROM people").fetchall()
        connection.execute("PRAGMA busy_timeout = 50")
        assert not erase_person(connection, ANN.code, AT).pages_clear
        reader.close()
    assert left_of(tmp_path / "records", ANN) == []


def test_nobody_cannot_be_erased_and_nothing_changes(tmp_path):
    with small_records(tmp_path) as connection:
        with pytest.raises(RecordsRefused, match="'Nobody' is not in the records"):
            erase_person(connection, "Nobody", AT)
        assert len(all_people(connection)) == 3
        assert connection.execute("PRAGMA foreign_keys").fetchone()[0] == 1


def test_every_link_to_a_person_is_known_to_erasing(tmp_path):
    with small_records(tmp_path) as connection:
        tables = [r["name"] for r in connection.execute("SELECT name FROM pragma_table_list")]
        links = {
            (table, row["from"])
            for table in tables
            for row in connection.execute(f"PRAGMA foreign_key_list({table})")
            if row["table"] == "people"
        }
    assert links == {*LINKS, *((table, "person") for table in OWNED)}


def test_the_diary_says_that_somebody_was_erased(tmp_path):
    with small_records(tmp_path) as connection:
        erase_person(connection, ANN.code, AT)
        rows = connection.execute("SELECT action, detail FROM diary").fetchall()
    assert list(rows[-1]) == [
        "erase",
        "one person erased",
    ]
