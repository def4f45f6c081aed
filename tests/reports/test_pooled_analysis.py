"""Analysis of what was issued: the figures of a response table, pooled by item version."""

import gc
from fractions import Fraction

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from generator.marking import Ordered, analyse, analysis_as_plain, right_or_wrong_scores
from generator.marking.answers.corrected_key import accept_option, leave_out
from generator.records import RecordsRefused
from generator.records.sittings.appeals import correct_and_mark_again
from generator.records.sittings.corrected_forms import corrected_forms
from generator.records.sittings.corrections import Correction
from generator.records.sittings.sittings import keep_sittings
from generator.reports import analyse_pool, pooled, pooled_as_plain
from generator.reports.combined.analysis import FORMS_DIFFER
from tests.marking.published_data import lsat6
from tests.reports.sat import apprentices, records_with
from tests.reports.toy_forms import (
    AT,
    choice,
    form_of,
    issue_of_forms,
    keep,
    new_sitting,
    text_chosen,
)

ITEMS = [f"filler/mix/item_{n}" for n in range(1, 6)]


def analysed(connection, *numbers, cut=None):
    """Pool issues and analyse them."""
    return analyse_pool(pooled(connection, numbers), cut)


def codes(connection_people):
    """Return the codes of people."""
    return [person.code for person in connection_people]


def in_texts(row):
    """Return a row of right and wrong as chosen texts."""
    return ["air" if right else "water" for right in row]


def test_the_law_school_test_issued_here_gives_its_published_figures(tmp_path):
    # Bock and Lieberman 1970, Psychometrika 35: alpha 0.2949972, item-rest r 0.112833 to 0.172779
    rows = [[int(score) for score in row] for row in lsat6().scores]
    people = apprentices(len(rows))
    form = form_of("A", [choice(item) for item in ITEMS])
    with records_with(tmp_path, people) as connection:
        number = issue_of_forms(connection, [form])
        keep(connection, number, form, [in_texts(row) for row in rows], codes(people))
        found = analysed(connection, number, cut=4)
    assert found.one_form and found.whole.people == 1000
    assert found.whole.alpha.value == pytest.approx(0.2949972, abs=5e-8)
    assert found.whole.decision.agreement.value == pytest.approx(0.583198, abs=5e-7)
    assert [round(item.analysis.item_rest.value, 6) for item in found.items] == [
        0.112833, 0.153178, 0.172779, 0.144428, 0.121596
    ]  # fmt: skip
    assert [item.analysis.facility.value for item in found.items] == [
        0.924, 0.709, 0.553, 0.763, 0.87
    ]  # fmt: skip
    assert [item.people for item in found.items] == [1000] * 5


TABLES = st.integers(2, 5).flatmap(
    lambda items: st.lists(
        st.lists(st.sampled_from(["air", "water", "sand"]), min_size=items, max_size=items),
        min_size=1,
        max_size=12,
    )
)


@given(rows=TABLES)
@settings(
    max_examples=25,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture],
)
def test_one_common_form_is_analysed_as_its_table_of_responses(tmp_path_factory, rows):
    people = apprentices(len(rows))
    names = ITEMS[: len(rows[0])]
    form = form_of("A", [choice(item, "BCA") for item in names])
    with records_with(tmp_path_factory.mktemp("pool"), people) as connection:
        number = issue_of_forms(connection, [form])
        keep(connection, number, form, rows, codes(people))
        found = pooled_as_plain(analysed(connection, number, cut=1))
    letters = {"air": "B", "water": "C", "sand": "A"}
    chosen = {name: [letters[row[n]] for row in rows] for n, name in enumerate(names)}
    table = right_or_wrong_scores(names, [[text == "air" for text in row] for row in rows])
    wanted = analysis_as_plain(analyse(table, chosen, dict.fromkeys(names, "B"), 1))
    assert {name: found[name] for name in wanted if name != "items"} == {
        name: wanted[name] for name in wanted if name != "items"
    }
    assert [{name: item[name] for name in wanted["items"][0]} for item in found["items"]] == (
        wanted["items"]
    )


def two_forms(connection, people, rows):
    """Sit forms of items 1 to 4 and 2 to 5, in turn; give the issue and who met what."""
    forms = [
        form_of("A", [choice(item) for item in ITEMS[:4]]),
        form_of("B", [choice(item, "CAB") for item in reversed(ITEMS[1:])]),
    ]
    number = issue_of_forms(connection, forms)
    met = []
    for place, (person, row) in enumerate(zip(people, rows, strict=True)):
        scores = dict(zip(ITEMS, row, strict=True))
        form = forms[place % 2]
        asked = [entry["question"]["id"] for entry in form["questions"]]
        keep(connection, number, form, [in_texts(scores[i] for i in asked)], [person.code])
        met.append({item: scores[item] for item in asked})
    return number, met


def varied(people):
    """Return rows of five answers that vary, the same every time."""
    return [[int((n * 7 + k * k * 5 + n // 3) % 4 > 0) for k in range(5)] for n in range(people)]


def test_forms_that_differ_are_pooled_item_by_item_against_the_rest_of_the_own_form(tmp_path):
    people = apprentices(60)
    with records_with(tmp_path, people) as connection:
        number, met = two_forms(connection, people, varied(60))
        found = analysed(connection, number)
    assert not found.one_form
    by_name = {item.analysis.name: item for item in found.items}
    assert list(by_name) == ITEMS
    assert [by_name[item].people for item in ITEMS] == [30, 60, 60, 60, 30]
    for item in ITEMS:
        whose = [row for row in met if item in row]
        own = [row[item] for row in whose]
        rest = [(sum(row.values()) - row[item]) / (len(row) - 1) for row in whose]
        analysis = by_name[item].analysis
        assert analysis.facility.value == pytest.approx(np.mean(own))
        assert analysis.item_rest.value == pytest.approx(np.corrcoef(own, rest)[0, 1], abs=1e-12)
        whole = [sum(row.values()) / len(row) for row in whose]
        assert analysis.item_total.value == pytest.approx(np.corrcoef(own, whole)[0, 1], abs=1e-12)
        assert analysis.alpha_if_dropped == FORMS_DIFFER


def test_alpha_of_forms_that_differ_stands_on_the_items_that_everybody_met(tmp_path):
    people = apprentices(60)
    with records_with(tmp_path, people) as connection:
        number, met = two_forms(connection, people, varied(60))
        found = analysed(connection, number)
    assert list(found.common) == ITEMS[1:4]
    table = np.array([[row[item] for item in ITEMS[1:4]] for row in met])
    spread = table.var(axis=0).sum() / table.sum(axis=1).var()
    assert found.whole.alpha.value == pytest.approx(3 / 2 * (1 - spread), abs=1e-12)
    assert found.whole.decision is None


def test_forms_with_nothing_in_common_have_no_alpha_and_say_why(tmp_path):
    forms = [form_of("A", [choice(ITEMS[0])]), form_of("B", [choice(ITEMS[1])])]
    with records_with(tmp_path, ()) as connection:
        number = issue_of_forms(connection, forms)
        for form in forms:
            keep(connection, number, form, [("air",)], [""])
        found = analysed(connection, number)
    plain = pooled_as_plain(found)
    assert plain["alpha"] is None
    assert plain["reasons"]["alpha"] == "forms differ: no question stands on every form"
    assert plain["common"] == []


def test_options_of_forms_that_letter_them_otherwise_are_named_by_their_text(tmp_path):
    forms = [form_of("A", [choice(ITEMS[0])]), form_of("B", [choice(ITEMS[0], "CAB")])]
    with records_with(tmp_path, ()) as connection:
        number = issue_of_forms(connection, forms)
        for form, text in zip(forms, ("air", "water"), strict=True):
            keep(connection, number, form, [(text,)], [""])
        (item,) = analysed(connection, number).items
    assert [(use.option, use.is_key, use.people) for use in item.analysis.options] == [
        ("air", True, 1),
        ("water", False, 1),
    ]


def test_other_versions_of_an_item_are_never_pooled(tmp_path):
    form = form_of("A", [choice(ITEMS[0]), choice(ITEMS[1])])
    later = {**form, "form_id": "LATER"}
    with records_with(tmp_path, ()) as connection:
        first = issue_of_forms(connection, [form], versions={ITEMS[0]: "v1", ITEMS[1]: "v1"})
        second = issue_of_forms(connection, [later], versions={ITEMS[0]: "v2", ITEMS[1]: "v1"})
        for number, sat in ((first, form), (second, later)):
            keep(connection, number, sat, [("air", "water")], [""])
        found = analysed(connection, first, second)
    assert [(item.analysis.name, item.version, item.people) for item in found.items] == [
        (ITEMS[0], "v1", 1),
        (ITEMS[1], "v1", 2),
        (ITEMS[0], "v2", 1),
    ]
    assert found.issues == (first, second)


def test_the_same_items_in_another_order_are_one_form(tmp_path):
    forms = [
        form_of("A", [choice(item) for item in ITEMS]),
        form_of("B", [choice(item, "CAB") for item in reversed(ITEMS)]),
    ]
    rows = varied(40)
    people = apprentices(40)
    with records_with(tmp_path, people) as connection:
        number = issue_of_forms(connection, forms)
        for place, (person, row) in enumerate(zip(people, rows, strict=True)):
            there = row if place % 2 == 0 else row[::-1]
            keep(connection, number, forms[place % 2], [in_texts(there)], [person.code])
        found = analysed(connection, number)
    assert found.one_form
    wanted = analyse(right_or_wrong_scores(ITEMS, [map(bool, row) for row in rows]))
    assert found.whole.alpha == wanted.alpha
    assert [i.analysis.item_rest for i in found.items] == [i.item_rest for i in wanted.items]


def test_papers_that_wait_for_a_person_are_counted_and_not_analysed(tmp_path):
    form = form_of("A", [choice(item) for item in ITEMS[:2]])
    people = apprentices(2)
    with records_with(tmp_path, people) as connection:
        number = issue_of_forms(connection, [form])
        keep(connection, number, form, [("air", "?"), ("air", "air")], codes(people))
        found = analysed(connection, number)
    assert (found.waiting, found.whole.people) == (1, 1)


def test_questions_worth_more_than_a_mark_give_shares(tmp_path):
    order = {
        **choice("mixing/cup/steps"),
        "kind": "order",
        "key": {
            "steps": [{"letter": letter, "text": letter} for letter in "ABC"],
            "pairs": [
                {"first": "A", "then": "B", "class": "ruins", "reason": "A first."},
                {"first": "B", "then": "C", "class": "ruins", "reason": "B first."},
            ],
            "orders": 1,
            "one_order": list("ABC"),
        },
    }
    form = form_of("A", [choice(ITEMS[0]), order], marks=2)
    people = apprentices(3)
    with records_with(tmp_path, people) as connection:
        number = issue_of_forms(connection, [form])
        answers = [("air", "ABC"), ("air", "ACB"), ("water", "CBA")]
        sittings = [
            new_sitting(
                form,
                {1: text_chosen(form["questions"][0]["question"], text), 2: Ordered(tuple(steps))},
                person.code,
            )
            for (text, steps), person in zip(answers, people, strict=True)
        ]
        keep_sittings(connection, number, sittings, AT)
        found = analysed(connection, number)
    steps = found.items[1].analysis
    # 3, 2 and 0 of the 3 precedences are kept; totals are 4, 10/3 and 0 marks
    assert steps.facility.value == pytest.approx(float(Fraction(5, 9)))
    assert steps.right == 1 and steps.facility_interval is None and steps.options == ()
    assert found.whole.mean.value == pytest.approx(22 / 9)
    assert found.whole.kr20.value is None
    assert found.whole.alpha.value is not None


@pytest.mark.parametrize(("change", "items"), [("leave_out", 1), ("accept", 2)])
def test_corrections_reach_the_analysis(tmp_path, change, items):
    form = form_of("A", [choice(item) for item in ITEMS[:2]])
    people = apprentices(2)
    with records_with(tmp_path, people) as connection:
        number = issue_of_forms(connection, [form])
        keep(connection, number, form, [("water", "air"), ("air", "air")], codes(people))
        question = corrected_forms(connection, number)["A"]["questions"][0]["question"]
        plain = leave_out() if change == "leave_out" else accept_option(question, "B")
        correct_and_mark_again(
            connection, number, Correction(ITEMS[0], dict(plain), "an appeal"), AT
        )
        found = analysed(connection, number)
    assert len(found.items) == items
    if change == "accept":
        # two options are right now, so no single key is left to compare with
        assert found.items[0].analysis.right == 2
        assert found.items[0].analysis.options == ()


@pytest.mark.parametrize("running", [True, False])
def test_pooling_leaves_the_collector_of_memory_as_it_was_also_when_it_refuses(tmp_path, running):
    before = gc.isenabled()
    (gc.enable if running else gc.disable)()
    try:
        with records_with(tmp_path, ()) as connection:
            with pytest.raises(RecordsRefused, match="no issue 7"):
                pooled(connection, [7])
            assert gc.isenabled() == running
            analyse_pool(pooled(connection, []))
        assert gc.isenabled() == running
    finally:
        (gc.enable if before else gc.disable)()
