"""Answers and marks are kept together, all of a class or none; no mark is ever lost."""

import pytest

from generator.records import RecordsRefused
from generator.records.issues.issues import void
from generator.records.sittings.answers import shares_of_items
from generator.records.sittings.corrections import Correction, correct, corrections_of
from generator.records.sittings.results import open_retests, passed_since, results_of
from generator.records.sittings.sittings import Kept, keep_sittings, sittings_of
from generator.records.sittings.stored_marks import all_markings
from tests.records.small_records import (
    ANN,
    AT,
    BOB,
    TRAINER,
    form,
    issued,
    marked,
    question,
    sitting,
    small_records,
)

LATER = "2026-03-03T09:00:00"
ITEM = question(1)["id"]


def count(connection, table):
    """Count the rows of a table."""
    return connection.execute(f"SELECT count(*) FROM {table}").fetchone()[0]


def test_what_was_kept_comes_back_with_its_marks(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code), form("B", BOB.code))
        kept = keep_sittings(
            connection, number, [sitting("A"), sitting("B", BOB.code)], AT, TRAINER.code
        )
        found = sittings_of(connection, number)
    assert kept == Kept(new=2)
    assert [(s.label, s.person, s.marker, s.entered) for s in found] == [
        ("A", ANN.code, TRAINER.code, AT),
        ("B", BOB.code, TRAINER.code, AT),
    ]
    assert found[0].responses == sitting().responses
    assert found[0].marked == marked(1, 1, 1)


def test_the_same_table_twice_is_kept_once(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code))
        assert keep_sittings(connection, number, [sitting("A")], AT) == Kept(new=1)
        assert keep_sittings(connection, number, [sitting("A")], LATER) == Kept(known=1)
        assert count(connection, "sittings") == 1
        assert sittings_of(connection, number)[0].entered == AT


def test_other_answers_take_the_place_of_earlier_ones_which_stay_in_the_file(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code))
        keep_sittings(connection, number, [sitting("A")], AT)
        again = sitting("A", answer="B", marks=marked(0, 1, 1))
        assert keep_sittings(connection, number, [again], LATER) == Kept(replaced=1)
        (stands,) = sittings_of(connection, number)
        assert stands.marked == marked(0, 1, 1)
        assert count(connection, "sittings") == 2


def test_one_form_may_be_sat_by_several_people(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A"))
        both = [sitting("A", ANN.code), sitting("A", BOB.code)]
        assert keep_sittings(connection, number, both, AT) == Kept(new=2)
        assert {s.person for s in sittings_of(connection, number)} == {ANN.code, BOB.code}


@pytest.mark.parametrize(
    ("second", "reason"),
    [
        (sitting("C"), "has no form 'C'"),
        (sitting("B", "Nobody"), "'Nobody' is not in the records"),
        (sitting("B", ANN.code), "is another person's"),
    ],
)
def test_nothing_of_a_class_is_kept_when_one_row_is_refused(tmp_path, second, reason):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code), form("B", BOB.code))
        with pytest.raises(RecordsRefused, match=reason):
            keep_sittings(connection, number, [sitting("A"), second], AT)
        assert (count(connection, "sittings"), count(connection, "markings")) == (0, 0)


@pytest.mark.parametrize("marks", [(), (1, 1), (1, 1, 1, 1)])
def test_marks_that_do_not_cover_the_form_are_refused(tmp_path, marks):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code))
        with pytest.raises(RecordsRefused, match="has 3 questions, and each needs its mark"):
            keep_sittings(connection, number, [sitting("A", marks=marked(*marks))], AT)
        assert count(connection, "sittings") == 0


def test_a_voided_issue_takes_no_answers_and_gives_no_results(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code))
        keep_sittings(connection, number, [sitting("A")], AT)
        void(connection, number, "the key got out", AT)
        with pytest.raises(RecordsRefused, match="was voided"):
            keep_sittings(connection, number, [sitting("A")], AT)
        assert results_of(connection, ANN.code) == ()
        assert count(connection, "sittings") == 1


def corrected(connection, number, item=ITEM, sittings=None, reason="two are right"):
    """Correct the key of an item, with full marks for the sittings that stand."""
    standing = [s.number for s in sittings_of(connection, number)]
    again = dict.fromkeys(standing if sittings is None else sittings, marked(1, 1, 1))
    change = Correction(item, {"accept": ["B"]}, reason, TRAINER.code)
    return correct(connection, number, change, again, LATER)


def test_a_correction_marks_again_and_keeps_the_old_marks_and_the_reason(tmp_path):
    first = marked(0, 1, 1, verdict="not_passed", says="A is wrong.")
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code))
        keep_sittings(connection, number, [sitting("A", marks=first)], AT)
        correction = corrected(connection, number)
        (stands,) = sittings_of(connection, number)
        assert stands.marked == marked(1, 1, 1)
        assert all_markings(connection, stands.number) == (
            (AT, None, first),
            (LATER, correction, marked(1, 1, 1)),
        )
        (kept,) = corrections_of(connection, number)
        assert (kept.reason, kept.decided_by, kept.decided) == (
            "two are right",
            TRAINER.code,
            LATER,
        )
        assert results_of(connection, ANN.code)[0].verdict == "passed"


@pytest.mark.parametrize(
    ("changes", "reason"),
    [
        ({"reason": " "}, "say why the key is corrected"),
        ({"item": "mixing/flow_cup/other"}, "has the item 'mixing/flow_cup/other'"),
        ({"sittings": [1, 99]}, "sitting 99 is not in issue 1"),
        ({"sittings": []}, "came in meanwhile"),
    ],
)
def test_a_correction_that_does_not_fit_changes_nothing(tmp_path, changes, reason):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code))
        keep_sittings(connection, number, [sitting("A", marks=marked(0, 0, 0))], AT)
        with pytest.raises(RecordsRefused, match=reason):
            corrected(connection, number, **changes)
        assert corrections_of(connection, number) == ()
        assert sittings_of(connection, number)[0].marked == marked(0, 0, 0)


def test_a_paper_is_to_be_sat_again_until_it_is_passed(tmp_path):
    failed = marked(0, 0, 1, verdict="not_passed")
    with small_records(tmp_path) as connection:
        first = issued(connection, form("A", ANN.code), form("B", BOB.code))
        both = [sitting("A", marks=failed), sitting("B")]
        keep_sittings(connection, first, both, AT)
        assert [(r.person, r.verdict) for r in open_retests(connection)] == [
            (ANN.code, "not_passed")
        ]
        second = issued(connection, form("A", ANN.code))
        keep_sittings(connection, second, [sitting("A")], LATER)
        assert list(open_retests(connection)) == []
        assert passed_since(connection, ANN.code, "cup_check", "2026-03-03")
        assert not passed_since(connection, ANN.code, "cup_check", "2026-03-04")


def test_results_say_in_words_what_a_paper_came_to(tmp_path):
    missed = marked(0, 1, 1, verdict="must_pass_missed")
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code))
        keep_sittings(connection, number, [sitting("A", marks=missed)], AT)
        (result,) = results_of(connection, ANN.code)
    assert result.in_words == "not passed: a must-pass question was missed, 4 of 6 marks"


def test_answers_are_counted_by_item(tmp_path):
    with small_records(tmp_path) as connection:
        number = issued(connection, form("A", ANN.code), form("B", BOB.code))
        rows = [sitting("A", marks=marked(0, 1, 1)), sitting("B", marks=marked(1, 1, 1))]
        keep_sittings(connection, number, rows, AT)
        people, share = shares_of_items(connection)[question(1)["id"], "b" * 12]
    assert (people, share) == (2, 0.5)
