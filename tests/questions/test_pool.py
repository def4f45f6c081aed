"""All that can be asked: items and records side by side, none that gives nothing."""

import re

import pytest

from generator.questions.pool import askables
from tests.questions.small_bank import FULL, MIX_FILLER, bank_of


@pytest.fixture(scope="module")
def bank(tmp_path_factory):
    return bank_of(tmp_path_factory.mktemp("bank"), FULL)


def test_names_are_in_order_and_none_comes_twice(bank):
    names = [askable.name for askable in askables(bank)]
    assert names == sorted(set(names))


def test_every_item_is_there_and_stands_for_itself(bank):
    written = {a.name: a for a in askables(bank) if not a.is_derived}
    assert set(written) == set(bank.items)
    assert all(askable.record == name for name, askable in written.items())
    paste = written["filler/mix/paste"]
    assert (paste.module, paste.objective, paste.kind, paste.use) == (
        "filler",
        "filler/mix",
        "numeric",
        "exam",
    )


def test_all_questions_of_a_record_share_its_record(bank):
    derived = [a for a in askables(bank) if a.is_derived]
    assert {a.record for a in derived if a.name.startswith("procedures/mix_filler/")} == {
        "procedures/mix_filler"
    }
    assert {a.module for a in derived if a.record == "procedures/wash_trailer"} == {"cleaning"}


def test_what_an_askable_says_of_itself_holds_for_what_it_makes(bank):
    for askable in askables(bank):
        for number in range(10):
            question = askable.make(f"form {number}", ())
            assert question is not None
            assert question.name == askable.name
            assert question.kind == askable.kind
            assert question.objective == askable.objective
            assert question.use == askable.use
            assert question.safety == askable.safety


def test_a_question_that_its_record_cannot_give_is_left_out(tmp_path):
    alike = re.sub("harm: [a-z_]+", "harm: poor_grip", MIX_FILLER)
    bank = bank_of(tmp_path, {"procedures/mix_filler.yml": alike})
    given = [a.name.rsplit("/")[-1] for a in askables(bank)]
    # every harm is of one kind, so nothing unlike is left to ask what goes wrong
    assert given == ["before", "missing", "next", "order"]


def test_adding_records_moves_no_draw_of_an_item(tmp_path):
    some = {"items/film_build/films.yml": FULL["items/film_build/films.yml"]}
    small = bank_of(tmp_path / "small", some)
    large = bank_of(tmp_path / "large", FULL)
    (alone,) = askables(small)
    (among,) = [a for a in askables(large) if a.name == alone.name]
    for number in range(20):
        assert alone.make(f"form {number}", ()) == among.make(f"form {number}", ())
