"""The gate of a form: safety questions, plain kinds first, never a written one."""

from dataclasses import replace

import pytest
from generator.assembly.gate import gate_of

from generator.assembly.form import FormQuestion
from generator.questions import askables
from tests.questions.small_bank import FULL, bank_of


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    bank = bank_of(tmp_path_factory.mktemp("bank"), FULL)
    return {a.name: a.make("A", ()) for a in askables(bank)}


def entries(made, *named):
    """Give questions numbered from 1, each as (name, safety)."""
    return tuple(
        FormQuestion(number, 1, replace(made[name], safety=safety))
        for number, (name, safety) in enumerate(named, start=1)
    )


WRITTEN, ORDER, CHOICE = "filler/mix/why", "cleaning/wash/order", "cleaning/wash/first"
NUMERIC = "film_build/films/wet"


def test_only_safety_questions_are_taken_and_no_more_than_asked(made):
    form = entries(made, (CHOICE, False), (CHOICE, True), (CHOICE, True), (CHOICE, True))
    assert gate_of(form, 2) == (2, 3)
    assert gate_of(form, 0) == ()


def test_choices_come_before_kinds_with_part_marks(made):
    form = entries(made, (ORDER, True), (NUMERIC, True), (CHOICE, True))
    assert gate_of(form, 1) == (3,)
    assert gate_of(form, 2) == (2, 3)
    assert gate_of(form, 3) == (1, 2, 3)


def test_a_written_question_is_never_a_gate(made):
    assert gate_of(entries(made, (WRITTEN, True)), 2) == ()


def test_what_the_plan_includes_comes_first(made):
    form = entries(made, (CHOICE, True), (ORDER, True))
    assert gate_of(form, 1, first=(ORDER,)) == (2,)
