"""Draws that must never change: a paper issued once can be issued again, to the last digit.

A line of expected_draws.txt is item, form, and what was drawn. Where a change breaks this test,
papers already handed out could not be made again; then the bank's edition must change as well.
"""

from pathlib import Path

import pytest

from generator.questions import askables
from generator.questions.question import ChoiceKey, MatchKey, NumericKey, OrderKey
from tests.questions.small_bank import (
    FIRST_JOB,
    PAPERS,
    PASTE,
    TWO_RIGHT,
    WASH_ORDER,
    WET_FILM,
    bank_of,
    items,
)

EXPECTED = Path(__file__).with_name("expected_draws.txt")
FORMS = ("specimen|spring|A", "specimen|spring|B", "specimen|autumn|A", "study-1", "study-2")
FROZEN = {
    "items/film_build/films.yml": items(wet=WET_FILM),
    "items/filler/mix.yml": items(paste=PASTE, safe=TWO_RIGHT),
    "items/filler/shape.yml": items(papers=PAPERS),
    "items/cleaning/wash.yml": items(first=FIRST_JOB, order=WASH_ORDER),
}


def drawn(question):
    """Write what chance decided in a question."""
    key = question.key
    if isinstance(key, NumericKey):
        values = ", ".join(f"{name} {value}" for name, value in question.draw)
        return f"{values} -> {key.shown} {key.unit.symbol}".replace("\u00a0", " ")
    if isinstance(key, ChoiceKey):
        return "; ".join(f"{o.letter}{'*' if o.right else ''} {o.text}" for o in key.options)
    if isinstance(key, OrderKey):
        return "; ".join(text for _, text in key.steps) + f" -> {''.join(key.one_order)}"
    assert isinstance(key, MatchKey)
    joined = " ".join(f"{number}{letter}" for number, letter in key.answers)
    return f"{'; '.join(t for _, t in key.left)} / {'; '.join(t for _, t in key.right)} -> {joined}"


def draws(bank):
    return [
        f"{askable.name} | {form} | {drawn(askable.make(form, ()))}"
        for askable in askables(bank)
        for form in FORMS
    ]


@pytest.fixture(scope="module")
def bank(tmp_path_factory):
    return bank_of(tmp_path_factory.mktemp("bank"), FROZEN)


def test_the_draws_are_those_written_down(bank):
    assert draws(bank) == EXPECTED.read_text("utf-8").splitlines()


def test_the_written_draws_cover_every_form_and_differ():
    lines = EXPECTED.read_text("utf-8").splitlines()
    assert {line.split(" | ")[1] for line in lines} == set(FORMS)
    assert len({line.split(" | ")[0] for line in lines}) == 6
    assert len(set(lines)) == len(lines) == 30
