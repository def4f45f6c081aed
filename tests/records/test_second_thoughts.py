"""What was entered by mistake can be mended; the value before and the reason stay in the file."""

import csv
import json
import sqlite3
from io import StringIO

import pytest

from generator.records import Person, RecordsRefused, open_records
from generator.records.certificates.certificates import certificate_of
from generator.records.issues.issues import issue_of, take_back_void, void
from generator.records.leaving.at_stake import stake_of_issue, stake_of_person
from generator.records.leaving.erase import erase_person
from generator.records.leaving.inspector_pack import pack_tables
from generator.records.leaving.person_export import export_person
from generator.records.people.erased_codes import refuse_erased, was_erased
from generator.records.people.people import (
    add_people,
    all_people,
    amend_person,
    person_id,
    person_of,
)
from generator.records.practice.amending import (
    entries_of,
    put_back,
    replace_fact,
    replace_observation,
    take_out,
)
from generator.records.practice.dated_facts import DatedFact, add_fact, all_facts, facts_of
from generator.records.practice.due import due_list
from generator.records.practice.observations import observations_of
from generator.records.sittings.results import all_results, results_of
from generator.records.sittings.sittings import Kept, keep_sittings, sittings_of
from generator.records.store.amendments import amendments_of_issue, amendments_of_person
from generator.records.store.canonical_json import packed
from generator.records.store.database import FILE_NAME, integrity_problems
from generator.records.store.migrations import FIRST, FORM_IDS
from tests.records.small_records import (
    ANN,
    AT,
    BOB,
    TODAY,
    TRAINER,
    bytes_of,
    form,
    issued,
    look,
    sitting,
    small_records,
    trained,
    watched,
)

LATER = "2026-03-09T09:00:00"
WRONG = DatedFact(ANN.code, "painter_training", "1999-01-01")
RIGHT = DatedFact(ANN.code, "painter_training", "2026-03-01")


def changes(connection, code=ANN.code):
    """Return what was changed about a person."""
    found = amendments_of_person(connection, person_id(connection, code))
    return [(c.what, c.before, c.after, c.reason) for c in found]


def test_a_name_and_a_role_can_be_corrected_and_what_they_were_stays(tmp_path):
    with small_records(tmp_path) as connection:
        amend_person(connection, BOB.code, "Rob Sample", "marker", "misread the list", AT)
        assert person_of(connection, BOB.code)[1] == Person(BOB.code, "Rob Sample", "marker")
        assert changes(connection, BOB.code) == [
            ("name", "Bob Sample", "Rob Sample", "misread the list"),
            ("role", "learner", "marker", "misread the list"),
        ]


@pytest.mark.parametrize(
    ("code", "name", "reason", "said"),
    [
        (BOB.code, BOB.name, "x", "nothing would change"),
        (BOB.code, "Rob", "  ", "say why it is changed"),
        ("Nobody", "Rob", "x", "'Nobody' is not in the records"),
    ],
)
def test_a_correction_of_a_person_that_cannot_be_changes_nothing(
    tmp_path, code, name, reason, said
):
    with small_records(tmp_path) as connection:
        with pytest.raises(RecordsRefused, match=said):
            amend_person(connection, code, name, None, reason, AT)
        assert all_people(connection) == (ANN, BOB, TRAINER)


def test_a_wrong_date_gives_way_to_the_right_one_and_can_come_back(tmp_path):
    with small_records(tmp_path) as connection:
        wrong = add_fact(connection, WRONG, AT, TODAY)
        right = replace_fact(connection, wrong, RIGHT, "typing slip", AT, TODAY)
        assert facts_of(connection, ANN.code) == (RIGHT,)
        assert list(all_facts(connection)) == [RIGHT]
        assert [d.last for d in due_list(connection, TODAY, 36_000)] == ["2026-03-01"]
        assert changes(connection) == [
            (
                "date",
                "painter training, 1999-01-01",
                "painter training, 2026-03-01",
                "typing slip",
            )
        ]
        put_back(connection, ANN.code, "date", wrong, "it was right after all", AT)
        take_out(connection, ANN.code, "date", right, "never happened", AT)
        assert facts_of(connection, ANN.code) == (WRONG,)
        listed = [(e.number, bool(e.taken_out)) for e in entries_of(connection, ANN.code)]
    assert listed == [(wrong, False), (right, True)]


def test_an_inspector_sees_what_was_corrected_and_why(tmp_path):
    with small_records(tmp_path) as connection:
        wrong = add_fact(connection, WRONG, AT, TODAY)
        replace_fact(connection, wrong, RIGHT, "typing slip", AT, TODAY)
        (row,) = csv.DictReader(StringIO(pack_tables(connection, TODAY)["changes.csv"].decode()))
    assert row == {
        "code": ANN.code,
        "day": AT[:10],
        "what": "date",
        "before": "painter training, 1999-01-01",
        "after": "painter training, 2026-03-01",
        "reason": "typing slip",
    }


def test_the_same_date_twice_is_refused(tmp_path):
    with small_records(tmp_path) as connection:
        add_fact(connection, RIGHT, AT, TODAY)
        with pytest.raises(RecordsRefused, match="is in the records already"):
            add_fact(connection, RIGHT, AT, TODAY)
        assert facts_of(connection, ANN.code) == (RIGHT,)


def test_a_wrong_look_gives_way_to_the_right_one(tmp_path):
    with small_records(tmp_path) as connection:
        watched(connection, ANN.code, "flow_cup")
        seen = look(ANN.code, procedure="flow_cup", observed="2026-02-27")
        replace_observation(connection, 1, seen, "another day", AT)
        assert observations_of(connection, ANN.code) == (seen,)
        assert changes(connection) == [
            ("observation", "Mix a two-pack, 2026-03-01", "Mix a two-pack, 2026-02-27")
            + ("another day",)
        ]


@pytest.mark.parametrize(
    ("number", "code", "reason", "said"),
    [
        (9, ANN.code, "x", "'Apprentice 01' has no date 9; the numbers stand in: guidecoat"),
        (1, BOB.code, "x", "'Apprentice 02' has no date 1"),
        (1, ANN.code, "", "say why it is changed"),
    ],
)
def test_nothing_is_taken_out_by_mistake(tmp_path, number, code, reason, said):
    with small_records(tmp_path) as connection:
        add_fact(connection, WRONG, AT, TODAY)
        with pytest.raises(RecordsRefused, match=said):
            take_out(connection, code, "date", number, reason, AT)
        assert facts_of(connection, ANN.code) == (WRONG,)
        with pytest.raises(RecordsRefused, match="counts already"):
            put_back(connection, ANN.code, "date", 1, "x", AT)
        take_out(connection, ANN.code, "date", 1, "slip", AT)
        with pytest.raises(RecordsRefused, match="taken out already"):
            take_out(connection, ANN.code, "date", 1, "slip", AT)


def test_when_the_new_date_is_refused_the_old_one_stays(tmp_path):
    with small_records(tmp_path) as connection:
        wrong = add_fact(connection, WRONG, AT, TODAY)
        to_come = DatedFact(ANN.code, "painter_training", "2099-01-01")
        with pytest.raises(RecordsRefused, match="still to come"):
            replace_fact(connection, wrong, to_come, "slip", AT, TODAY)
        assert facts_of(connection, ANN.code) == (WRONG,)
        assert changes(connection) == []


def test_a_void_can_be_taken_back_and_every_mark_counts_again(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code))
        keep_sittings(connection, number, [sitting("A")], AT)
        before = results_of(connection, ANN.code)
        void(connection, number, "typo, meant 11", AT)
        assert results_of(connection, ANN.code) == ()
        with pytest.raises(RecordsRefused, match="was voided already: typo, meant 11"):
            void(connection, number, "again", AT)
        assert issue_of(connection, number).void_reason == "typo, meant 11"
        take_back_void(connection, number, "meant issue 11", LATER)
        assert results_of(connection, ANN.code) == before
        (change,) = amendments_of_issue(connection, number)
        assert (change.before, change.after) == ("voided: typo, meant 11", "in use")
        with pytest.raises(RecordsRefused, match="nothing to take back"):
            take_back_void(connection, number, "again", LATER)


def test_a_void_is_not_taken_back_once_its_papers_were_issued_again(tmp_path):
    def with_id(label):
        plain = form(label)
        return type(plain)(label, {**plain.content, "form_id": "AAAA1111"}, "")

    with small_records(tmp_path) as connection:
        first = issued(connection, with_id("A"))
        void(connection, first, "left in the canteen", AT)
        issued(connection, with_id("A"))
        with pytest.raises(RecordsRefused, match="was issued before, as form A of issue 2"):
            take_back_void(connection, first, "found again", AT)
        assert issue_of(connection, first).state == "voided"


def test_what_a_void_or_an_erasure_takes_with_it_is_counted(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code), form("B", BOB.code), form("C"))
        keep_sittings(connection, number, [sitting("A"), sitting("B")], AT)
        assert stake_of_issue(connection, number) == "issue 1, cup_check: 3 forms, 2 marked papers"
        trained(connection)
        assert stake_of_person(connection, ANN.code) == (
            "gone for good: 5 observations, 1 date; left without the person: 2 marked papers"
        )
        assert stake_of_person(connection, BOB.code) == (
            "gone for good: no observation, date or certificate; "
            "left without the person: 1 marked paper"
        )
        with pytest.raises(RecordsRefused, match="there is no issue 9"):
            stake_of_issue(connection, 9)


def test_a_paper_carries_the_day_on_which_it_was_sat(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code))
        keep_sittings(connection, number, [sitting("A", sat="2026-03-05")], LATER)
        assert [r.sat for r in results_of(connection, ANN.code)] == ["2026-03-05"]
        assert sittings_of(connection, number)[0].sat == "2026-03-05"
        assert sittings_of(connection, number)[0].entered == LATER
        kept = keep_sittings(connection, number, [sitting("A", sat="2026-03-04")], LATER)
        assert kept == Kept(dated=1)
        assert changes(connection)[0][:3] == ("sitting", "2026-03-05", "2026-03-04")
        assert keep_sittings(connection, number, [sitting("A")], LATER) == Kept(known=1)
        other = keep_sittings(connection, number, [sitting("A", answer="B")], LATER)
        assert other == Kept(replaced=1)
        assert [r.sat for r in all_results(connection)] == ["2026-03-04"]


@pytest.mark.parametrize(
    ("day", "said"),
    [
        ("2026-03-10", "2026-03-10 is still to come"),
        ("2026-03-01", "issue 1 was made on 2026-03-02, so nobody sat it on 2026-03-01"),
        ("March", "'March' is not a date"),
    ],
)
def test_a_day_on_which_nobody_can_have_sat_is_refused(tmp_path, day, said):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code))
        with pytest.raises(RecordsRefused, match=said):
            keep_sittings(connection, number, [sitting("A", sat=day)], LATER)
        assert sittings_of(connection, number) == ()


def test_an_erased_code_stays_out_and_nobody_else_is_suggested(tmp_path):
    with small_records(tmp_path) as connection:
        add_people(connection, [Person("Apprentice 22"), Person("Apprentice 24")], AT)
        erase_person(connection, "Apprentice 22", AT)
        with pytest.raises(RecordsRefused) as refused:
            person_of(connection, "Apprentice 22")
        assert str(refused.value) == (
            "'Apprentice 22' was erased from these records; nothing is kept for that code any more"
        )
        for spelt in ("Apprentice 22", "apprentice-22"):
            assert was_erased(connection, spelt)
            with pytest.raises(RecordsRefused, match="was erased from these records; take that"):
                add_people(connection, [Person("Apprentice 30"), Person(spelt)], AT)
        assert "Apprentice 30" not in {person.code for person in all_people(connection)}
        with pytest.raises(RecordsRefused, match="were erased .* take those lines out"):
            refuse_erased(connection, ["Apprentice 22", "apprentice 22"])
    assert b"Apprentice 22" not in bytes_of(tmp_path / "records")


def test_a_code_with_another_number_is_never_suggested(tmp_path):
    with small_records(tmp_path) as connection:
        with pytest.raises(RecordsRefused, match="did you mean 'Apprentice 01'"):
            person_of(connection, "Aprentice 1")
        with pytest.raises(RecordsRefused) as refused:
            person_of(connection, "Apprentice 03")
        assert "did you mean" not in str(refused.value)
        assert 'guidecoat records people --person "Apprentice 03"' in str(refused.value)


def test_a_name_in_place_of_a_code_says_the_code(tmp_path):
    said = "'ann example' is a name; say the code: 'Apprentice 01'"
    with small_records(tmp_path) as connection, pytest.raises(RecordsRefused, match=said):
        person_of(connection, "ann example")


def test_what_was_changed_goes_with_the_person(tmp_path):
    with small_records(tmp_path) as connection:
        amend_person(connection, ANN.code, "Anna Example", None, f"said {BOB.name}", AT)
        (changed,) = export_person(connection, ANN.code)["changed"]
        assert (changed["before"], changed["after"]) == (ANN.name, "Anna Example")
        erase_person(connection, BOB.code, AT)
        assert changes(connection)[0][3] == "said (erased)"
        erase_person(connection, ANN.code, AT)
    for word in (b"Ann Example", b"Anna Example", b"Bob Sample"):
        assert word not in bytes_of(tmp_path / "records")


def earlier_version(folder):
    """Write records as the version before kept them, with one row in every table."""
    folder.mkdir()
    old = sqlite3.connect(folder / FILE_NAME)
    old.executescript(FIRST + FORM_IDS)
    sheet = {**form().content, "questions": [{"number": 1, "marks": 2, "must_pass": True}]}
    rows = {
        "people": (1, ANN.code, ANN.name, "learner", AT),
        "issues": (1, "cup_check", "Cup check", "s", "1", "b", "{}", AT, "issued", "", ""),
        "questions": (1, b"d", "mixing/flow_cup/item_1", "b", "mixing/flow_cup", "{}"),
        "forms": (1, 1, "A", 1, packed(sheet), (1).to_bytes(4, "little"), "AAAA1111"),
        "sittings": (1, 1, 1, packed({"1": {"form": "chosen", "letters": ["A"]}}), AT, None, 0),
        "markings": (1, 1, None, AT, "2", 2, "passed", "r1", packed({}), 0),
        "observations": (1, 1, "flow_cup", "Cup", '[["a","A",1,"yes"]]', "", "", None)
        + ("2026-03-01", AT),
        "dated_facts": (1, 1, "fit_test", "", "2026-03-01", "", AT),
        "certificates": (1, 1, None, json.dumps({"issued": "2026-03-02"}), "2026-03-02"),
        "diary": (1, AT, "people", "1 added"),
    }
    for table, row in rows.items():
        old.execute(f"INSERT INTO {table} VALUES ({', '.join('?' * len(row))})", row)
    old.execute("PRAGMA user_version = 2")
    old.commit()
    old.close()


def test_records_of_the_version_before_lose_nothing_and_gain_second_thoughts(tmp_path):
    earlier_version(tmp_path / "records")
    with open_records(tmp_path / "records") as connection:
        assert integrity_problems(connection) == ()
        assert all_people(connection) == (ANN,)
        (result,) = results_of(connection, ANN.code)
        assert (result.sat, result.points, result.verdict) == (AT, 2, "passed")
        (seen,) = observations_of(connection, ANN.code)
        assert (seen.procedure, seen.number) == ("flow_cup", 1)
        (fact,) = facts_of(connection, ANN.code)
        assert (fact.done, fact.number) == ("2026-03-01", 1)
        assert certificate_of(connection, 1).content == {"issued": "2026-03-02"}
        take_out(connection, ANN.code, "date", 1, "slip", AT)
        assert facts_of(connection, ANN.code) == ()
        void(connection, 1, "slip", AT)
        take_back_void(connection, 1, "slip", AT)
        assert len(results_of(connection, ANN.code)) == 1
