"""A form for each person of a class: nobody can use a neighbour's answer."""

from collections import defaultdict

import pytest

from generator.assembly import History, assemble, form_labels
from generator.assembly.forms.class_questions import ClassQuestions
from generator.bank.models import NumericItem
from generator.bank.numbers.numeric_solution import Solution, all_sets, solve
from generator.quantities import number_text
from generator.questions import askables
from generator.questions.drawing.numeric import prepared
from generator.refinishing.catalogue import CATALOGUE
from tests.assembly.small_papers import papers, plan
from tests.questions.small_bank import PASTE, items
from tests.real import real_bank

CLASS = tuple(f"Apprentice {number:02}" for number in range(1, 31))


@pytest.fixture(scope="module")
def bank():
    return real_bank()


@pytest.fixture(scope="module")
def built(bank):
    labels = form_labels(len(CLASS))
    return assemble(bank, bank.blueprints["numbers_only"], "spring", labels, CLASS)


def asked(forms):
    """Return for each numeric item the place, the values and the key of everyone who got it."""
    found = defaultdict(list)
    for place, form in enumerate(forms):
        for entry in form.questions:
            if entry.question.draw:
                key = entry.question.key
                found[entry.question.name].append((place, entry.question.draw, key.shown))
    return found


def sets_of(bank, name):
    """Return the accepted values of an item with their keys, by walking its grid."""
    item = prepared(bank.items[name])
    solved = (solve(item, values, CATALOGUE) for values in all_sets(item))
    return [
        number_text(solution.key, item.step)
        for solution in solved
        if isinstance(solution, Solution)
    ]


def test_everyone_of_a_class_gets_a_form_of_their_own(built):
    assert [form.person for form in built.forms] == list(CLASS)
    asked_of_each = {
        tuple((q.question.name, q.question.draw) for q in f.questions) for f in built.forms
    }
    assert len(asked_of_each) == len(CLASS)


def test_no_two_people_share_a_key_or_values_while_the_grid_allows_it(bank, built):
    checked = 0
    for name, given in asked(built.forms).items():
        accepted = sets_of(bank, name)
        keys = {key for _, _, key in given}
        draws = {draw for _, draw, _ in given}
        assert len(keys) == min(len(given), len(set(accepted))), name
        if len(given) <= len(accepted):
            # a neighbour's key may keep a last set of values back, and no more than that
            assert len(draws) >= len(given) - 1, name
        checked += 1
    assert checked >= 20


def test_neighbours_never_have_the_same_key_for_an_item(built):
    compared = 0
    for given in asked(built.forms).values():
        for (place, draw, key), (after, next_draw, next_key) in zip(given, given[1:], strict=False):
            if after == place + 1:
                compared += 1
                assert key != next_key
                assert draw != next_draw
    assert compared > 20


def test_every_numeric_exam_item_has_two_keys_so_that_neighbours_can_differ(bank):
    poor = []
    for name, entry in bank.items.items():
        if isinstance(entry.record, NumericItem) and entry.record.use != "study":
            item = prepared(entry)
            keys = set()
            for values in all_sets(item):
                solution = solve(item, values, CATALOGUE)
                if isinstance(solution, Solution):
                    keys.add(solution.key)
                if len(keys) > 1:
                    break
            if len(keys) < 2:
                poor.append(name)
    assert poor == []


def test_neighbours_get_options_in_another_order(tmp_path):
    bank, entry = papers(tmp_path, plan("{objective: filler/shape, kinds: [choice], count: 4}"))
    forms = assemble(bank, entry, "spring", form_labels(20)).forms
    last, compared = {}, 0
    for form in forms:
        for asked_now in form.questions:
            question = asked_now.question
            shown = (question.stem, [option.text for option in question.key.options])
            if question.name in last:
                assert last[question.name] != shown
                compared += 1
            last[question.name] = shown
    assert compared > 20


def test_a_used_up_grid_still_gives_a_question_unlike_the_one_before(tmp_path):
    small = {"items/film_build/films.yml": items(paste=PASTE)}
    bank, _ = papers(tmp_path, plan("{module: film_build, count: 1}"), small)
    (askable,) = (a for a in askables(bank) if a.name == "film_build/films/paste")
    handed = ClassQuestions()
    made = [handed.make(askable, f"form {number}") for number in range(40)]
    keys = [question.key.shown for question in made]
    # 100, 150, 250 g at 2 and 3 percent: six sets of values, five keys
    assert len({question.draw for question in made[:7]}) == 6
    assert len(set(keys[:5])) == len(set(keys)) == 5
    assert all(one != other for one, other in zip(keys, keys[1:], strict=False))


def test_the_same_class_gets_the_same_papers_again(bank, built):
    again = assemble(bank, bank.blueprints["numbers_only"], "spring", form_labels(30), CLASS)
    assert again == built


def test_a_resit_avoids_what_the_person_has_met(tmp_path):
    bank, entry = papers(tmp_path, plan("{module: filler, kinds: [choice], count: 4}"))
    first = assemble(bank, entry, "spring", ("A", "B"), ("Ann 1", "Ben 2"))
    met = {form.person: frozenset(q.question.name for q in form.questions) for form in first.forms}
    again = assemble(bank, entry, "autumn", ("A", "B"), ("Ann 1", "Ben 2"), History(met=met))
    for form in again.forms:
        assert not met[form.person] & {q.question.name for q in form.questions}
    assert again.balance.met_again == 0


def test_a_resit_that_cannot_avoid_everything_says_how_much_is_met_again(tmp_path):
    bank, entry = papers(tmp_path, plan("{module: film_build, kinds: [numeric], count: 2}"))
    met = frozenset({"film_build/films/wet"})
    again = assemble(bank, entry, "autumn", ("A",), ("Ann 1",), History(met={"Ann 1": met}))
    assert again.balance.met_again == 1
    assert "Once a person meets a question again." in again.balance.in_words(80, 30)


def test_what_earlier_issues_used_is_used_less_now(tmp_path):
    bank, entry = papers(tmp_path, plan("{objective: filler/mix, kinds: [choice], count: 3}"))
    worn = {f"filler/mix/choice_{number}": 5 for number in range(3)}
    names = set()
    for seed in range(10):
        (form,) = assemble(bank, entry, str(seed), ("A",), past=History(exposure=worn)).forms
        names |= {q.question.name for q in form.questions}
    assert names
    assert not names & set(worn)
