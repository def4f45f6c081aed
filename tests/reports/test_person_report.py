"""A person's report: the gate before the marks, no verdict on little, and what to study."""

from fractions import Fraction

import pytest

from generator.reports import course_names, person_report, sat_issue
from generator.reports.fixed_words import NOT_SAID_PERSON
from generator.reports.intervals import METHOD
from generator.reports.person.person_report import KEY_KEPT, NOTHING_TO_STUDY, NOTHING_WRONG, SAMPLE
from generator.reports.person.study import NO_LESSON, study_rows
from generator.reports.result_sentences import GREY_ZONE, gate_sentences
from tests.records.real_bank import real_bank
from tests.reports.sat import (
    ILLEGIBLE,
    apprentices,
    issued,
    real_forms,
    records_with,
    right,
    sit,
    some_wrong,
)
from tests.reports.toy_forms import NAMES, answer, choice, paper_of, took


def test_a_missed_must_pass_question_is_told_first_with_number_and_subject():
    paper = paper_of(
        [answer(1, 0, must_pass=True, item="cleaning/wash/order"), *map(answer, range(2, 11))],
        verdict="must_pass_missed",
    )
    found = person_report(paper, NAMES)
    assert found["verdict"] == "Not passed: a must-pass question was missed"
    assert found["gate"] == [
        "Must-pass question 1 was missed. It is about: Wash a panel.",
        "A missed must-pass question decides, whatever the marks.",
    ]
    assert list(found).index("gate") < list(found).index("marks")


def test_a_missed_must_pass_question_names_its_hazard_and_not_the_key():
    mist = {"hazard": "mist", "title": "Isocyanate mist", "reason": "The hood stays on."}
    paper = paper_of(
        [answer(1, 0, must_pass=True, question=choice("cleaning/wash/order") | {"critical": mist})],
        verdict="must_pass_missed",
    )
    said = person_report(paper, NAMES)["gate"]
    assert said[0] == "Must-pass question 1 was missed. The hazard: isocyanate mist."
    assert "hood" not in " ".join(said)


def test_a_low_total_is_not_headed_by_the_must_pass_question_alone():
    paper = paper_of(
        [answer(1, 0, must_pass=True), answer(2, 0), answer(3)], verdict="must_pass_missed"
    )
    assert person_report(paper, NAMES)["verdict"] == (
        "Not passed: too few marks, and a must-pass question was missed"
    )


def test_an_opened_gate_names_its_questions():
    paper = paper_of([answer(1, must_pass=True), answer(2), answer(4, must_pass=True)])
    assert gate_sentences(paper, NAMES) == ["All 2 must-pass questions are right: 1 and 4."]
    one = paper_of([answer(1, must_pass=True)])
    assert gate_sentences(one, NAMES) == ["The must-pass question is right: 1."]
    assert gate_sentences(paper_of([answer(1)]), NAMES) == ["This paper has no must-pass question."]


def test_a_must_pass_question_that_waits_is_neither_right_nor_missed():
    paper = paper_of([answer(1, 0, must_pass=True, status="illegible")], verdict="unfinished")
    assert gate_sentences(paper, NAMES) == [
        "Must-pass question 1 is not marked yet. A person must still look."
    ]


def test_a_question_left_out_by_an_appeal_is_no_gate_and_costs_nothing():
    paper = paper_of([answer(1, 0, must_pass=True, findings={"left_out": True}), answer(2)])
    found = person_report(paper, NAMES)
    assert found["gate"] == ["This paper has no must-pass question."]
    assert found["slips"] == [] and found["study"] == []
    assert "Left out of the marks: 1." in found["modules"][0]["in_words"]
    assert found["modules"][0]["count"] == "1 of 1 right"


def test_marks_carry_the_wilson_interval_and_its_source():
    # 18 of 20: 0.698966 to 0.972134 (Wilson 1927, as scipy and statsmodels give it)
    paper = paper_of([answer(n, int(n <= 18)) for n in range(1, 21)], verdict="passed")
    found = person_report(paper, NAMES)
    assert found["marks"][0] == "18 of 20 marks, 90\u00a0%. It takes 16 to pass."
    assert found["marks"][1] == (
        "From 20 questions, your knowledge of the subject lies between about 70\u00a0% and "
        "97\u00a0%."
    )
    assert found["marks"][2].startswith("The paper alone cannot tell")
    assert found["marks"][2].endswith(GREY_ZONE)
    assert found["notes"] == [NOT_SAID_PERSON, f"{METHOD} {SAMPLE} {KEY_KEPT}"]
    assert "Wilson" in METHOD and "1927" in METHOD


@pytest.mark.parametrize(
    ("right_ones", "of", "says"),
    [
        (20, 20, "The paper shows that 80 % of the subject is known."),
        (5, 20, "The paper does not show that 80 % of the subject is known, and speaks against"),
        (9, 9, "With fewer than 10 questions the paper cannot say that 80 %"),
    ],
)
def test_the_paper_says_no_more_than_its_length_bears(right_ones, of, says):
    paper = paper_of([answer(n, int(n <= right_ones)) for n in range(1, of + 1)])
    assert person_report(paper, NAMES)["marks"][2].startswith(says)


def test_an_unfinished_paper_has_no_interval():
    paper = paper_of([*map(answer, range(1, 12)), answer(12, 0, status="illegible")], "unfinished")
    assert person_report(paper, NAMES)["marks"] == [
        "11 of 12 marks, 92\u00a0%. It takes 10 to pass.",
        "Some answers still wait for a person, so the marks may rise.",
    ]


def test_a_module_gets_a_verdict_from_ten_questions_on():
    nine = [answer(n, item="filler/mix/x") for n in range(1, 10)]
    eleven = [answer(n, item="cleaning/wash/x") for n in range(10, 21)]
    found = person_report(paper_of([*nine, *eleven]), NAMES)
    # 11 of 11: lower bound 0.80, 9 of 9 is never judged
    assert [(m["title"], m["count"], m["says"]) for m in found["modules"]] == [
        ("Cleaning", "11 of 11 right", "shown"),
        ("Filler", "9 of 9 right", "too few questions to say"),
    ]


def test_study_lists_lost_objectives_must_pass_first_then_as_taught():
    rows = study_rows(
        [
            answer(1, Fraction(1, 2), item="mixing/cup/x"),
            answer(2, 0, item="cleaning/wash/x"),
            answer(3, 0, item="filler/mix/x", must_pass=True),
            answer(4, 0, item="cleaning/wash/y"),
            answer(5, 1, item="filler/shape/x"),
            answer(6, 0, item="curing/count_bake/x"),
            answer(7, 0, item="mixing/cup/y", status="illegible"),
        ],
        NAMES,
    )
    assert [(row["text"], row["numbers"], row["asked"]) for row in rows] == [
        ("Mix filler", "3*", "question"),
        ("Wash a panel", "2, 4", "questions"),
        ("Time a cup", "1", "question"),
        ("Count bake", "6", "question"),
    ]
    assert [(row["lesson"], row["module"], row["objective"]) for row in rows] == [
        ("Filler", "filler", "filler/mix"),
        ("Cleaning", "cleaning", ""),
        ("Mixing", "mixing", ""),
        (NO_LESSON, "", ""),
    ]


def test_full_marks_leave_nothing_to_tell():
    found = person_report(paper_of([answer(1), answer(2)], "passed"), NAMES)
    assert (found["slips_none"], found["study_none"]) == (NOTHING_WRONG, NOTHING_TO_STUDY)


def test_slips_come_with_title_numbers_and_the_chosen_words():
    paper = paper_of([answer(2, 0, findings=took("B", "Water rusts it."), must_pass=True)])
    assert person_report(paper, NAMES)["slips"] == [
        {
            "title": "A wrong option was taken",
            "rows": [{"numbers": "2*", "took": "water", "text": "Water rusts it."}],
        }
    ]


def test_a_real_paper_is_told_with_real_names(tmp_path):
    people = apprentices(1)
    codes = (people[0].code,)
    names = course_names(real_bank())
    with records_with(tmp_path, people) as connection:
        (form,) = real_forms("new_hire_check", codes)
        issue = issued(connection, [form], codes)
        missed = form["gate"][0]
        sit(connection, issue, form, some_wrong(missed, 9))
        (paper,) = sat_issue(connection, issue).papers
        found = person_report(paper, names)
        assert paper.verdict == "must_pass_missed"
        hazard = form["questions"][missed - 1]["question"]["critical"]["title"].lower()
        assert f"question {missed} was missed. the hazard: {hazard}." in found["gate"][0].lower()
        assert [row["numbers"] for row in found["study"]] == [f"{missed}*", "9"]
        assert {row["module"] for row in found["study"]} <= names.lessons
        assert sum(module["questions"] for module in found["modules"]) == len(form["questions"])
        sit(
            connection,
            issue,
            form,
            lambda question, number: ILLEGIBLE if number == 9 else right(question),
        )
        (again,) = sat_issue(connection, issue).papers
        assert person_report(again, names)["verdict"].startswith("Not finished")
