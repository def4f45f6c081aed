"""Papers that were issued before are found by their ids and by what was asked for."""

import pytest

from generator.records import RecordsRefused, open_records
from generator.records.issues.frozen_forms import FrozenForm
from generator.records.issues.issued_before import (
    FormPlace,
    all_issues,
    forms_by_id,
    ids_of_forms,
    same_request,
)
from generator.records.issues.issues import void
from generator.records.sittings.sittings import keep_sittings
from generator.records.store.migrations import FIRST
from tests.records.small_records import ANN, AT, BOB, form, issued, sitting, small_records


def with_id(form_id: str, label: str = "A", person: str = "") -> FrozenForm:
    plain = form(label, person)
    return FrozenForm(label, plain.content | {"form_id": form_id}, person)


def test_a_form_is_found_by_the_id_on_its_papers(tmp_path):
    with small_records(tmp_path) as connection:
        first = issued(connection, with_id("AAAA1111"), with_id("BBBB2222", "B"))
        found = forms_by_id(connection, ["BBBB2222", "CCCC3333", ""])
        known = ids_of_forms(connection)
    assert found == {"BBBB2222": FormPlace(first, "B")}
    assert known == ("AAAA1111", "BBBB2222")


def test_a_form_in_use_is_not_issued_twice_and_nothing_of_the_second_issue_is_kept(tmp_path):
    with small_records(tmp_path) as connection:
        issued(connection, with_id("AAAA1111"))
        with pytest.raises(RecordsRefused, match="as form A of issue 1; take another seed"):
            issued(connection, with_id("NEW00000"), with_id("AAAA1111", "B"))
        assert ids_of_forms(connection) == ("AAAA1111",)


def test_a_voided_form_may_be_issued_again_and_is_found_at_its_new_place(tmp_path):
    with small_records(tmp_path) as connection:
        first = issued(connection, with_id("AAAA1111"))
        void(connection, first, "left in the canteen", AT)
        assert forms_by_id(connection, ["AAAA1111"]) == {}
        second = issued(connection, with_id("AAAA1111"))
        assert forms_by_id(connection, ["AAAA1111"]) == {"AAAA1111": FormPlace(second, "A")}


def ask(connection, **changed):
    wanted = {
        "blueprint": "cup_check",
        "seed": "spring",
        "bank_hash": "b" * 12,
        "seats": (("A", ANN.code), ("B", BOB.code)),
    }
    return same_request(connection, **(wanted | changed))


@pytest.mark.parametrize(
    "changed",
    [
        {"blueprint": "other"},
        {"seed": "summer"},
        {"bank_hash": "c" * 12},
        {"seats": (("A", ANN.code),)},
        {"seats": (("A", BOB.code), ("B", ANN.code))},
        {"seats": (("A", ""), ("B", ""))},
    ],
)
def test_only_the_same_request_is_the_same(tmp_path, changed):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code), form("B", BOB.code))
        assert ask(connection) == number
        assert ask(connection, **changed) is None


def test_a_voided_issue_answers_no_request(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code), form("B", BOB.code))
        void(connection, number, "wrong class", AT)
        assert ask(connection) is None


def test_the_list_counts_forms_and_those_that_were_answered(tmp_path):
    with small_records(tmp_path) as connection:
        first = issued(connection, form("A"), form("B"), form("C"))
        second = issued(connection, form("A", ANN.code))
        keep_sittings(connection, first, [sitting("A"), sitting("C")], AT)
        # other answers to the same form take the place of the first
        keep_sittings(connection, first, [sitting("A", answer="B")], AT)
        void(connection, second, "wrong class", AT)
        one, other = all_issues(connection)
    assert (one.number, one.forms, one.sittings, one.voided) == (first, 3, 2, False)
    assert (other.forms, other.sittings, other.void_reason) == (1, 0, "wrong class")


def test_records_of_the_first_version_gain_the_ids_and_keep_their_forms(tmp_path, monkeypatch):
    folder = tmp_path / "records"
    with monkeypatch.context() as before:
        before.setattr("generator.records.store.database.STEPS", (FIRST,))
        with open_records(folder) as connection:
            connection.execute("INSERT INTO people (code, added) VALUES (?, ?)", (ANN.code, AT))
            connection.execute(
                "INSERT INTO issues (blueprint, title, seed, edition, bank_hash, settings, issued,"
                " state) VALUES ('old', 'Old', 's', '1', 'h', '{}', ?, 'issued')",
                (AT,),
            )
            connection.execute(
                "INSERT INTO forms (issue, label, content, questions) VALUES (1, 'A', x'', x'')"
            )
    with open_records(folder) as connection:
        assert [line.forms for line in all_issues(connection)] == [1]
        assert ids_of_forms(connection) == ()
        number = issued(connection, with_id("AAAA1111"))
        assert forms_by_id(connection, ["AAAA1111"]) == {"AAAA1111": FormPlace(number, "A")}
