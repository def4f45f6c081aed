"""Solving: key, band and slips in the answer's unit, and every reason to refuse a set of values."""

from collections.abc import Mapping
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.bank.numbers.numeric_item import PreparedItem, Value, prepare
from generator.bank.numbers.numeric_solution import (
    Refusal,
    Solution,
    all_sets,
    corners,
    set_count,
    solve,
)
from generator.quantities import Band, Quantity, unit_named
from generator.refinishing.catalogue import CATALOGUE
from tests.bank.small_bank import numeric_item


def ready(text: str) -> PreparedItem:
    item, problems = prepare(numeric_item(text), CATALOGUE)
    assert item is not None, problems
    return item


def item(formula: str, *slips: str, answer: str = "unit: um, round_to: 1", more: str = "") -> str:
    lines = "".join(f'  - {{formula: "{slip}", feedback: "{slip}"}}\n' for slip in slips)
    return (
        'stem: "{dry} {solids}"\n'
        "given:\n"
        "  dry: {unit: um, values: 40 to 80 step 10}\n"
        "  solids: {unit: percent, values: [40, 50, 60]}\n"
        f'{more}answer: {{formula: "{formula}", {answer}}}\nslips:\n{lines}'
    )


def values(dry: int, solids: int) -> Mapping[str, Value]:
    return {
        "dry": Quantity(Fraction(dry), unit_named("um")),
        "solids": Quantity(Fraction(solids), unit_named("percent")),
    }


def solved(text: str, dry: int, solids: int) -> Solution:
    outcome = solve(ready(text), values(dry, solids), CATALOGUE)
    assert isinstance(outcome, Solution), outcome
    return outcome


def refused(text: str, dry: int, solids: int) -> Refusal:
    outcome = solve(ready(text), values(dry, solids), CATALOGUE)
    assert isinstance(outcome, Refusal), outcome
    return outcome


WET = item("wet_film(dry, solids)", "dry * solids", "dry / (1 - solids)")


def test_sixty_micrometres_at_forty_percent_need_a_hundred_and_fifty_wet() -> None:
    # wet film = dry film / volume solids; common practice
    solution = solved(WET, 60, 40)
    assert solution.exact == 150
    assert solution.key == 150
    assert solution.band == Band(Fraction(299, 2), Fraction(301, 2))
    assert [number for number, _ in solution.slips] == [24, 100]


def test_the_key_is_rounded_once_and_the_band_lies_around_the_unrounded_value() -> None:
    solution = solved(WET, 50, 60)
    assert solution.exact == Fraction(250, 3)
    assert solution.key == 83
    assert solution.band.holds(solution.key)
    assert solution.band.holds(solution.exact)


@given(st.sampled_from(range(40, 81, 10)), st.sampled_from([40, 60]))
def test_every_solution_accepts_its_key_and_no_slip(dry: int, solids: int) -> None:
    solution = solved(WET, dry, solids)
    assert solution.band.holds(solution.key)
    for number, _ in solution.slips:
        assert not solution.band.holds(number)


def test_an_answer_is_given_in_its_own_unit() -> None:
    text = item("wet_film(dry, solids)", "dry", answer="unit: mil, round_to: 0.1")
    solution = solved(text, 60, 40)
    assert solution.exact == Fraction(150) * 10 / 254
    assert solution.slips[0][0] == Fraction(60) * 10 / 254


def test_a_bare_slip_counts_in_the_answers_unit() -> None:
    text = item("wet_film(dry, solids)", "300")
    assert solved(text, 60, 40).slips[0][0] == 300


def test_a_count_has_one_right_answer() -> None:
    text = item("coats_needed(dry, 30 * dry / dry * dry / 100, solids)['coats']", "40")
    text = text.replace("unit: um, round_to: 1", "unit: coats, round_to: 1, rounding: up")
    # a coat of 0.3 of the dry film wet leaves 0.12 of it at 40 percent: nine coats
    solution = solved(text, 60, 40)
    assert solution.key == 9
    assert solution.band == Band(Fraction(9), Fraction(9))


def test_a_wrong_way_that_meets_the_key_is_refused_with_its_number() -> None:
    text = item("wet_film(dry, solids)", "dry * solids", "dry / (1 - solids)")
    refusal = refused(text, 60, 50)
    assert (refusal.rule, refusal.slip) == ("slip-in-band", 1)
    assert refusal.message == "slip 2 gives 120, which passes"


def test_a_wrong_way_inside_the_tolerance_is_refused_too() -> None:
    text = item("dry", "dry + dry / 50", answer="unit: um, round_to: 1, tolerance: 5 percent")
    assert refused(text, 50, 40).rule == "slip-in-band"


def test_a_wrong_way_that_only_prints_like_the_key_is_refused() -> None:
    text = item("dry", "dry * 1.02", answer="unit: um, round_to: 1, rounding: down")
    # 40.8 lies outside 39.5 to 40.5, and rounded down it prints 40, which is the key
    assert refused(text, 40, 40).rule == "slip-in-band"
    # 51 prints 51, and the key is 50
    assert solved(text, 50, 40).key == 50


def test_two_wrong_ways_with_one_printed_number_are_refused() -> None:
    refusal = refused(item("dry", "dry * 2", "dry + dry"), 50, 40)
    assert (refusal.rule, refusal.slip) == ("slips-alike", 1)


@pytest.mark.parametrize("formula", ["dry - dry", "dry - 2 * dry", "dry / 1000"])
def test_an_answer_of_nought_or_below_is_refused(formula: str) -> None:
    assert refused(item(formula, "dry * 7"), 50, 40).rule == "ugly-number"


def test_a_temperature_may_be_nought_or_below() -> None:
    text = """\
stem: "{air} {rise}"
given:
  air: {unit: degC, values: [-5, 5]}
  rise: {unit: K, values: [2, 5]}
answer: {formula: air + rise, unit: degC, round_to: 1}
slips: [{formula: air + rise + rise, feedback: x}]
"""
    drawn = next(iter(corners(ready(text))))
    solution = solve(ready(text), drawn, CATALOGUE)
    assert isinstance(solution, Solution)
    assert solution.key == -3


def test_an_answer_with_too_many_figures_is_refused() -> None:
    text = item("dry / 7", "dry", answer="unit: um, round_to: 0.0000001")
    assert refused(text, 50, 40).rule == "ugly-number"


def test_values_that_the_item_leaves_out_are_not_required() -> None:
    text = item("dry", "dry * 2", more='require: ["solids != 50 percent"]\n')
    assert refused(text, 50, 50).rule == "not-required"
    assert solved(text, 50, 60).key == 50


@pytest.mark.parametrize("formula", ["dry / (solids - 0.4)", "wet_film(dry, solids - 0.4)"])
def test_values_outside_a_range_of_validity_are_refused_in_words(formula: str) -> None:
    refusal = refused(item(formula, "dry * 7"), 50, 40)
    assert refusal.rule == "outside-validity"
    assert "Error" not in refusal.message
    assert refusal.message


def test_a_slip_that_cannot_be_worked_out_refuses_the_values() -> None:
    assert refused(item("dry", "dry / (solids - 0.4)"), 50, 40).rule == "outside-validity"


def test_corners_are_the_ends_of_each_grid_and_all_sets_are_the_whole_grid() -> None:
    prepared = ready(WET)
    assert set_count(prepared) == 15 == len(list(all_sets(prepared)))
    ends = [tuple(int(v.number) for v in drawn.values()) for drawn in corners(prepared)]  # type: ignore[union-attr]
    assert sorted(ends) == [(40, 40), (40, 60), (80, 40), (80, 60)]


def test_a_grid_of_one_value_has_one_corner() -> None:
    text = WET.replace("40 to 80 step 10", "[40]")
    assert len(list(corners(ready(text)))) == 2
