"""A hand-written item becomes a question with everything its author stated."""

import pytest

from generator.bank.models import Item
from generator.questions.item_questions import kind_of, question_of_item, salt
from generator.questions.question import (
    ChoiceKey,
    MatchKey,
    NumericKey,
    OrderKey,
    WrittenKey,
)
from tests.questions.small_bank import FULL, WET_FILM, bank_of, items
from tests.some import some

KEYS = {
    "numeric": NumericKey,
    "choice": ChoiceKey,
    "multiple_response": ChoiceKey,
    "order": OrderKey,
    "match": MatchKey,
    "written": WrittenKey,
}


@pytest.fixture(scope="module")
def bank(tmp_path_factory):
    return bank_of(tmp_path_factory.mktemp("bank"), FULL)


def test_every_kind_of_item_gets_its_own_kind_of_key(bank):
    made = {}
    for name, entry in bank.items.items():
        question = question_of_item(bank, entry, "A")
        assert question.name == name
        made[question.kind] = type(question.key)
    assert made == KEYS


def test_level_pool_objective_and_source_are_those_of_the_record(bank):
    question = question_of_item(bank, bank.items["filler/mix/paste"], "A")
    assert (question.level, question.use) == ("apply", "exam")
    assert question.objective == "filler/mix"
    assert [source.tag for source in question.sources] == ["common_practice"]


def test_the_drawn_values_stand_in_stem_and_sheet(bank):
    question = question_of_item(bank, bank.items["film_build/films/wet"], "A")
    drawn = dict(question.draw)
    assert question.stem.startswith(f"You need {drawn['dry']} dry.")
    assert question.exhibit.title == f"Made-up sheet for {drawn['dry']}"
    assert question.exhibit.rows == (("Volume solids", drawn["volume_solids"]),)
    assert question.exhibit.columns == ()


def test_a_draw_already_given_away_is_passed_over(bank):
    entry = bank.items["film_build/films/wet"]
    first = question_of_item(bank, entry, "A")
    second = question_of_item(bank, entry, "A", [first.draw])
    assert first.draw != second.draw
    assert question_of_item(bank, entry, "A", []).draw == first.draw


def test_a_name_that_begins_like_another_is_filled_by_itself(tmp_path):
    body = WET_FILM.replace("volume_solids", "dry_two")
    bank = bank_of(tmp_path, {"items/film_build/films.yml": items(one=body)})
    question = question_of_item(bank, bank.items["film_build/films/one"], "A")
    assert question.exhibit.rows[0][1] == dict(question.draw)["dry_two"]


def test_the_same_form_always_gives_the_same_question(bank):
    for entry in some(bank.items.values()):
        assert question_of_item(bank, entry, "A") == question_of_item(bank, entry, "A")


def test_another_edition_of_the_bank_draws_anew(bank, tmp_path):
    sheet = "title: Trailer bay\nedition: '2'\n"
    other = bank_of(tmp_path, {**FULL, "bank.yml": sheet})
    assert (salt(bank), salt(other)) == ("Trailer bay|1", "Trailer bay|2")
    name = "film_build/films/wet"
    draws = [
        [question_of_item(b, b.items[name], f"form {n}").draw for n in range(8)]
        for b in (bank, other)
    ]
    assert draws[0] != draws[1]


def test_a_written_item_keeps_its_points_and_model(bank):
    question = question_of_item(bank, bank.items["filler/mix/why"], "A")
    assert question.key.points == (("Filler grips in scratches", 2), ("Smooth metal lets go", 1))
    assert question.key.model == "Filler holds in the scratches of the bed."


def test_a_kind_without_a_key_is_refused(bank):
    entry = bank.items["filler/mix/why"]
    bare = Item(level="recall", use="study", source="common_practice", stem="Why?")
    with pytest.raises(TypeError):
        kind_of(bare)
    with pytest.raises(TypeError):
        question_of_item(bank, type(entry)(entry.name, bare, entry.node, entry.start), "A")
