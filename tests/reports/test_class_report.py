"""A class's report: who, what to teach again, slips, must-pass misses, questions to look at."""

from collections import Counter
from fractions import Fraction

import pytest
from scipy.stats import binomtest

from generator.reports import (
    analyse_pool,
    class_report,
    course_names,
    pooled,
    sat_issue,
)
from generator.reports.classes.class_slips import commonest_slips, gate_misses
from generator.reports.classes.flagged_questions import COUNTS_ONLY, NO_FLAGS_YET, items_to_look_at
from generator.reports.classes.reteach import objectives_to_reteach
from tests.records.real_bank import real_bank
from tests.reports.sat import apprentices, issued, real_forms, records_with, sit, some_wrong
from tests.reports.toy_forms import (
    NAMES,
    answer,
    choice,
    form_of,
    issue_of_forms,
    keep,
    paper_of,
    took,
)


def reported(connection, number, names=NAMES):
    """Return the class report of an issue, with its own papers analysed."""
    sat = sat_issue(connection, number)
    return class_report(sat, names, analyse_pool(pooled(connection, [sat.issue.number])))


def class_of(tmp_path, rows):
    """Sit the same form of two questions, the first must-pass, by a class; give the report."""
    form = form_of("A", [choice("cleaning/wash/a"), choice("filler/mix/b")], gate=[1])
    people = apprentices(len(rows))
    with records_with(tmp_path, people) as connection:
        number = issue_of_forms(connection, [form])
        keep(connection, number, form, rows, [person.code for person in people])
        return reported(connection, number)


def test_everybody_stands_there_by_code_with_marks_verdict_and_missed_gate(tmp_path):
    found = class_of(tmp_path, [("air", "air"), ("water", "air"), ("air", "water")])
    assert [(p["who"], p["marks"], p["verdict"], p["missed"]) for p in found["people"]] == [
        ("Apprentice 01", "2 of 2", "passed", ""),
        ("Apprentice 02", "1 of 2", "must-pass missed, too few marks", "1"),
        ("Apprentice 03", "1 of 2", "not passed yet", ""),
    ]
    assert found["summary"][0] == (
        "1 of 3 passed; 1 must-pass missed (1 of them with too few marks as well), "
        "1 not passed yet."
    )
    assert found["summary"][-1] == "Fewer than 10 papers: counts only, no percent."
    assert "Learner Name" not in str(found)


def test_from_ten_papers_on_the_share_that_passed_is_told_and_a_whole_class_has_no_interval(
    tmp_path,
):
    # 9 of 10: 0.595850 to 0.982124 (Wilson 1927)
    found = class_of(tmp_path, [("air", "air")] * 9 + [("air", "water")])
    assert found["summary"][0].startswith("9 of 10 passed, 90\u00a0%; 1 not passed yet")


def test_seats_without_answers_are_named(tmp_path):
    people = apprentices(2)
    codes = [person.code for person in people]
    forms = [form_of(label, [choice("cleaning/wash/a")]) for label in "AB"]
    with records_with(tmp_path, people) as connection:
        number = issue_of_forms(connection, forms, codes)
        keep(connection, number, forms[0], [("air",)], codes[:1])
        found = reported(connection, number)
    assert found["unanswered"] == "No answers yet: B (Apprentice 02)."
    assert found["facts"][0][1] == "toy_check, issue 1, 1 answered, 1 not"


def some_answers(item, right, asked):
    """Return papers of one question of an item, some of them right."""
    return [paper_of([answer(1, int(n < right), item=item)]) for n in range(asked)]


def test_objectives_are_ranked_by_the_lower_bound_and_few_answers_come_after():
    papers = [
        *some_answers("cleaning/wash/x", 28, 40),
        *some_answers("filler/mix/x", 8, 10),
        *some_answers("mixing/cup/x", 0, 9),
        *some_answers("filler/shape/x", 12, 12),
    ]
    found = objectives_to_reteach(papers, NAMES)
    assert [(o.name, o.answers, o.lost, o.is_ranked) for o in found] == [
        ("filler/mix", 10, 2, True),
        ("cleaning/wash", 40, 12, True),
        ("mixing/cup", 9, 9, False),
    ]
    bounds = [binomtest(some, of, alternative="greater") for some, of in ((8, 10), (28, 40))]
    assert [o.share.lower_bound for o in found[:2]] == pytest.approx(
        [bound.proportion_ci(0.95, "wilson").low for bound in bounds]
    )


def test_answers_that_wait_or_are_left_out_count_nowhere():
    papers = [
        paper_of(
            [
                answer(1, 0, item="cleaning/wash/x", status="illegible"),
                answer(2, 0, item="cleaning/wash/y", findings={"left_out": True}),
                answer(3, Fraction(1, 2), item="filler/mix/x"),
            ]
        )
    ]
    assert [(o.name, o.answers) for o in objectives_to_reteach(papers, NAMES)] == [
        ("filler/mix", 1)
    ]


def test_slips_are_counted_over_people_who_met_the_item():
    slip = took("B", "Water rusts it.")
    papers = [
        *(paper_of([answer(1, 0, findings=slip), answer(2, 0, findings=slip)]) for _ in range(3)),
        paper_of([answer(1, 1)]),
        paper_of([answer(1, 0, findings=took("C", "Sand scratches."))]),
        paper_of([answer(1, 1, item="filler/mix/other")]),
    ]
    (found,) = commonest_slips(papers)
    assert (found.made, found.asked, found.slip.text) == (3, 5, "Water rusts it.")


def test_the_same_wrong_sum_is_one_slip_whatever_number_it_led_to():
    says = {"went_wrong": [{"about": "slip", "place": "1", "text": "You halved it."}], "notes": []}
    question = {**choice("mixing/cup/x"), "kind": "numeric", "key": {}}
    papers = [
        paper_of([answer(1, 0, question=question, findings=says, response={"text": text})])
        for text in ("12", "13")
    ]
    assert [(slip.made, slip.slip.took) for slip in commonest_slips(papers)] == [(2, "")]


def test_gate_misses_count_must_pass_questions_by_objective():
    papers = [
        paper_of([answer(1, int(n > 1), must_pass=True, item=f"cleaning/wash/{n}")])
        for n in range(4)
    ]
    (miss,) = gate_misses(papers)
    assert (miss.objective, miss.missed, miss.asked) == ("cleaning/wash", 2, 4)


def test_gate_misses_go_by_hazard_where_the_question_names_one():
    mist = {"hazard": "mist", "title": "Isocyanate mist", "reason": "It hurts."}
    papers = [
        paper_of(
            [
                answer(
                    1,
                    int(n > 1),
                    must_pass=True,
                    question=choice(f"cleaning/wash_{n}/x") | {"critical": mist},
                )
            ]
        )
        for n in range(4)
    ]
    (miss,) = gate_misses(papers)
    assert (miss.hazard, miss.objective, miss.missed, miss.asked) == ("Isocyanate mist", "", 2, 4)


def test_few_answers_flag_no_question(tmp_path):
    few = class_of(tmp_path / "few", [("water", "air")] * 9)
    assert (few["looks"], few["looks_note"]) == ([], COUNTS_ONLY)
    more = class_of(tmp_path / "more", [("water", "air")] * 20 + [("air", "water")] * 9)
    assert more["looks_note"] == NO_FLAGS_YET
    assert [(row["item"], row["rest"]) for row in more["looks"]] == [
        ("cleaning/wash/a", ""),
        ("filler/mix/b", ""),
    ]


def test_a_key_that_strong_learners_deny_is_flagged_from_thirty_answers_on(tmp_path):
    questions = [choice(f"filler/mix/{n}") for n in range(5)]
    questions.append(choice("cleaning/wash/bad", right="sand"))
    form = form_of("A", questions)
    people = apprentices(36)
    rows = [("air",) * 5 + ("air",)] * 18 + [
        ("air", "water", "water", "water", "water", "sand")
    ] * 18
    with records_with(tmp_path, people) as connection:
        number = issue_of_forms(connection, [form])
        keep(connection, number, form, rows, [person.code for person in people])
        found = reported(connection, number)
    assert [row["item"] for row in found["looks"]] == ["cleaning/wash/bad"]
    assert found["looks"][0]["stem"]
    assert "the key may be wrong" in found["looks"][0]["look"]
    assert found["looks"][0]["people"] == "36"


def test_figures_pooled_over_issues_say_so(tmp_path):
    form = form_of("A", [choice("cleaning/wash/a")])
    other = {**form, "form_id": "0THER"}
    with records_with(tmp_path, ()) as connection:
        numbers = [issue_of_forms(connection, [f]) for f in (form, other)]
        for number, sat in zip(numbers, (form, other), strict=True):
            keep(connection, number, sat, [("air",)], [""])
        sats = [sat_issue(connection, number) for number in numbers]
        analysis = analyse_pool(pooled(connection, numbers))
        found = class_report(sats[0], NAMES, analysis)
    assert "Pooled over issues 1, 2, by the version" in found["looks_note"]
    assert items_to_look_at(analysis, {})[0] == []


def test_nobody_answered_is_said_and_does_not_fail(tmp_path):
    with records_with(tmp_path, ()) as connection:
        number = issue_of_forms(connection, [form_of("A", [choice("cleaning/wash/a")])])
        found = reported(connection, number)
    assert found["summary"] == ["Nobody has answered yet."]
    assert found["people"] == []


@pytest.mark.parametrize("count", [3, 12])
def test_a_real_class_adds_up(tmp_path, count):
    people = apprentices(count)
    codes = tuple(person.code for person in people)
    with records_with(tmp_path, people) as connection:
        forms = real_forms("new_hire_check", codes)
        number = issued(connection, forms, codes)
        for place, form in enumerate(forms):
            sit(connection, number, form, some_wrong(*range(1, place % 8)))
        sat = sat_issue(connection, number)
        found = reported(connection, number, course_names(real_bank()))
    verdicts = Counter(paper.verdict for paper in sat.papers)
    assert found["summary"][0].startswith(f"{verdicts['passed']} of {count} passed")
    lost = sum(answer.lost for paper in sat.papers for answer in paper.answers)
    objectives = objectives_to_reteach(sat.papers, course_names(real_bank()))
    assert sum(objective.lost for objective in objectives) == lost


def test_a_person_who_answers_again_stands_there_once(tmp_path):
    form = form_of("A", [choice("cleaning/wash/a")])
    people = apprentices(1)
    with records_with(tmp_path, people) as connection:
        number = issue_of_forms(connection, [form])
        for text in ("water", "air"):
            keep(connection, number, form, [(text,)], [people[0].code])
        found = reported(connection, number)
    assert [row["verdict"] for row in found["people"]] == ["passed"]
