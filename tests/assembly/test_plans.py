"""What a plan may ask for: levels, shares, a gate, fixed questions, enemies, new ones, limits."""

from collections import Counter
from fractions import Fraction

import pytest

from generator.assembly import (
    CannotAssemble,
    Facility,
    History,
    assemble,
    build_forms,
    form_as_plain,
    form_labels,
    shortages,
)
from generator.assembly.supply.strata import strands_of
from generator.bank import Bank
from generator.questions import askables
from tests.assembly.small_papers import EXAM_CHOICE, ITEMS, papers, plan
from tests.questions.small_bank import WASH_ORDER, items

CRITICAL = EXAM_CHOICE.replace(
    "use: exam", "use: exam\ncritical: {hazard: peroxide, reason: It blinds.}"
)
GATE = {
    "items/filler/shape.yml": items(
        **{f"choice_{n}": EXAM_CHOICE for n in range(8)},
        **{f"critical_{n}": CRITICAL for n in range(4)},
    )
}


def planned(folder, *cells, head="", more=None):
    text = plan(*cells).replace("cells:\n", f"{head}cells:\n")
    return papers(folder, text, more)


def names(form):
    return [entry.question.name for entry in form.questions]


def messages(drawn):
    bank, entry = drawn
    return [problem.message for problem in shortages(entry, bank)]


def test_shares_fill_the_paper_exactly(tmp_path):
    cells = ("{module: filler, share: 70}", "{module: film_build, share: 20}")
    cells += ("{module: cleaning, share: 10}",)
    drawn = planned(tmp_path, *cells, head="questions: 9\n")
    for form in build_forms(*drawn, "spring", form_labels(4)):
        modules = Counter(entry.question.objective.split("/")[0] for entry in form.questions)
        assert modules == {"filler": 6, "film_build": 2, "cleaning": 1}


def test_a_cell_of_a_level_takes_that_level_only(tmp_path):
    drawn = planned(tmp_path, "{module: filler, levels: [recall], count: 4}")
    for form in build_forms(*drawn, "spring", form_labels(4)):
        assert {entry.question.level for entry in form.questions} == {"recall"}
    short = planned(tmp_path / "more", "{module: film_build, levels: [recall], count: 1}")
    assert messages(short) == ["this cell asks for 1 and the bank has 0: 1 short"]


def test_the_gate_is_of_critical_questions_and_said_in_the_plain_form(tmp_path):
    cells = ("{objective: filler/shape, kinds: [choice], count: 4}",)
    cells += ("{objective: filler/shape, critical: peroxide, count: 2}",)
    drawn = planned(tmp_path, *cells, more=GATE)
    for form in build_forms(*drawn, "spring", form_labels(8)):
        assert len(form.gate) == 2
        by_number = {entry.number: entry.question for entry in form.questions}
        assert {by_number[number].critical.hazard for number in form.gate} == {"peroxide"}
        plain = form_as_plain(form)
        assert plain["gate"] == list(form.gate)
        must = [entry["number"] for entry in plain["questions"] if entry["must_pass"]]
        assert must == plain["gate"]


def test_nothing_else_is_must_pass_and_safety_alone_is_not(tmp_path):
    safe = EXAM_CHOICE.replace("use: exam", "use: exam\nsafety: true\ncaution: Gloves on.")
    more = {"items/filler/shape.yml": items(**{f"safe_{n}": safe for n in range(8)})}
    drawn = planned(tmp_path, "{objective: filler/shape, kinds: [choice], count: 6}", more=more)
    assert [form.gate for form in build_forms(*drawn, "spring", form_labels(3))] == [()] * 3


def test_a_gate_without_enough_critical_questions_is_named(tmp_path):
    few = {
        "items/filler/shape.yml": items(
            **{f"choice_{n}": EXAM_CHOICE for n in range(8)}, critical=CRITICAL
        ),
    }
    cells = ("{module: filler, count: 2}", "{critical: peroxide, count: 3}")
    drawn = planned(tmp_path, *cells, more=few)
    (problem,) = shortages(drawn[1], drawn[0])
    assert problem.message == "this cell asks for 3 and the bank has 1: 2 short"
    assert problem.rule == "blueprint-cannot-be-filled"


def test_another_places_rule_is_asked_where_the_plan_says_so_and_nowhere_else(tmp_path):
    theirs = EXAM_CHOICE.replace("use: exam", "use: exam\nplace: maine")
    more = {
        "items/filler/shape.yml": items(
            **{f"ours_{n}": EXAM_CHOICE for n in range(4)},
            **{f"theirs_{n}": theirs for n in range(4)},
        ),
    }
    cell = "{objective: filler/shape, kinds: [choice], count: 6}"

    def asked(folder, head):
        drawn = planned(tmp_path / folder, cell, head=head, more=more)
        forms = build_forms(*drawn, "spring", form_labels(6))
        return {n.rpartition("_")[0] for form in forms for n in names(form) if "shape" in n}

    assert asked("here", "") == {"filler/shape/ours"}
    assert asked("there", "places: [maine]\n") == {"filler/shape/ours", "filler/shape/theirs"}


def test_what_must_be_included_stands_on_every_form(tmp_path):
    wanted = "filler/mix/choice_3"
    drawn = planned(tmp_path, "{module: filler, count: 4}", head=f"must_include: [{wanted}]\n")
    for form in build_forms(*drawn, "spring", form_labels(5)):
        assert wanted in names(form)


def test_a_question_that_fits_no_cell_cannot_be_included(tmp_path):
    head = "must_include: [filler/mix/choice_3]\n"
    drawn = planned(tmp_path, "{module: film_build, count: 1}", head=head)
    assert messages(drawn) == ["no cell has a seat for 'filler/mix/choice_3': 1 short"]


def test_sets_kept_apart_by_the_plan_never_meet(tmp_path):
    pair = {"filler/shape/choice_0", "filler/shape/choice_1"}
    head = f"not_together: [[{', '.join(sorted(pair))}]]\n"
    cell = "{objective: filler/shape, kinds: [choice], count: 4}"
    seen = Counter()
    for form in build_forms(*planned(tmp_path, cell, head=head), "spring", form_labels(12)):
        both = pair & set(names(form))
        assert len(both) <= 1
        seen.update(both)
    assert set(seen) == pair


def test_an_item_keeps_itself_apart_from_others(tmp_path):
    twin = EXAM_CHOICE.replace("use: exam", "use: exam\nnot_with: [filler/mix/choice_0]")
    more = {"items/film_build/films.yml": items(twin=twin)}
    cells = ("{objective: filler/mix, kinds: [choice], count: 1}", "{module: film_build, count: 1}")
    for form in build_forms(*planned(tmp_path, *cells, more=more), "spring", form_labels(6)):
        assert "film_build/films/twin" in names(form)
        assert "filler/mix/choice_0" not in names(form)


def test_a_cell_that_enemies_leave_too_small_is_named(tmp_path):
    trio = ", ".join(f"filler/shape/only_{n}" for n in range(3))
    more = {
        "items/filler/shape.yml": items(**{f"only_{n}": EXAM_CHOICE for n in range(4)}),
        "items/filler/mix.yml": "",
    }
    more["items/filler/mix.yml"] = ITEMS["items/filler/mix.yml"]
    cell = "{objective: filler/shape, kinds: [choice], levels: [recall], count: 4}"
    drawn = planned(tmp_path, cell, head=f"not_together: [[{trio}]]\n", more=more)
    alone = [m for m in messages(drawn) if "share a paper" in m]
    records = {
        a.record for a in askables(drawn[0])
        if a.objective == "filler/shape" and a.kind == "choice" and a.level == "recall"
        and a.use != "study"
    }  # fmt: skip
    assert len(records) >= 4
    if len(records) == 4:
        expected = (
            "this cell asks for 4 and of its questions no more can share a paper than 2: 2 short"
        )
        assert alone == [expected]


def test_time_that_not_even_the_quickest_questions_keep_is_named(tmp_path):
    text = plan("{module: film_build, kinds: [numeric], count: 2}").replace(
        "minutes: 20", "minutes: 4"
    )
    assert messages(papers(tmp_path, text)) == [
        "even the quickest questions take 5 minutes: 1 short"
    ]


def test_a_reading_load_that_cannot_be_kept_names_form_and_excess(tmp_path):
    drawn = planned(tmp_path, "{module: filler, count: 4}", head="max_words: 20\n")
    with pytest.raises(
        CannotAssemble, match=r"form A stays \d+ words over the plan's reading load"
    ):
        build_forms(*drawn, "spring", ("A",))


def test_a_share_of_new_questions_is_kept_on_every_form(tmp_path):
    cell = "{objective: filler/mix, kinds: [choice], count: 3}"
    drawn = planned(tmp_path, cell, head="new_percent: 50\n")
    worn = {a.name: 3 for a in askables(drawn[0]) if a.name != "filler/mix/choice_5"}
    with pytest.raises(CannotAssemble, match="form A stays 1 new questions short"):
        assemble(*drawn, "spring", ("A",), past=History(exposure=worn))
    fresh = {name: count for name, count in worn.items() if not name.endswith(("_3", "_4"))}
    for form in assemble(*drawn, "spring", ("A", "B", "C"), past=History(exposure=fresh)).forms:
        assert sum(name not in fresh for name in names(form)) >= 2


def test_forms_have_the_same_mix_of_kinds(tmp_path):
    drawn = planned(tmp_path, "{module: filler, count: 7}")
    kinds = {
        tuple(sorted(Counter(_group(q.question.kind) for q in form.questions).items()))
        for form in build_forms(*drawn, "spring", form_labels(6))
    }
    assert len(kinds) == 1


def _group(kind):
    return kind if kind in ("choice", "numeric") else "other"


def test_strands_add_up_to_their_cell_and_take_only_its_kinds(tmp_path):
    bank, entry = planned(tmp_path, "{module: filler, count: 7}", "{module: cleaning, count: 2}")
    strands = strands_of(entry.record, askables(bank))
    counts = Counter()
    for strand in strands:
        counts[strand.cell] += strand.count
    assert counts == {0: 7, 1: 2}


def test_facilities_from_answers_change_what_a_form_is_expected_to_bring(tmp_path):
    cell = "{objective: filler/shape, kinds: [choice], levels: [recall], count: 3}"
    drawn = planned(tmp_path, cell)
    easy = {a.name: Facility(Fraction(1), 990) for a in askables(drawn[0])}
    known = assemble(*drawn, "spring", ("A",), past=History(facilities=easy)).balance
    prior = assemble(*drawn, "spring", ("A",)).balance
    assert known.expected[0] > Fraction(98, 100) > prior.expected[1]


def test_a_form_says_what_luck_and_mastery_are(tmp_path):
    drawn = planned(tmp_path, "{objective: filler/shape, kinds: [choice], count: 4}")
    plain = form_as_plain(build_forms(*drawn, "spring", ("A",))[0])
    # four options each, all four needed at 80 percent
    assert plain["guesser_passes"] == pytest.approx(0.25**4)
    assert plain["mastery_marks"] is None
    assert isinstance(drawn[0], Bank)


def test_a_cell_is_not_parted_by_kind_where_what_is_kept_apart_leaves_too_few_of_one(tmp_path):
    # the order is kept apart from every choice, so a form with an order can have no choice
    apart = "\nnot_with: [" + ", ".join(f"film_build/films/choice_{n}" for n in range(4)) + "]"
    more = {
        "items/film_build/films.yml": items(
            order=WASH_ORDER.replace("use: exam", "use: exam" + apart),
            **{f"choice_{n}": EXAM_CHOICE for n in range(4)},
        ),
    }
    cell = "{objective: film_build/films, kinds: [choice, order], count: 3}"
    drawn = planned(tmp_path, cell, more=more)
    assert shortages(drawn[1], drawn[0]) == ()
    for form in build_forms(*drawn, "spring", form_labels(4)):
        assert {question.question.kind for question in form.questions} == {"choice"}
