"""Questions from records carry the sources and cautions; exams get none from memory."""

import pytest

from generator.questions.derived.record_questions import record_questions
from tests.questions.small_bank import FULL, bank_of


@pytest.fixture(scope="module")
def bank(tmp_path_factory):
    return bank_of(tmp_path_factory.mktemp("bank"), FULL)


def by_name(bank):
    return {question.name: question for question in record_questions(bank)}


def test_every_record_is_tried_for_every_question(bank):
    names = set(by_name(bank))
    for procedure in ("mix_filler", "wash_trailer"):
        for label in ("order", "next", "before", "missing", "goes_wrong"):
            assert f"procedures/{procedure}/{label}" in names
    for label in ("name", "cause", "remedy", "look_alike"):
        assert f"faults/sags/{label}" in names
    assert "tables/grades/look_up" in names
    assert len(names) == 2 * 5 + 4 * 4 + 1


def test_each_question_comes_from_its_own_record(bank):
    # a maker bound too late would put the last record into every question
    for name, asked in by_name(bank).items():
        question = asked.make(bank, "A")
        if question is None:
            continue
        kind, record, _ = name.split("/")
        entry = getattr(bank, kind)[record]
        assert question.objective == entry.record.objective
        if name.endswith(("order", "next", "before", "missing", "goes_wrong", "remedy")):
            assert entry.record.title in question.stem


def test_work_that_can_hurt_is_marked_and_shows_its_caution(bank):
    questions = by_name(bank)
    risky = questions["procedures/mix_filler/next"].make(bank, "A")
    calm = questions["procedures/wash_trailer/order"].make(bank, "A")
    assert risky.safety
    assert ("", "Peroxide paste burns eyes. Goggles on first.") in [
        (caution.hazard, caution.text) for caution in risky.cautions
    ]
    # it comes with the feedback: beside the question it could tell the key
    assert risky.caution is None
    assert not calm.safety
    assert calm.cautions == ()


def test_a_record_that_rests_on_memory_serves_study_only(tmp_path):
    files = dict(FULL)
    files["procedures/wash_trailer.yml"] = FULL["procedures/wash_trailer.yml"].replace(
        "source: panel_manual", "source: old_book"
    )
    bank = bank_of(tmp_path, files)
    questions = by_name(bank)
    assert questions["procedures/wash_trailer/before"].use(bank) == "study"
    assert questions["procedures/mix_filler/before"].use(bank) == "both"
    assert questions["procedures/wash_trailer/before"].make(bank, "A").pool == "study"


def test_a_table_question_shows_the_whole_table(bank):
    question = by_name(bank)["tables/grades/look_up"].make(bank, "A")
    assert question.exhibit.columns == ("P grade", "Mean size")
    assert len(question.exhibit.rows) == 4
    assert question.kind == "numeric"


def test_the_same_form_gives_the_same_question_and_another_form_another(bank):
    asked = by_name(bank)["procedures/mix_filler/next"]
    assert asked.make(bank, "A") == asked.make(bank, "A")
    assert len({str(asked.make(bank, f"form {n}")) for n in range(20)}) > 5
