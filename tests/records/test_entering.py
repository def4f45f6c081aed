"""Answers that come in are marked with the key as it stands, under one lock, all or none."""

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import Place
from generator.marking import Blank, Chosen
from generator.marking.answers.corrected_key import accept_option, leave_out
from generator.marking.tables.issued_answers import FormAnswers
from generator.records import RecordsRefused, open_records
from generator.records.issues.issues import void
from generator.records.people.people import add_people, all_people
from generator.records.sittings import mark_and_store as entering
from generator.records.sittings.appeals import correct_and_mark_again, preview_correction
from generator.records.sittings.corrected_forms import corrected_forms, issued_forms, voided_forms
from generator.records.sittings.corrections import Correction
from generator.records.sittings.mark_and_store import completed, mark_and_keep
from generator.records.sittings.sittings import Kept, sittings_of
from generator.records.store.database import writing
from tests.command_line.marking_project import AT, issue_forms, marking_project
from tests.marking.small_forms import ANN, BOB, RIGHT, any_answer, every_kind, small_form

A, B, C = (small_form(label)["form_id"] for label in "ABC")
CHOICE = every_kind()[0]
PLACE = Place("t.csv", 2, 1)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    return marking_project(tmp_path / "shop") / "records"


def paper(form_id, responses=RIGHT, person=""):
    """Return the answers of a paper as a reader does."""
    return FormAnswers(form_id, person, responses, PLACE)


def test_papers_of_two_issues_are_kept_together_or_not_at_all(folder):
    issue_forms(folder.parent, [small_form("D")])
    other = small_form("D")["form_id"]
    with open_records(folder) as connection:
        with pytest.raises(RecordsRefused, match="'Nobody' is not in the records"):
            mark_and_keep(connection, [paper(A), paper(other, person="Nobody")], AT)
        assert sittings_of(connection, 1) == sittings_of(connection, 2) == ()
        outcome = mark_and_keep(connection, [paper(A), paper(other, person=ANN)], AT)
        assert outcome.kept == {1: Kept(new=1), 2: Kept(new=1)}
        assert [entered.issue for entered in outcome.entered] == [1, 2]


def test_nothing_is_read_before_the_lock_is_held(folder, monkeypatch):
    held = []

    def watched(connection, form_ids):
        held.append(connection.in_transaction)
        return issued_forms(connection, form_ids)

    monkeypatch.setattr(entering, "issued_forms", watched)
    with open_records(folder) as connection:
        mark_and_keep(connection, [paper(A)], AT)
    assert held == [True]


def test_a_writing_inside_another_is_part_of_it(folder):
    with open_records(folder) as connection:
        before = all_people(connection)
        with pytest.raises(ValueError, match="later"), writing(connection):
            add_people(connection, [type(before[0])("Apprentice 77")], AT)
            assert len(all_people(connection)) == len(before) + 1
            raise ValueError("later")
        assert all_people(connection) == before


def test_answers_after_a_correction_are_marked_with_it(folder):
    wrong = RIGHT | {1: Chosen(("C",))}
    with open_records(folder) as connection:
        mark_and_keep(connection, [paper(A, wrong)], AT)
        change = Correction(CHOICE["id"], accept_option(CHOICE, "C"), "both are right")
        number, appeal = correct_and_mark_again(connection, 1, change, AT)
        assert (number, len(appeal.again)) == (1, 1)
        mark_and_keep(connection, [paper(B, wrong)], AT)
        assert [s.marked.verdict for s in sittings_of(connection, 1)] == ["passed", "passed"]


def test_weighing_a_correction_keeps_nothing(folder):
    with open_records(folder) as connection:
        mark_and_keep(connection, [paper(A)], AT)
        before = sittings_of(connection, 1)
        (again,) = preview_correction(connection, 1, CHOICE["id"], leave_out()).again
        assert (again.before.most, again.after.most, again.changes) == (14, 13, True)
        assert sittings_of(connection, 1) == before
        assert corrected_forms(connection, 1)["A"]["questions"][0].get("left_out") is None


def test_forms_are_found_by_their_ids_unless_their_issue_is_voided(folder):
    with open_records(folder) as connection:
        found = issued_forms(connection, [A, "NOSUCHID", A])
        assert {f: (p.issue, p.label, p.person) for f, p in found.items()} == {A: (1, "A", ANN)}
        assert found[A].content["person"] == ANN
        assert voided_forms(connection, [A]) == {}
        void(connection, 1, "the key got out", AT)
        assert issued_forms(connection, [A]) == {}
        assert voided_forms(connection, [A, "NOSUCHID"]) == {A: 1}
        with pytest.raises(RecordsRefused, match=f"no form '{A}' is in use"):
            mark_and_keep(connection, [paper(A)], AT)


some_answers = st.fixed_dictionaries(
    {}, optional={e["number"]: any_answer(e["question"]) for e in small_form()["questions"]}
)


@given(before=some_answers, new=some_answers)
def test_new_answers_never_take_a_markers_work_away(before, new):
    after = completed(small_form(), before, new)
    given_blank = all(isinstance(answer, Blank) for n, answer in new.items() if n != 6)
    if 6 in before or 6 in new:
        assert after[6] == new.get(6, before.get(6))
    if before and given_blank and 6 in new:
        # nothing but marks of a written answer: all else stays
        assert {n: a for n, a in after.items() if n != 6} == {
            n: a for n, a in before.items() if n != 6
        }
    else:
        assert {n: a for n, a in after.items() if n != 6} == {
            n: a for n, a in new.items() if n != 6
        }


def test_the_person_of_a_form_for_nobody_is_kept_apart(folder):
    with open_records(folder) as connection:
        papers = [paper(C, person=ANN), paper(C, RIGHT | {1: Chosen(("A",))}, person=BOB)]
        mark_and_keep(connection, papers, AT)
        found = {s.person: s.marked.verdict for s in sittings_of(connection, 1)}
    assert found == {ANN: "passed", BOB: "must_pass_missed"}
