"""What went wrong is told as slips, grouped, and without the key."""

from fractions import Fraction

import pytest

from generator.marking import Awarded, Chosen, Typed, mark_as_plain, mark_response
from generator.records.sittings.stored_marks import KeptMark
from generator.reports.answered_papers import Answer
from generator.reports.slip_sentences import (
    KINDS,
    MISSED_ALL,
    NO_KNOWN_SLIP,
    NO_POINT,
    NO_REASON,
    Slip,
    grouped_slips,
    slips_of,
    worth_knowing,
)
from tests.marking import issued
from tests.reports.sat import apprentices, real_forms, right, wrong
from tests.reports.toy_forms import answer, took


def marked_answer(question, response, number=1):
    """Mark an answer to a question as it is kept."""
    plain = mark_as_plain(mark_response(question, response))
    findings = {name: plain[name] for name in ("went_wrong", "notes")}
    mark = KeptMark(number, Fraction(plain["share"]), plain["status"], findings)
    return Answer(number, 1, False, question, {}, mark)


def test_a_wrong_option_is_named_by_its_own_words_and_its_reason():
    given = answer(4, 0, findings=took("B", "Water rusts the panel."))
    assert slips_of(given) == (Slip("option", "Water rusts the panel.", "water"),)


def test_the_same_slip_is_told_once_with_every_number():
    same = took("B", "Water rusts the panel.")
    groups = grouped_slips([answer(7, 0, findings=same), answer(2, 0, findings=same)])
    assert [(g.slip.text, [a.number for a in g.answers]) for g in groups] == [
        ("Water rusts the panel.", [7, 2])
    ]


def test_must_pass_questions_are_told_first_within_their_kind():
    groups = grouped_slips(
        [
            answer(1, 0, findings=took("B", "One.")),
            answer(9, 0, findings=took("B", "Nine."), must_pass=True),
        ]
    )
    assert [group.slip.text for group in groups] == ["Nine.", "One."]


def test_kinds_come_in_a_fixed_order_and_blank_is_apart_from_wrong():
    groups = grouped_slips(
        [
            answer(1, 0, status="blank"),
            answer(2, 0, status="illegible"),
            answer(3, 0, findings=took("C", "Sand scratches.")),
        ]
    )
    assert [group.slip.kind for group in groups] == ["option", "blank", "waiting"]
    assert set(KINDS) >= {group.slip.kind for group in groups}


def test_a_number_without_a_known_slip_says_so():
    numeric = issued.numeric("60", "59", "61")
    given = answer(5, 0, question=numeric, response={"form": "typed", "text": "7"})
    assert slips_of(given) == (Slip("slip", NO_KNOWN_SLIP, "7"),)


def test_a_question_without_any_finding_sends_to_the_trainer():
    assert slips_of(answer(5, 0)) == (Slip("option", NO_REASON),)


def test_what_is_right_or_left_out_went_not_wrong():
    assert slips_of(answer(1, 1)) == ()
    assert slips_of(answer(1, 0, findings={"left_out": True})) == ()


def test_points_of_a_written_answer_are_named_only_where_some_were_there():
    question = issued.written(2, 1)
    assert slips_of(marked_answer(question, Awarded((0, 0)))) == (Slip("point", NO_POINT),)
    assert slips_of(marked_answer(question, Awarded((2, 0)))) == (Slip("point", "point 2"),)


def test_right_options_are_not_told_to_somebody_who_took_none_of_them():
    question = issued.options("multiple_response", "AB", "ABCD")
    nothing_right = slips_of(marked_answer(question, Chosen(("C",))))
    assert Slip("missed", MISSED_ALL) in nothing_right
    assert not any("about A" in slip.text or "about B" in slip.text for slip in nothing_right)
    assert Slip("missed", "about B") in slips_of(marked_answer(question, Chosen(("A",))))


def test_another_unit_and_extra_figures_are_worth_knowing():
    question = issued.numeric("128", "127.5", "128.5")
    other_unit = marked_answer(question, Typed("0.128 mm"), 3)
    assert worth_knowing([other_unit]) == ((3, "0.128\u00a0mm is 128\u00a0µm."),)
    wrong_too = marked_answer(question, Typed("0.2 mm"), 3)
    assert worth_knowing([wrong_too]) == ()


def test_a_unit_that_the_sheet_prints_itself_is_not_asked_for_again():
    question = issued.numeric("128", "127.5", "128.5")
    assert worth_knowing([marked_answer(question, Typed("128"), 3)]) == ()


@pytest.mark.parametrize("blueprint", ["new_hire_check", "final_paper"])
def test_no_slip_of_a_real_paper_names_a_right_letter_order_or_number(blueprint):
    (form,) = real_forms(blueprint, (apprentices(1)[0].code,))
    for entry in form["questions"]:
        question = entry["question"]
        given = marked_answer(question, wrong(question, entry["number"]), entry["number"])
        slips = slips_of(given)
        assert slips and all(slip.text for slip in slips)
        assert slips_of(marked_answer(question, right(question))) == ()
        key = question["key"]
        right_texts = [o["text"] for o in key.get("options", ()) if o["right"]]
        for slip in slips:
            assert slip.took not in right_texts
            if question["kind"] == "numeric":
                assert key["shown"] not in slip.text.split()
            if question["kind"] in ("order", "match"):
                assert slip.took == ""
            if question["kind"] == "written":
                assert slip.text == NO_POINT
