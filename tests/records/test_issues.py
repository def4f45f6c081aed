"""Issued forms are frozen: they come back as they were, and hold nobody's name."""

import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.records import RecordsRefused, open_records
from generator.records.issues.frozen_forms import FrozenForm
from generator.records.issues.issues import (
    drop_pending,
    exposure,
    freeze,
    issue_of,
    items_met,
    pending_issues,
    void,
)
from generator.records.issues.stored_questions import numbers_of, numbers_packed
from generator.records.store.audit_log import lines
from tests.records.small_records import ANN, AT, BOB, form, issued, question, small_records

ITEMS = [question(number)["id"] for number in (1, 2, 3)]


def test_a_form_comes_back_as_it_was_frozen(tmp_path):
    ours, theirs = form("A", ANN.code), form("B", text="Other words.")
    with small_records(tmp_path) as connection:
        number = issued(connection, ours, theirs)
        kept = issue_of(connection, number)
    assert kept.forms == (ours, theirs)
    assert (kept.state, kept.settings, kept.bank_hash) == ("issued", {"paper": "a4"}, "b" * 12)


plain = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(st.characters(codec="utf-8")),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=5), inner),
    max_leaves=8,
)


@given(stem=st.text(st.characters(codec="utf-8")), extra=plain)
@settings(deadline=None, max_examples=30)
def test_any_plain_content_survives_freezing(tmp_path_factory, stem, extra):
    content = form().content | {"extra": extra}
    content["questions"] = [
        {"number": 1, "marks": 1, "note": extra, "question": question(1) | {"stem": stem}}
    ]
    with small_records(tmp_path_factory.mktemp("frozen")) as connection:
        number = issued(connection, FrozenForm("A", content))
        assert issue_of(connection, number).forms[0].content == content


def test_a_question_that_many_forms_print_is_kept_once(tmp_path):
    with small_records(tmp_path) as connection:
        issued(connection, *(form(label) for label in "ABCD"))
        issued(connection, form("A", text="Other words."))
        stems = connection.execute("SELECT count(*) FROM questions").fetchone()[0]
    assert stems == 6


@pytest.mark.parametrize(
    "content",
    [{"heading": ANN.name}, {"heading": ANN.code}, {"seed": f"spring of {ANN.code}"}],
)
def test_a_form_that_names_its_person_elsewhere_is_not_kept(tmp_path, content):
    named = FrozenForm("A", form("A", ANN.code).content | content, ANN.code)
    with small_records(tmp_path) as connection:
        with pytest.raises(RecordsRefused, match="names its person outside the field"):
            issued(connection, named)
        assert connection.execute("SELECT count(*) FROM issues").fetchone()[0] == 0


def test_a_form_whose_questions_are_not_numbered_from_one_is_not_kept(tmp_path):
    content = form().content
    content["questions"] = content["questions"][1:]
    with small_records(tmp_path) as connection:
        with pytest.raises(RecordsRefused, match="not numbered from 1"):
            issued(connection, FrozenForm("A", content))
        assert connection.execute("SELECT count(*) FROM issues").fetchone()[0] == 0


@given(st.lists(st.integers(1, 2**32 - 1)))
def test_numbers_of_questions_survive_packing_in_four_bytes_each(numbers):
    data = numbers_packed(numbers)
    assert list(numbers_of(data)) == numbers
    assert data == b"".join(number.to_bytes(4, "little") for number in numbers)


def test_a_form_for_a_stranger_is_not_kept(tmp_path):
    with small_records(tmp_path) as connection:
        with pytest.raises(RecordsRefused, match="did you mean 'Apprentice 01'"):
            issued(connection, form("A", "Aprentice 01"))
        assert connection.execute("SELECT count(*) FROM issues").fetchone()[0] == 0


def test_exposure_counts_forms_that_were_not_voided(tmp_path):
    with small_records(tmp_path) as connection:
        issued(connection, form("A"), form("B"))
        gone = issued(connection, form("A", BOB.code))
        assert exposure(connection) == dict.fromkeys(ITEMS, 3)
        assert items_met(connection, BOB.code) == frozenset(ITEMS)
        void(connection, gone, "wrong paper", AT)
        assert exposure(connection) == dict.fromkeys(ITEMS, 2)
        assert items_met(connection, BOB.code) == frozenset()
        assert issue_of(connection, gone).void_reason == "wrong paper"


def test_voiding_needs_a_reason(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form())
        with pytest.raises(RecordsRefused, match="say why"):
            void(connection, number, "  ", AT)
        assert issue_of(connection, number).state == "issued"


def test_an_issue_stays_pending_until_its_papers_are_written_and_can_be_dropped(tmp_path):
    with small_records(tmp_path) as connection:
        kept = issued(connection, form())
        pending = freeze(
            connection,
            blueprint="cup_check",
            title="Cup check",
            seed="s",
            edition="1",
            bank_hash="b",
            settings={},
            forms=(form("A"), form("B")),
            at=AT,
        )
        assert pending_issues(connection) == (pending,)
        drop_pending(connection, pending)
        drop_pending(connection, kept)
        assert pending_issues(connection) == ()
        assert issue_of(connection, kept).forms == (form(),)
        with pytest.raises(RecordsRefused, match=f"there is no issue {pending}"):
            issue_of(connection, pending)


def test_versions_tell_items_apart_that_read_alike(tmp_path):
    with small_records(tmp_path) as connection:
        for version in ("v1", "v2"):
            freeze(
                connection,
                blueprint="cup_check",
                title="Cup check",
                seed="s",
                edition="1",
                bank_hash="b",
                settings={},
                forms=(form(),),
                at=AT,
                versions={ITEMS[0]: version},
            )
        rows = connection.execute(
            "SELECT version FROM questions WHERE item = ? ORDER BY version", (ITEMS[0],)
        )
        assert [row["version"] for row in rows] == ["v1", "v2"]


def test_the_diary_tells_what_was_done_without_names(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code))
        void(connection, number, f"{ANN.name} was ill", AT)
    with open_records(tmp_path / "records") as connection:
        told = lines(connection)
    assert [action for _, action, _ in told] == ["people", "issue", "void"]
    for word in (ANN.code, ANN.name, BOB.code):
        assert word not in json.dumps(told)
