"""A corrected key marks as if it had been issued so, on every form that asks the same."""

import copy

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.marking import CannotMark, Chosen, Typed, mark_form, mark_response
from generator.marking.answers.corrected_key import (
    accept_number,
    accept_option,
    corrected_form,
    effect_on,
    in_words,
    key_options,
    leave_out,
)
from generator.marking.answers.mark_form import LEFT_OUT
from tests.marking.small_forms import RIGHT, any_answer, every_kind, small_form

CHOICE, SEVERAL, NUMBER, ORDER, MATCH, WRITTEN = every_kind()


def lettered(question, order):
    """Return the same question with its options in another order under new letters."""
    new = copy.deepcopy(question)
    by_letter = {option["letter"]: option for option in new["key"]["options"]}
    turned = [by_letter[letter] for letter in order]
    new["key"]["options"] = [
        option | {"letter": letter} for letter, option in zip("ABCD", turned, strict=False)
    ]
    return new


def rights(form, number=1):
    """Return the texts of the right options of a question."""
    options = form["questions"][number - 1]["question"]["key"]["options"]
    return {option["text"] for option in options if option["right"]}


def with_right(question, texts):
    """Return a question as it would have been issued with these right options."""
    new = copy.deepcopy(question)
    for option in new["key"]["options"]:
        option["right"] = option["text"] in texts
    return new


def test_a_further_option_is_accepted_under_the_letter_it_has_on_each_form():
    change = accept_option(CHOICE, "C")
    turned = small_form(questions=[lettered(CHOICE, "CAB")])
    for form, letter in ((small_form(questions=[CHOICE]), "C"), (turned, "A")):
        assert effect_on(form, CHOICE["id"], change) == "changed"
        corrected = corrected_form(form, [(CHOICE["id"], change)])
        assert rights(corrected) == {"B", "C"}
        assert mark_form(form, {1: Chosen((letter,))}).points == 0
        assert mark_form(corrected, {1: Chosen((letter,))}).points == 1


@given(st.data())
def test_a_replaced_key_marks_as_if_it_had_been_issued_so(data):
    question = data.draw(st.sampled_from([CHOICE, SEVERAL]))
    letters = [option["letter"] for option in question["key"]["options"]]
    most = 1 if question is CHOICE else len(letters)
    right = data.draw(st.lists(st.sampled_from(letters), min_size=1, max_size=most, unique=True))
    form = small_form(questions=[lettered(question, data.draw(st.permutations(letters)))])
    change = key_options(question, " ".join(right))
    corrected = corrected_form(form, [(question["id"], change)])
    issued_so = small_form(questions=[with_right(form["questions"][0]["question"], right)])
    answers = {1: data.draw(any_answer(question))}
    again, from_scratch = mark_form(corrected, answers), mark_form(issued_so, answers)
    assert (again.points, again.verdict) == (from_scratch.points, from_scratch.verdict)


@pytest.mark.parametrize(
    ("text", "accepted", "not_accepted"),
    [
        ("65", ["65", "65 µm", "0,065 mm"], ["65.01", "64", "66"]),
        ("62 to 70", ["62", "66", "70"], ["70.1", "57"]),
        ("0.065 mm to 0.07 mm", ["65", "70"], ["64", "71"]),
        ("2 mil to 3 mil", ["50.8", "2 mil", "76.2"], ["50.7", "76.3"]),
    ],
)
def test_a_number_or_a_band_of_numbers_is_accepted_beside_the_key(text, accepted, not_accepted):
    form = small_form(questions=[NUMBER])
    change = accept_number(NUMBER, text)
    corrected = corrected_form(form, [(NUMBER["id"], change), (NUMBER["id"], change)])
    for answer in ("60", *accepted):
        assert mark_form(corrected, {1: Typed(answer)}).points == 2, answer
    for answer in not_accepted:
        assert mark_form(corrected, {1: Typed(answer)}).points == 0, answer
    assert mark_form(form, {1: Typed(accepted[0])}).points == 0 or accepted[0] == "62"


def test_an_accepted_number_is_no_slip_any_more():
    change = accept_number(NUMBER, "29 to 31")
    (entry,) = corrected_form(small_form(questions=[NUMBER]), [(NUMBER["id"], change)])["questions"]
    assert mark_response(NUMBER, Typed("30")).went_wrong[0].about == "slip"
    assert mark_response(entry["question"], Typed("30")).share == 1


@pytest.mark.parametrize("kind", range(6))
def test_any_question_can_be_left_out(kind):
    form = small_form()
    item = form["questions"][kind]["question"]["id"]
    corrected = corrected_form(form, [(item, leave_out())])
    assert [entry.get(LEFT_OUT, False) for entry in corrected["questions"]] == [
        place == kind for place in range(6)
    ]
    full = mark_form(corrected, RIGHT)
    assert full.points == full.most == form["marks"] - form["questions"][kind]["marks"]


def test_the_form_itself_stays_as_it_was_issued():
    form = small_form()
    before = copy.deepcopy(form)
    changes = [
        (CHOICE["id"], accept_option(CHOICE, "C")),
        (NUMBER["id"], accept_number(NUMBER, "65")),
        (WRITTEN["id"], leave_out()),
    ]
    assert corrected_form(form, changes) != form
    assert form == before


def test_later_corrections_go_on_top_of_earlier_ones():
    form = small_form(questions=[CHOICE])
    changes = [
        (CHOICE["id"], accept_option(CHOICE, "C")),
        (CHOICE["id"], key_options(CHOICE, "A")),
    ]
    assert rights(corrected_form(form, changes)) == {"A"}
    assert rights(corrected_form(form, changes[::-1])) == {"A", "C"}


def test_other_numbers_are_another_question_and_a_missing_option_is_told():
    other = NUMBER | {"stem": "The same sum with other numbers."}
    form = small_form(questions=[other])
    change = accept_number(NUMBER, "65")
    assert effect_on(form, NUMBER["id"], change) == "other numbers"
    assert corrected_form(form, [(NUMBER["id"], change)]) == form
    fewer = copy.deepcopy(CHOICE)
    fewer["key"]["options"].pop()
    form = small_form(questions=[fewer])
    assert effect_on(form, CHOICE["id"], accept_option(CHOICE, "C")) == "no such option"
    assert effect_on(form, CHOICE["id"], leave_out()) == "changed"
    assert effect_on(form, "bench/other", leave_out()) == "not asked"


@pytest.mark.parametrize(
    ("make", "question", "text", "said"),
    [
        (accept_option, SEVERAL, "B", "name the whole key instead"),
        (accept_option, CHOICE, "E", "has no 'E'"),
        (accept_option, CHOICE, "A C", "name one option by letter"),
        (accept_option, CHOICE, "", "name one option by letter"),
        (accept_option, NUMBER, "A", "accepted for a choice"),
        (key_options, CHOICE, "AB", "name one option by letter"),
        (key_options, SEVERAL, "A, E", "has no 'E'"),
        (key_options, SEVERAL, " ", "name the right options"),
        (key_options, ORDER, "A", "only a choice and a multiple response"),
        (accept_number, CHOICE, "65", "only a question that takes a number"),
        (accept_number, NUMBER, "many", "is not a number"),
        (accept_number, NUMBER, "65 to", "is not"),
        (accept_number, NUMBER, "70 to 65", "is not one number, nor two"),
        (accept_number, NUMBER, "1 to 2 to 3", "is not one number, nor two"),
        (accept_number, NUMBER, "65 kg", "is not in µm"),
    ],
)
def test_a_change_that_the_question_cannot_take_is_one_sentence(make, question, text, said):
    with pytest.raises(CannotMark, match=said):
        make(question, text)


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (accept_option(CHOICE, "C"), "'C' is accepted as well"),
        (key_options(CHOICE, "A"), "'A' is right, nothing else"),
        (key_options(SEVERAL, "A B"), "'A' and 'B' are right, nothing else"),
        (accept_number(NUMBER, "65"), "65 is accepted as well"),
        (accept_number(NUMBER, "65 to 70"), "65 to 70 is accepted too"),
        (leave_out(), "the question is left out of the marks"),
    ],
)
def test_a_change_is_said_in_words(change, words):
    assert in_words(change) == words
