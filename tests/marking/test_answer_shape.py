"""An answer is held against the shape of its key without being marked, and nothing slips past."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.marking import (
    Awarded,
    Blank,
    CannotMark,
    Chosen,
    Illegible,
    Matched,
    Ordered,
    Typed,
    mark_response,
)
from generator.marking.answers import needs_a_person, refuse_misfit
from tests.marking.small_forms import any_answer, every_kind

QUESTIONS = every_kind()
LETTERS = st.lists(st.sampled_from("ABCDEFb "), max_size=5).map(tuple)
NUMBERS = st.sampled_from(["0", "1", "2", "3", "4"])
ANYTHING = st.one_of(
    st.builds(Chosen, LETTERS),
    st.builds(Ordered, LETTERS),
    st.builds(Typed, st.text(max_size=6)),
    st.builds(
        Matched, st.dictionaries(NUMBERS, st.sampled_from("ABCDE")).map(dict.items).map(tuple)
    ),
    st.builds(Awarded, st.lists(st.integers(-1, 3), max_size=4).map(tuple)),
    st.sampled_from([Blank(), Illegible()]),
)


def refusal(check, question, response):
    try:
        check(question, response)
    except CannotMark as refused:
        return str(refused)
    return ""


@given(st.sampled_from(QUESTIONS), ANYTHING)
def test_what_does_not_fit_is_what_cannot_be_marked_and_for_the_same_reason(question, response):
    assert refusal(refuse_misfit, question, response) == refusal(mark_response, question, response)


@given(st.data())
def test_what_a_person_must_look_at_is_what_marking_calls_illegible(data):
    question = data.draw(st.sampled_from(QUESTIONS))
    response = data.draw(any_answer(question))
    why = needs_a_person(question, response)
    mark = mark_response(question, response)
    if isinstance(response, Typed) and response.text.strip():
        assert [note.text for note in mark.notes if mark.needs_a_person] == ([why] if why else [])
    else:
        assert why == ""


@pytest.mark.parametrize("text", ["about 60", "60 furlongs"])
def test_no_number_and_an_unknown_unit_are_for_a_person(text):
    assert needs_a_person(QUESTIONS[2], Typed(text))
    assert not needs_a_person(QUESTIONS[2], Typed("2.4 mil"))
