"""Drawing one item for a class: new keys first, then new values, never the neighbour's key."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.bank.numbers.numeric_solution import Solution, all_sets, solve
from generator.quantities import number_text
from generator.questions.drawing.class_draws import draw_apart
from generator.questions.drawing.handed_out import (
    LIKE_NEIGHBOUR,
    NEW_KEY,
    NEW_VALUES,
    UNLIKE_NEIGHBOUR,
    HandedOut,
)
from generator.questions.drawing.numeric import draw_of, draw_solution, prepared
from generator.refinishing.catalogue import CATALOGUE
from tests.questions.small_bank import PASTE, WET_FILM, bank_of, items


@pytest.fixture(scope="module")
def ready(tmp_path_factory):
    files = {
        "items/film_build/films.yml": items(wet=WET_FILM),
        "items/filler/mix.yml": items(paste=PASTE),
    }
    bank = bank_of(tmp_path_factory.mktemp("bank"), files)
    return {name: prepared(entry) for name, entry in bank.items.items()}


def hand_out(item, count, salt="edition"):
    """Return draw and key for each of so many papers."""
    handed = HandedOut()
    for number in range(count):
        solution = draw_apart(item, salt, f"form {number}", handed)
        handed.add(draw_of(solution.values), number_text(solution.key, item.step))
    return list(zip(handed.draws, handed.keys, strict=True))


def grid(item):
    solved = (solve(item, values, CATALOGUE) for values in all_sets(item))
    return [
        (draw_of(s.values), number_text(s.key, item.step))
        for s in solved
        if isinstance(s, Solution)
    ]


@given(st.text(max_size=8))
def test_the_first_paper_gets_what_a_single_draw_gives(ready, salt):
    item = ready["film_build/films/wet"]
    assert draw_apart(item, salt, "A", HandedOut()) == draw_solution(item, salt, "A")


@pytest.mark.parametrize("name", ["film_build/films/wet", "filler/mix/paste"])
@pytest.mark.parametrize("salt", ["one", "two", "three"])
def test_keys_are_all_different_until_the_grid_has_no_more(ready, name, salt):
    item = ready[name]
    most = len({key for _, key in grid(item)})
    given_out = hand_out(item, most + 10, salt)
    assert len({key for _, key in given_out[:most]}) == most


@pytest.mark.parametrize("salt", [f"salt {n}" for n in range(8)])
def test_then_values_are_different_and_a_neighbour_always_has_another_key(ready, salt):
    item = ready["filler/mix/paste"]
    given_out = hand_out(item, 30, salt)
    assert {draw for draw, _ in given_out} == {draw for draw, _ in grid(item)}
    assert all(one[1] != two[1] for one, two in zip(given_out, given_out[1:], strict=False))


def test_the_same_class_gets_the_same_draws(ready):
    item = ready["film_build/films/wet"]
    assert hand_out(item, 25) == hand_out(item, 25) != hand_out(item, 25, "other")


def test_how_good_a_draw_is_depends_on_what_the_others_got():
    one, two = (("dry", "50 µm"),), (("dry", "60 µm"),)
    handed = HandedOut()
    assert handed.rank(one, "7") == NEW_KEY
    handed.add(one, "7")
    handed.add(two, "8")
    assert handed.rank(one, "7") == UNLIKE_NEIGHBOUR
    assert handed.rank((("dry", "70 µm"),), "7") == NEW_VALUES
    assert handed.rank((("dry", "70 µm"),), "8") == LIKE_NEIGHBOUR
