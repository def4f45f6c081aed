"""The plain form: JSON all through, exact numbers as texts, every field that readers need."""

import json
from fractions import Fraction

import pytest

from generator.issued import issued_question
from generator.issued.from_question import ANY_ORDER
from generator.questions import askables
from tests.questions.small_bank import FULL, bank_of
from tests.some import some

FIELDS = {
    "id", "kind", "module", "objective", "level", "pool", "safety", "stem", "caution", "cautions",
    "hands_on", "critical", "place", "sheet", "table", "sources", "minutes", "draw", "key",
}  # fmt: skip
KEYS = {
    "numeric": {"shown", "exact", "unit", "unit_symbol", "step", "low", "high", "band_text",
                "working", "slips", "says"},
    "choice": {"options"},
    "multiple_response": {"options"},
    "order": {"steps", "pairs", "orders", "one_order", "rule"},
    "match": {"left", "right", "answers", "says"},
    "written": {"points", "model"},
}  # fmt: skip


@pytest.fixture(scope="module")
def questions(tmp_path_factory):
    bank = bank_of(tmp_path_factory.mktemp("bank"), FULL)
    return {a.name: a.make("A", ()) for a in askables(bank)}


@pytest.fixture(scope="module")
def plain(questions):
    return {name: issued_question(question) for name, question in questions.items()}


def test_every_question_has_every_field_and_the_key_of_its_kind(plain):
    assert {p["kind"] for p in plain.values()} == set(KEYS)
    for question in plain.values():
        assert set(question) == FIELDS
        assert set(question["key"]) == KEYS[question["kind"]]


def test_it_is_json_and_comes_back_unchanged(plain):
    assert json.loads(json.dumps(plain)) == plain


def test_exact_numbers_survive_as_text(questions, plain):
    for name, question in some(questions.items()):
        if question.kind != "numeric":
            continue
        key = plain[name]["key"]
        assert Fraction(key["exact"]) == question.key.exact
        assert Fraction(key["low"]) == question.key.band.low
        assert Fraction(key["high"]) == question.key.band.high
        assert Fraction(key["step"]) == question.key.step
        for slip, told in zip(question.key.slips, key["slips"], strict=True):
            assert Fraction(told["low"]) == slip.band.low
            assert Fraction(told["high"]) == slip.band.high


def test_an_endless_decimal_is_written_as_a_fraction(questions, plain):
    texts = [q["key"]["exact"] for q in plain.values() if q["kind"] == "numeric"]
    texts += [s["low"] for q in plain.values() if q["kind"] == "numeric" for s in q["key"]["slips"]]
    assert all(set(text) <= set("0123456789./-") for text in texts)


def test_a_sheet_and_a_table_are_told_apart(plain):
    wet, grades = plain["film_build/films/wet"], plain["tables/grades/look_up"]
    assert wet["table"] is None
    assert set(wet["sheet"]) == {"title", "rows"}
    assert grades["sheet"] is None
    assert grades["table"]["columns"] == ["P grade", "Mean size"]
    assert grades["table"]["rows"][0] == ["80", "201"]


def test_an_order_key_says_that_any_order_that_keeps_the_pairs_is_right(plain):
    key = plain["cleaning/wash/order"]["key"]
    assert key["rule"] == ANY_ORDER
    assert {pair["class"] for pair in key["pairs"]} == {"danger", "ruins"}
    assert sorted(key["one_order"]) == [step["letter"] for step in key["steps"]]


def test_a_match_key_points_from_numbers_to_letters(plain):
    key = plain["filler/shape/papers"]["key"]
    assert set(key["answers"]) == {row["number"] for row in key["left"]}
    assert set(key["answers"].values()) < {row["letter"] for row in key["right"]}
    assert set(key["says"]) == set(key["answers"])


def test_module_and_objective_are_told_of_items_and_of_records(plain):
    assert plain["film_build/films/wet"]["module"] == "film_build"
    derived = plain["procedures/mix_filler/order"]
    assert (derived["module"], derived["objective"]) == ("filler", "filler/mix")
