"""Building forms: the same inputs give the same forms, and forms differ from each other."""

import json

import pytest

from generator.assembly import build_forms, form_as_plain, form_labels
from generator.bank.numbers.numeric_solution import set_count
from generator.questions.drawing.numeric import prepared
from tests.assembly.small_papers import ITEMS, papers, plan
from tests.questions.small_bank import FIRST_JOB, PASTE, items

CELLS = (
    "{module: filler, count: 6}",
    "{module: film_build, count: 1}",
    "{module: cleaning, count: 1}",
)


@pytest.fixture(scope="module")
def drawn(tmp_path_factory):
    return papers(tmp_path_factory.mktemp("forms"), plan(*CELLS))


def as_json(forms):
    return json.dumps([form_as_plain(form) for form in forms], ensure_ascii=False)


def test_the_same_seed_gives_the_same_forms(drawn):
    labels = form_labels(4)
    assert as_json(build_forms(*drawn, "spring", labels)) == as_json(
        build_forms(*drawn, "spring", labels)
    )


def test_another_seed_gives_other_forms(drawn):
    assert as_json(build_forms(*drawn, "spring", ("A",))) != as_json(
        build_forms(*drawn, "autumn", ("A",))
    ).replace("autumn", "spring")


def test_what_a_form_asks_about_a_question_does_not_depend_on_how_many_follow(drawn):
    # forms of one run are chosen together, so more forms may bring other questions to form A
    shared = 0
    for seed in ("spring", "summer", "autumn", "winter"):
        (alone,) = build_forms(*drawn, seed, ("A",))
        first, *_ = build_forms(*drawn, seed, form_labels(5))
        one, other = (
            {q.question.name: q.question for q in form.questions} for form in (alone, first)
        )
        assert all(one[name] == other[name] for name in one.keys() & other.keys())
        shared += len(one.keys() & other.keys())
    assert shared >= 4


def test_two_forms_of_one_run_differ(drawn):
    one, two = build_forms(*drawn, "spring", ("A", "B"))
    asked = [[(q.question.stem, q.question.draw) for q in form.questions] for form in (one, two)]
    assert asked[0] != asked[1]


def test_no_two_forms_share_a_draw_while_the_grid_allows_it(tmp_path):
    bank, entry = papers(tmp_path, plan("{objective: film_build/films, count: 1}"))
    room = sum(
        set_count(prepared(bank.items[name]))
        for name in ("film_build/films/wet", "film_build/films/wet_again")
    )
    forms = build_forms(bank, entry, "spring", form_labels(room))
    draws = [(q.question.name, q.question.draw) for form in forms for q in form.questions]
    assert len(draws) == room == 42
    assert len(set(draws)) == room


def test_when_the_grid_is_used_up_forms_are_still_built(tmp_path):
    small = {"items/film_build/films.yml": items(paste=PASTE)}
    bank, entry = papers(tmp_path, plan("{module: film_build, count: 1}"), small)
    forms = build_forms(bank, entry, "spring", form_labels(8))
    assert len({form.questions[0].question.draw for form in forms}) == 6


def test_an_item_more_moves_no_draw_of_the_others(drawn, tmp_path):
    grown = ITEMS["items/filler/mix.yml"] + items(added=FIRST_JOB)
    bank, entry = papers(tmp_path, plan(*CELLS), {"items/filler/mix.yml": grown})
    assert len(bank.items) == len(drawn[0].items) + 1
    before = build_forms(*drawn, "spring", ("A",))
    # the added item is for study, so the same questions are chosen
    assert as_json(before) == as_json(build_forms(bank, entry, "spring", ("A",)))


def test_an_exam_item_more_moves_no_drawn_value_of_the_others(drawn, tmp_path):
    added = FIRST_JOB.replace("use: study", "use: exam")
    grown = ITEMS["items/filler/mix.yml"] + items(added=added)
    more = papers(tmp_path, plan(*CELLS), {"items/filler/mix.yml": grown})
    shared = 0
    for seed in ("spring", "summer", "autumn", "winter"):
        # later forms pass over draws given away before, so the first form is the one compared
        before, after = (
            {q.question.name: q.question for q in build_forms(*which, seed, ("A",))[0].questions}
            for which in (drawn, more)
        )
        assert all(before[name] == after[name] for name in before.keys() & after.keys())
        shared += len(before.keys() & after.keys())
    assert shared >= 4


def test_questions_are_numbered_from_one(drawn):
    (form,) = build_forms(*drawn, "spring", ("A",))
    assert [q.number for q in form.questions] == list(range(1, 9))


def test_the_form_carries_blueprint_label_edition_and_seed(drawn):
    (form,) = build_forms(*drawn, "spring", ("B",))
    assert (form.blueprint, form.label, form.edition, form.seed) == ("check", "B", "1", "spring")
    assert (form.title, form.minutes, form.pass_percent) == ("Check", 20, 80)


def test_labels_run_through_the_letters_and_then_count_on():
    assert form_labels(3) == ("A", "B", "C")
    assert form_labels(28)[25:] == ("Z", "27", "28")
    assert len(set(form_labels(200))) == 200
