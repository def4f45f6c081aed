"""Numeric questions: each draw depends on its label alone, is free while one is, and is solved."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.bank.numbers.numeric_solution import all_sets, set_count, solve
from generator.questions.drawing.numeric import (
    NothingToDraw,
    band_text,
    draw_of,
    draw_solution,
    numeric_key,
    prepared,
)
from generator.questions.drawing.seeded_random import SeededRandom
from generator.refinishing.catalogue import CATALOGUE
from tests.questions.small_bank import PASTE, WET_FILM, bank_of, items
from tests.some import some

SALT = "Trailer bay|1"


def prepared_item(folder, body, name="film_build/films/one"):
    bank = bank_of(folder, {"items/film_build/films.yml": items(one=body)})
    return prepared(bank.items[name])


@pytest.fixture(scope="module")
def wet(tmp_path_factory):
    return prepared_item(tmp_path_factory.mktemp("wet"), WET_FILM)


@pytest.fixture(scope="module")
def paste(tmp_path_factory):
    return prepared_item(tmp_path_factory.mktemp("paste"), PASTE)


def test_a_value_is_drawn_from_edition_form_item_name_and_attempt(wet):
    drawn = draw_solution(wet, SALT, "A").values
    for name, grid in some(wet.grids.items()):
        stream = SeededRandom("Trailer bay", "1", "A", "film_build/films/one", name, "0")
        assert drawn[name] == grid[stream.below(len(grid))]


@given(st.text(max_size=20))
def test_the_same_label_gives_the_same_draw(wet, form):
    assert draw_of(draw_solution(wet, SALT, form).values) == draw_of(
        draw_solution(wet, SALT, form).values
    )


def test_forms_and_editions_draw_apart(wet):
    forms = [draw_of(draw_solution(wet, SALT, f"form {n}").values) for n in range(40)]
    editions = [draw_of(draw_solution(wet, f"Bay|{n}", "A").values) for n in range(40)]
    assert len(set(forms)) > 12
    assert len(set(editions)) > 12


def test_each_set_of_values_is_drawn_in_time(wet):
    drawn = {draw_of(draw_solution(wet, SALT, f"form {n}").values) for n in range(400)}
    assert len(drawn) == set_count(wet) == 21


def test_every_draw_is_given_once_before_any_comes_twice(wet):
    taken = []
    for number in range(set_count(wet)):
        taken.append(draw_of(draw_solution(wet, SALT, f"form {number}", taken).values))
    assert len(set(taken)) == set_count(wet)
    again = draw_of(draw_solution(wet, SALT, "one more", taken).values)
    assert again in taken


@pytest.mark.parametrize("left", [0, 1, 100, 399])
def test_the_last_free_draw_of_a_wide_grid_is_found(tmp_path, left):
    # chance alone would miss one free set of 400 in 200 attempts three times in five
    body = PASTE.replace("[100, 150, 250]", "100 to 299 step 1")
    item = prepared_item(tmp_path, body)
    every = [draw_of(values) for values in all_sets(item)]
    assert len(every) == 400
    taken = [draw for draw in every if draw != every[left]]
    assert draw_of(draw_solution(item, SALT, "last", taken).values) == every[left]


def test_values_that_the_item_leaves_out_are_never_drawn(tmp_path):
    body = WET_FILM + "require:\n  - dry > 70 um\n  - volume_solids != 45 percent\n"
    item = prepared_item(tmp_path, body)
    drawn = {draw_of(draw_solution(item, SALT, f"form {n}").values) for n in range(100)}
    assert {dict(draw)["dry"] for draw in drawn} == {"75\u00a0µm", "80\u00a0µm"}
    assert {dict(draw)["volume_solids"] for draw in drawn} == {"40\u00a0%", "60\u00a0%"}


def test_values_that_let_a_slip_pass_are_never_drawn(tmp_path):
    # at half solids, solids and solvent are the same, so the second slip would be the key
    item = prepared_item(tmp_path, WET_FILM.replace("[40, 45, 60]", "[45, 50]"))
    drawn = {dict(draw_of(draw_solution(item, SALT, f"{n}").values))["dry"] for n in range(60)}
    solids = {
        dict(draw_of(draw_solution(item, SALT, f"{n}").values))["volume_solids"] for n in range(60)
    }
    assert len(drawn) > 3
    assert solids == {"45\u00a0%"}


def test_an_item_without_any_accepted_values_says_so(tmp_path):
    item = prepared_item(tmp_path, WET_FILM.replace("[40, 45, 60]", "[50]"))
    with pytest.raises(NothingToDraw, match="film_build/films/one: no accepted values"):
        draw_solution(item, SALT, "A")


def test_an_item_with_a_wrong_formula_cannot_be_prepared(tmp_path):
    with pytest.raises(NothingToDraw, match="film_build/films/one: .*answer is in um"):
        prepared_item(tmp_path, WET_FILM.replace("wet_film(dry, volume_solids)", "dry * dry"))


def test_the_key_is_the_quotient_rounded_once_and_every_slip_stands_apart(wet):
    for values in some(all_sets(wet)):
        dry, solids = values["dry"].number, values["volume_solids"].number / 100
        key = numeric_key(wet, solve(wet, values, CATALOGUE), "Thinner leaves, solids stay.")
        assert key.exact == dry / solids
        assert Fraction(key.shown) == (key.exact + Fraction(1, 2)) // 1
        assert key.band.holds(Fraction(key.shown))
        assert key.band.holds(key.exact)
        assert not any(key.band.holds(Fraction(slip.shown)) for slip in key.slips)
        assert [slip.band.holds(wrong) for slip, wrong in zip(
            key.slips, (dry * solids, dry / (1 - solids)), strict=True
        )] == [True, True]  # fmt: skip
        assert key.feedback == "Thinner leaves, solids stay."


def test_what_passes_is_said_as_two_ends_with_the_unit(wet):
    values = {"dry": wet.grids["dry"][0], "volume_solids": wet.grids["volume_solids"][1]}
    solution = solve(wet, values, CATALOGUE)
    # 50 / 0.45 = 111.11; half a step to either side
    assert solution.exact == Fraction(1000, 9)
    assert band_text(wet, solution.band) == "110.7 to 111.6\u00a0µm"


def test_both_said_ends_pass(wet, paste):
    for item in (wet, paste):
        for values in some(all_sets(item)):
            solution = solve(item, values, CATALOGUE)
            low, _, high = band_text(item, solution.band).split("\u00a0")[0].split()
            assert solution.band.holds(Fraction(low))
            assert solution.band.holds(Fraction(high))


COATS = """
kind: numeric
level: apply
use: both
source: common_practice
stem: A target of {target} at {wet} wet a coat and {solids}. How many coats?
given:
  target: {unit: um, values: [100, 130]}
  wet: {unit: um, values: [100]}
  solids: {unit: percent, values: [40]}
answer:
  formula: coats_needed(target, wet, solids)['coats']
  unit: coats
  round_to: 1
  rounding: up
slips:
  - formula: target / wet
    feedback: You counted wet film.
"""


def test_a_count_of_coats_passes_only_as_itself(tmp_path):
    item = prepared_item(tmp_path, COATS)
    shown = {}
    for values in some(all_sets(item)):
        key = numeric_key(item, solve(item, values, CATALOGUE), "")
        shown[values["target"].number] = key.shown
        assert key.band.low == key.band.high == Fraction(key.shown)
        assert key.band_text.endswith("only")
    # 100 / 40 = 2.5 and 130 / 40 = 3.25 coats of dry film
    assert shown == {100: "3", 130: "4"}


SPEED = """
kind: numeric
level: apply
use: both
source: common_practice
caution: Never above the speed on the disc.
stem: A disc of {disc} may run at {rim}. Highest speed in rpm, down to the next 10?
given:
  disc: {unit: mm, values: [150]}
  rim: {unit: m/s, values: [45]}
answer:
  formula: highest_speed(disc, rim)
  unit: rpm
  round_to: 10
  rounding: down
  limit: maximum
  tolerance: 20 rpm
slips:
  - formula: 2 * highest_speed(disc, rim)
    feedback: You took the radius.
"""


def test_above_a_maximum_nothing_passes(tmp_path):
    item = prepared_item(tmp_path, SPEED)
    (values,) = all_sets(item)
    solution = solve(item, values, CATALOGUE)
    # 45 m/s / (3.14159 x 0.15 m) x 60 = 5729.6 rpm
    key = numeric_key(item, solution, "")
    assert key.shown == "5720"
    assert key.band.holds(Fraction(5729))
    assert not key.band.holds(Fraction(5730))
    assert not key.band.holds(Fraction(5699))
    assert key.band_text == "5700 to 5729\u00a0rpm, nothing above"


def test_below_a_minimum_nothing_passes(tmp_path):
    body = PASTE.replace("round_to: 0.1", "round_to: 1\n  rounding: up\n  limit: minimum")
    item = prepared_item(tmp_path, body.replace("[100, 150, 250]", "[150]"))
    (values,) = (v for v in all_sets(item) if v["share"].number == 3)
    # 150 g at 3 % are 4.5 g
    key = numeric_key(item, solve(item, values, CATALOGUE), "")
    assert key.shown == "5"
    assert key.band.holds(Fraction("4.5"))
    assert not key.band.holds(Fraction("4.4"))
    assert key.band_text == "4.5 to 5.5\u00a0g, nothing below"
