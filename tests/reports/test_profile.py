"""A new hire's profile: tasks, missing papers, where to begin, and never a judgement of the person.

The words that judge a person stand in the fixed sentences only, which say what is not said.
"""

import json
import re
from datetime import date
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.records.practice.dated_facts import DatedFact, add_fact
from generator.records.practice.observations import Observation, ObservedStep, observe
from generator.reports import (
    answered_issue,
    class_report,
    course_names,
    paperwork_of,
    person_report,
    procedure_names,
    profile,
)
from generator.reports.combined.analysis import analyse_pool
from generator.reports.combined.answers import pooled
from generator.reports.fixed_words import NOT_SAID_CLASS, NOT_SAID_PERSON, NOT_SAID_PROFILE
from generator.reports.guessing_odds import chance_all_right
from generator.reports.person.paperwork import NOBODY, Paperwork, ProcedureName
from generator.reports.person.placement import GATE, NOT_ASKED, SHOWN, WATCH, Step, placement
from generator.reports.person.tasks import THRESHOLD, tasks_of
from tests.marking import issued as hand_written
from tests.real import real_bank
from tests.reports.sat import (
    AT,
    BLANK,
    ILLEGIBLE,
    TRAINER,
    apprentices,
    issued,
    real_forms,
    records_with,
    right,
    sit,
    some_wrong,
    wrong,
)
from tests.reports.toy_forms import NAMES, answer, paper_of

TODAY = date(2026, 11, 25)
DISCLAIMERS = (NOT_SAID_PERSON, NOT_SAID_CLASS, *NOT_SAID_PROFILE)
CUP = ProcedureName("time_cup", "Time a cup", "mixing")
JUDGING = re.compile(r"\b(qualif\w*|competen\w*|certif\w*|fit|unfit|fitness)\b(?! test)", re.I)


def profiled(answers, paperwork=None, **more):
    """Return the profile of a paper in the small outline."""
    return profile(paper_of(answers, **more), NAMES, paperwork or Paperwork(), (CUP,), TODAY)


def judging_words(*documents):
    """Return the words that judge a person, outside the fixed sentences."""
    text = json.dumps(documents, ensure_ascii=False)
    for sentence in DISCLAIMERS:
        text = text.replace(sentence, "")
    return [found[0] for found in JUDGING.finditer(text)]


def test_a_task_is_shown_only_by_two_right_answers_and_none_wrong():
    tasks = tasks_of(
        paper_of(
            [
                answer(1, item="cleaning/wash/a"),
                answer(2, item="cleaning/wash/b"),
                answer(3, item="filler/mix/a"),
                answer(4, item="mixing/cup/a"),
                answer(5, Fraction(1, 2), item="mixing/cup/b"),
            ]
        ),
        NAMES,
    )
    assert [(task.module, task.showing) for task in tasks] == [
        ("cleaning", "all right"),
        ("filler", "too few questions to say"),
        ("mixing", "needs watching"),
    ]


@pytest.mark.parametrize("status", ["blank", "illegible", "wrong"])
def test_whatever_is_not_right_needs_watching(status):
    answers = [answer(n, item="filler/mix/a") for n in range(1, 30)]
    last = answer(30, 0, item="filler/mix/b", status=status)
    (task,) = tasks_of(paper_of([*answers, last]), NAMES)
    assert task.showing == "needs watching"


def test_what_a_task_rests_on_is_told_with_the_luck_of_a_guesser():
    answers = [answer(1, item="cleaning/wash/a"), answer(2, item="cleaning/wash/b")]
    # two choices of three options: 1/3 times 1/3
    assert tasks_of(paper_of(answers), NAMES)[0].rests_on == (
        "2 questions; a guesser gets all right 1 time in 9"
    )


def test_the_stated_odds_of_somebody_who_knows_seven_in_ten_are_those_of_the_binomial():
    assert f"{round(0.7**2 * 100)} %" in THRESHOLD and "2 of 2" in THRESHOLD
    assert f"{round(0.7**5 * 100)} %" in THRESHOLD and "5 of 5" in THRESHOLD


@pytest.mark.parametrize(
    ("question", "chance"),
    [
        (hand_written.options("choice", "A", "ABCD"), Fraction(1, 4)),
        # one of 2^5 - 1 sets of ticks
        (hand_written.options("multiple_response", "AC", "ABCDE"), Fraction(1, 31)),
        # two of 120 orders keep the pairs
        (hand_written.order("PQRST", ["PQ", "PR", "QS", "RS", "ST"]), Fraction(1, 60)),
        (hand_written.match({"1": "A", "2": "B", "3": "C"}, "ABC"), Fraction(1, 6)),
        (hand_written.numeric("60", "59", "61"), Fraction(0)),
        (hand_written.written(2), Fraction(0)),
    ],
)
def test_the_luck_of_a_guesser_is_exact_for_each_kind(question, chance):
    assert chance_all_right([question]) == chance
    assert chance_all_right([question, hand_written.options("choice", "A", "AB")]) == chance / 2


def test_a_task_with_a_number_to_type_cannot_be_guessed():
    sum_to_work = hand_written.numeric("60", "59", "61") | {"objective": "mixing/cup"}
    number = answer(1, question=sum_to_work)
    (task,) = tasks_of(paper_of([number]), NAMES)
    assert task.rests_on == "1 question; cannot be guessed"


def test_the_placement_begins_where_a_must_pass_question_was_missed():
    tasks = tasks_of(
        paper_of(
            [
                answer(1, item="cleaning/wash/a"),
                answer(2, item="cleaning/wash/b"),
                answer(3, 0, item="mixing/cup/a", must_pass=True),
            ]
        ),
        NAMES,
    )
    assert [(step.module, step.why) for step in placement(tasks, NAMES)] == [
        ("mixing", GATE),
        ("filler", NOT_ASKED),
        ("cleaning", SHOWN),
    ]
    watched = tasks_of(paper_of([answer(1, 0, item="filler/mix/a")]), NAMES)
    assert placement(watched, NAMES)[0] == Step("filler", WATCH)


def test_without_sheets_and_dates_everything_is_missing():
    found = profiled([answer(1, item="mixing/cup/a")])
    assert found["tasks"][0]["sheets"] == "Time a cup"
    assert found["dates_missing"] == [
        "No date of a fit test of the respirator is in the records.",
        "No date of a medical clearance for the respirator is in the records.",
    ]
    assert found["dates_there"] == []


def test_a_paper_without_a_person_says_that_the_records_cannot_be_searched():
    found = profiled([answer(1, item="mixing/cup/a")], person="")
    assert found["dates_missing"] == [NOBODY]
    assert found["tasks"][0]["sheets"] == ""


def steps(*seen):
    """Return starred steps that were seen so."""
    return tuple(ObservedStep(f"s{n}", "Do it", True, word) for n, word in enumerate(seen))


def test_papers_that_are_there_are_not_missing(tmp_path):
    people = apprentices(1)
    code = people[0].code
    with records_with(tmp_path, people) as connection:
        look = Observation(
            code, CUP.name, CUP.title, steps("yes", "not_seen"), TRAINER.code, "2026-03-01"
        )
        observe(connection, look, AT)
        for kind, done in (("fit_test", "2025-06-01"), ("medical", "2026-06-01")):
            add_fact(connection, DatedFact(code, kind, done), AT, TODAY)
        first = paperwork_of(connection, code)
        whole = Observation(code, CUP.name, CUP.title, steps("yes"), TRAINER.code, "2026-03-05")
        observe(connection, whole, AT)
        add_fact(connection, DatedFact(code, "fit_test", "2026-06-02"), AT, TODAY)
        then = paperwork_of(connection, code)
    found = profiled([answer(1, item="mixing/cup/a")], first)
    assert found["tasks"][0]["sheets"] == "Time a cup (again: a starred step was not seen done)"
    assert found["dates_missing"] == [
        "The date of a fit test of the respirator is 2025-06-01; it was due again by 2026-06-01."
    ]
    found = profiled([answer(1, item="mixing/cup/a")], then)
    assert found["tasks"][0]["sheets"] == ""
    assert found["dates_missing"] == []
    assert found["dates_there"] == [
        "In the records: a fit test of the respirator, 2026-06-02, due again by 2027-06-02.",
        "In the records: a medical clearance for the respirator, 2026-06-01.",
    ]


SHARES = st.sampled_from([Fraction(0), Fraction(1, 2), Fraction(1)])
STATUSES = st.sampled_from(["", "", "blank", "illegible"])
ITEMS = st.sampled_from(["cleaning/wash/a", "filler/mix/a", "mixing/cup/a", "curing/bake/a"])


@given(
    st.lists(st.tuples(SHARES, STATUSES, ITEMS, st.booleans(), st.booleans()), max_size=30),
    st.sampled_from(["passed", "must_pass_missed", "not_passed", "unfinished"]),
    st.sampled_from(["Apprentice 01", ""]),
)
def test_no_outcome_of_a_paper_ever_judges_the_person(rows, verdict, person):
    answers = [
        answer(
            number,
            0 if status else share,
            status=status,
            item=item,
            must_pass=must,
            findings={"left_out": True} if left_out else {},
        )
        for number, (share, status, item, must, left_out) in enumerate(rows, start=1)
    ]
    made = profiled(answers, verdict=verdict, person=person)
    report = person_report(paper_of(answers, verdict, person=person), NAMES)
    assert judging_words(made, report) == []
    assert list(made["notes"]) and all(note in DISCLAIMERS for note in made["notes"])


def test_the_fixed_sentences_are_noticed_where_they_are_not_left_out():
    assert [word.lower() for word in JUDGING.findall(" ".join(DISCLAIMERS))].count("fit") >= 2


WAYS = {
    "all right": lambda question, number: right(question),
    "all wrong": lambda question, number: wrong(question, number),
    "other slips": lambda question, number: wrong(question, number + 1),
    "blank": lambda question, number: BLANK,
    "illegible": lambda question, number: ILLEGIBLE,
    "nothing entered": lambda question, number: None,
    "half": some_wrong(*range(1, 40, 2)),
}


@pytest.mark.parametrize("seed", ["spring", "autumn"])
@pytest.mark.parametrize("way", WAYS)
def test_no_real_new_hire_is_ever_judged(tmp_path, way, seed):
    people = apprentices(1)
    codes = (people[0].code,)
    names = course_names(real_bank())
    with records_with(tmp_path, people) as connection:
        (form,) = real_forms("new_hire_check", codes, seed)
        number = issued(connection, [form], codes)
        sit(connection, number, form, WAYS[way])
        sat = answered_issue(connection, number)
        (paper,) = sat.papers
        known = paperwork_of(connection, paper.person)
        made = profile(paper, names, known, procedure_names(real_bank()), TODAY)
        of_class = class_report(sat, names, analyse_pool(pooled(connection, [sat.issue.number])))
    # reasons of slips are the bank's own words about the trade, such as what a mask must do
    report = {name: v for name, v in person_report(paper, names).items() if name != "slips"}
    of_class = {name: v for name, v in of_class.items() if name != "slips"}
    assert judging_words(made, report, of_class) == []
    assert len(made["tasks"]) == 8
    showing = {task["showing"] for task in made["tasks"]}
    assert showing <= {"all right", "needs watching"}
    assert ("all right" in showing) == (way == "all right")
