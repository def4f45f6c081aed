"""What the site asks: several draws of a question, and nothing that is kept for exams."""

import pytest

from generator.questions.study import DERIVED_VARIANTS, NUMERIC_VARIANTS, study_questions
from tests.questions.small_bank import FULL, PASTE, bank_of, items


@pytest.fixture(scope="module")
def bank(tmp_path_factory):
    return bank_of(tmp_path_factory.mktemp("bank"), FULL)


@pytest.fixture(scope="module")
def asked(bank):
    return study_questions(bank)


def every(asked):
    return [variants for module in asked.values() for variants in module]


def test_nothing_from_the_exam_pool_is_shown(bank, asked):
    shown = {question["id"] for variants in every(asked) for question in variants}
    kept = {name for name, entry in bank.items.items() if entry.record.use == "exam"}
    assert kept == {"filler/mix/paste", "filler/mix/safe", "cleaning/wash/order"}
    assert not kept & shown
    assert set(bank.items) - kept <= shown


def test_every_module_has_its_own_questions_only(asked):
    assert list(asked) == ["cleaning", "filler", "film_build"]
    for module, questions in asked.items():
        assert {question["module"] for variants in questions for question in variants} == {module}


def test_variants_belong_to_one_question_and_differ(asked):
    for variants in every(asked):
        assert len({question["id"] for question in variants}) == 1
        drawn = [(question["stem"], tuple(question["draw"].items())) for question in variants]
        assert len(set(drawn)) == len(drawn)


def test_a_numeric_question_comes_in_six_draws(asked):
    (variants,) = asked["film_build"]
    assert len(variants) == NUMERIC_VARIANTS == 6


def test_a_grid_of_six_gives_all_six(tmp_path):
    for number in range(8):
        body = PASTE.replace("use: exam", "use: study")
        files = {"items/filler/mix.yml": items(**{f"paste_{number}": body})}
        bank = bank_of(tmp_path / str(number), files)
        (variants,) = study_questions(bank)["filler"]
        assert len({tuple(question["draw"].values()) for question in variants}) == 6


def test_a_small_grid_gives_each_draw_once(tmp_path):
    body = PASTE.replace("use: exam", "use: study").replace("[100, 150, 250]", "[100]")
    bank = bank_of(tmp_path, {"items/filler/mix.yml": items(paste=body)})
    (variants,) = study_questions(bank)["filler"]
    assert sorted(question["draw"]["share"] for question in variants) == ["2\u00a0%", "3\u00a0%"]


def test_a_question_from_a_record_comes_in_two_draws_at_most(asked):
    records = ("procedures/", "faults/")
    counts = {len(v) for v in every(asked) if v[0]["id"].startswith(records)}
    assert counts <= {1, DERIVED_VARIANTS}
    assert DERIVED_VARIANTS in counts


def test_a_question_in_words_comes_once(asked):
    once = [v for v in asked["cleaning"] if v[0]["id"] == "cleaning/wash/first"]
    assert [len(variants) for variants in once] == [1]
