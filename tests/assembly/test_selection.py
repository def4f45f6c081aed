"""Choosing questions: exact cells, no record twice, study items never, shortages named.

Everything is asked of whole forms, so that the claims hold however the choosing is done.
"""

from collections import Counter

import pytest

from generator.assembly import build_forms, form_labels, shortages
from generator.bank import module_of
from generator.questions import askables
from tests.assembly.small_papers import EXAM_CHOICE, papers, plan
from tests.questions.small_bank import FIRST_JOB, WASH_ORDER, WET_FILM, items


@pytest.fixture(scope="module")
def mixed(tmp_path_factory):
    cells = (
        "{module: filler, count: 6}",
        "{module: film_build, kinds: [numeric], count: 1}",
        "{objective: cleaning/wash, count: 2}",
    )
    return papers(tmp_path_factory.mktemp("mixed"), plan(*cells))


def chosen(drawn, seed, forms=1):
    """Return the questions of each form of one run."""
    return [
        [entry.question for entry in form.questions]
        for form in build_forms(*drawn, seed, form_labels(forms))
    ]


def many(drawn, count=20):
    """Return the questions of one form for each of many seeds."""
    return [chosen(drawn, f"seed {number}")[0] for number in range(count)]


def record_of(bank, question):
    return question.name if question.name in bank.items else question.name.rsplit("/", 1)[0]


def test_every_cell_gets_its_exact_count(mixed):
    for questions in many(mixed):
        modules = Counter(module_of(question.objective) for question in questions)
        assert modules == {"filler": 6, "film_build": 1, "cleaning": 2}
        assert {q.kind for q in questions if q.objective == "film_build/films"} == {"numeric"}


def test_no_two_questions_of_one_record_share_a_paper(mixed):
    for questions in many(mixed):
        records = {record_of(mixed[0], question) for question in questions}
        assert len(records) == len(questions)


def test_study_items_are_never_chosen(mixed):
    kept = {a.name for a in askables(mixed[0]) if a.use == "study"}
    assert {"filler/mix/kept", "cleaning/wash/first"} <= kept
    for questions in many(mixed):
        assert all(question.use != "study" for question in questions)
        assert not kept & {question.name for question in questions}


def test_the_paper_follows_the_order_of_the_modules(mixed):
    for questions in many(mixed, 5):
        modules = [module_of(question.objective) for question in questions]
        assert modules == sorted(modules, key=["cleaning", "filler", "film_build"].index)


def test_what_was_used_least_comes_first(tmp_path):
    drawn = papers(tmp_path, plan("{objective: filler/mix, kinds: [choice], count: 2}"))
    uses = Counter(q.name for questions in chosen(drawn, "even", forms=12) for q in questions)
    times = [uses[f"filler/mix/choice_{number}"] for number in range(6)]
    assert min(times) > 0
    assert max(times) - min(times) <= 1


def test_no_question_comes_again_while_another_is_unused(tmp_path):
    drawn = papers(tmp_path, plan("{module: film_build, count: 1}"))
    for seed in range(10):
        (first,), (second,) = chosen(drawn, str(seed), forms=2)
        assert {first.name, second.name} == {"film_build/films/wet", "film_build/films/wet_again"}


def test_objectives_are_spread(mixed):
    for questions in many(mixed):
        counts = Counter(q.objective for q in questions if q.objective.startswith("filler/"))
        assert min(counts["filler/mix"], counts["filler/shape"]) >= 2


def test_another_seed_chooses_differently(mixed):
    assert len({tuple(q.name for q in questions) for questions in many(mixed, 10)}) > 5


def test_a_plan_that_can_be_filled_has_no_shortage(mixed):
    bank, entry = mixed
    assert shortages(entry, bank) == ()


def test_a_shortage_names_the_cell_and_how_many_are_short(tmp_path):
    cells = ("{module: filler, count: 2}", "{module: film_build, count: 5}")
    bank, entry = papers(tmp_path, plan(*cells))
    (problem,) = shortages(entry, bank)
    assert problem.rule == "blueprint-cannot-be-filled"
    assert problem.severity == "error"
    assert problem.message == "this cell asks for 5 and the bank has 2: 3 short"
    # title, minutes, pass_percent, cells, first cell, second cell
    assert problem.place.path.endswith("blueprints/check.yml")
    assert problem.place.line == 6
    assert problem.place.column == cells[1].index("5") + len("  - ") + 1


def test_study_items_do_not_count_as_supply(tmp_path):
    more = {"items/film_build/films.yml": items(a=FIRST_JOB, b=FIRST_JOB)}
    bank, entry = papers(tmp_path, plan("{module: film_build, count: 1}"), more)
    (problem,) = shortages(entry, bank)
    assert problem.message == "this cell asks for 1 and the bank has 0: 1 short"
    assert "study items do not count" in problem.hint


def test_cells_that_draw_on_the_same_records_are_counted_together(tmp_path):
    cells = ("{module: film_build, count: 2}", "{objective: film_build/films, count: 1}")
    bank, entry = papers(tmp_path, plan(*cells))
    (problem,) = shortages(entry, bank)
    assert problem.message == "this cell asks for 1 and the other cells leave 0: 1 short"
    assert problem.place.line == 6


def test_a_narrow_cell_is_not_robbed_by_a_wide_one(tmp_path):
    # the wide cell could take the numeric items of the module; the narrow one needs them
    cells = ("{module: filler, count: 3}", "{module: filler, kinds: [numeric], count: 2}")
    drawn = papers(tmp_path, plan(*cells))
    assert shortages(drawn[1], drawn[0]) == ()
    for questions in many(drawn):
        assert len(questions) == 5
        assert sum(question.kind == "numeric" for question in questions) >= 2


def test_cells_that_overlap_in_a_ring_are_filled_whatever_is_drawn_first(tmp_path):
    # one record of each kind: a choice and then a sum, both welcome, would leave the last one empty
    cells = (
        "{objective: film_build/films, kinds: [choice, order], count: 1}",
        "{objective: film_build/films, kinds: [numeric, order], count: 1}",
        "{objective: film_build/films, kinds: [numeric, choice], count: 1}",
    )
    more = {"items/film_build/films.yml": items(a=WET_FILM, b=EXAM_CHOICE, c=WASH_ORDER)}
    drawn = papers(tmp_path, plan(*cells), more)
    assert shortages(drawn[1], drawn[0]) == ()
    for questions in many(drawn):
        assert {question.kind for question in questions} == {"numeric", "choice", "order"}


def test_questions_from_records_fill_no_more_than_about_half_a_paper(tmp_path):
    drawn = papers(tmp_path, plan("{objective: filler/shape, count: 6}"))
    for questions in many(drawn):
        assert sum(question.name not in drawn[0].items for question in questions) <= 3


def test_a_kind_with_few_items_still_finds_its_way_into_a_paper(tmp_path):
    drawn = papers(tmp_path, plan("{objective: filler/mix, kinds: [choice, numeric], count: 4}"))
    for questions in many(drawn):
        assert sum(question.kind == "numeric" for question in questions) == 1


@pytest.mark.parametrize(
    ("cell", "message"),
    [
        ("{module: fillr, count: 1}", "the outline has no module 'fillr'"),
        ("{objective: filler/mx, count: 1}", "the outline has no objective 'filler/mx'"),
    ],
)
def test_a_cell_of_an_unknown_module_or_objective_is_named(tmp_path, cell, message):
    bank, entry = papers(tmp_path, plan(cell))
    assert message in [problem.message for problem in shortages(entry, bank)]


def test_forms_of_a_plan_that_is_short_are_refused(tmp_path):
    drawn = papers(tmp_path, plan("{module: film_build, count: 5}"))
    with pytest.raises(ValueError, match=r"\w"):
        chosen(drawn, "A")
