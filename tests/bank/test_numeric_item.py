"""Preparing a numeric item: grids as numbers, formulas read, units checked before any number."""

from fractions import Fraction

import pytest

from generator.bank.numbers.numeric_item import PreparedItem, Tolerance, prepare
from generator.quantities import Quantity, Ratio, unit_named
from generator.refinishing.catalogue import CATALOGUE
from tests.bank.small_bank import numeric_item

WET = """\
stem: What wet film gives {dry_film}?
sheet: {title: Made-up sheet, rows: [[Solids, "{volume_solids}"]]}
given:
  dry_film: {unit: um, values: [50, 60.5]}
  volume_solids: {unit: percent, values: [40, 60]}
answer: {formula: "wet_film(dry_film, volume_solids)", unit: um, round_to: 1}
slips:
  - {formula: dry_film * volume_solids, feedback: You multiplied.}
"""


def prepared(text: str) -> PreparedItem:
    item, problems = prepare(numeric_item(text), CATALOGUE)
    assert problems == ()
    assert item is not None
    return item


def rules(text: str) -> list[str]:
    item, problems = prepare(numeric_item(text), CATALOGUE)
    assert (item is None) == bool(problems)
    return [problem.rule for problem in problems]


def changed(old: str, new: str) -> str:
    assert old in WET
    return WET.replace(old, new)


def test_a_sound_item_has_exact_values_in_their_units() -> None:
    item = prepared(WET)
    micrometre, percent = unit_named("um"), unit_named("percent")
    assert item.grids == {
        "dry_film": (Quantity(Fraction(50), micrometre), Quantity(Fraction(121, 2), micrometre)),
        "volume_solids": (Quantity(Fraction(40), percent), Quantity(Fraction(60), percent)),
    }
    assert (item.unit, item.step) == (micrometre, Fraction(1))
    assert (item.direction, item.limit) == ("half", "none")
    assert [says for _, says in item.slips] == ["You multiplied."]
    assert not item.is_count


def test_ratios_are_read_part_by_part() -> None:
    text = """\
stem: "{base} at {parts}"
given:
  base: {unit: mL, values: [400]}
  parts: {unit: ratio, values: ["4:1:0.5", 3:1]}
answer: {formula: "base * part(parts, 2) / part(parts, 1)", unit: L, round_to: 0.1}
slips: [{formula: base * 3, feedback: x}]
"""
    item = prepared(text)
    assert item.grids["parts"] == (
        Ratio((Fraction(4), Fraction(1), Fraction(1, 2))),
        Ratio((Fraction(3), Fraction(1))),
    )
    assert item.unit == unit_named("L")


@pytest.mark.parametrize("unit", ["coats", "passes", "fills", "layers", "grades"])
def test_whole_things_are_known_as_counts(unit: str) -> None:
    text = changed(
        'formula: "wet_film(dry_film, volume_solids)", unit: um',
        f"formula: dry_film / dry_film, unit: {unit}",
    ).replace("formula: dry_film * volume_solids", "formula: volume_solids")
    assert prepared(text).is_count


@pytest.mark.parametrize(
    ("tolerance", "expected"),
    [
        ("", Tolerance(Fraction(1, 2), Fraction(0))),
        (", tolerance: 2 um", Tolerance(Fraction(2), Fraction(0))),
        (", tolerance: 0.01 mm", Tolerance(Fraction(10), Fraction(0))),
        (", tolerance: 3 percent", Tolerance(Fraction(0), Fraction(3, 100))),
    ],
)
def test_a_tolerance_is_an_amount_in_the_answers_unit_or_a_share(
    tolerance: str, expected: Tolerance
) -> None:
    assert prepared(changed("round_to: 1", "round_to: 1" + tolerance)).tolerance == expected


def test_without_a_tolerance_half_of_the_last_figure_passes() -> None:
    item = prepared(changed("round_to: 1", "round_to: 0.1"))
    assert item.tolerance.around(Fraction(77)) == Fraction(1, 20)


def test_a_share_follows_the_size_of_the_answer() -> None:
    assert Tolerance(Fraction(0), Fraction(1, 50)).around(Fraction(-200)) == 4


@pytest.mark.parametrize(
    ("old", "new", "expected"),
    [
        ("unit: um, values", "unit: micron, values", ["unknown-unit"]),
        ("unit: um, round_to", "unit: umm, round_to", ["unknown-unit"]),
        ("[50, 60.5]", "[50, many]", ["wrong-value"]),
        ("round_to: 1", "round_to: 0", ["wrong-value"]),
        ("round_to: 1", "round_to: -1", ["wrong-value"]),
        ("round_to: 1", "round_to: 1, tolerance: -1 um", ["wrong-value"]),
        ("round_to: 1", "round_to: 1, tolerance: some", ["wrong-value"]),
        ("round_to: 1", "round_to: 1, tolerance: 0.4 um", ["tolerance-too-small"]),
        ("round_to: 1", "round_to: 1, tolerance: 0 percent", ["tolerance-too-small"]),
        ("round_to: 1", "round_to: 1, tolerance: 5 mL", ["formula-units"]),
        ("round_to: 1", "round_to: 1, tolerance: 5 umm", ["unknown-unit"]),
        ("round_to: 1", "round_to: 1, limit: minimum", ["rounding-direction"]),
        ("round_to: 1", "round_to: 1, limit: maximum, rounding: up", ["rounding-direction"]),
        ("wet_film(dry_film, volume_solids)", "wet_film(volume_solids, dry_film)", 2),
        ("wet_film(dry_film, volume_solids)", "dry_film * dry_film", ["formula-units"]),
        ("wet_film(dry_film, volume_solids)", "volume_solids", ["formula-units"]),
        ("dry_film * volume_solids", "dry_film * dry_film", ["formula-units"]),
        ("dry_film * volume_solids", "wet_flim(dry_film)", ["formula-name"]),
        ("{dry_film}", "that film", ["given-not-shown"]),
        ("{dry_film}", "{dry_film} and {thinner}", ["placeholder-unknown"]),
        ("{dry_film}", "{dry film}{}", ["given-not-shown", "placeholder-unknown"]),
        ("{volume_solids}", "{solids}", ["given-not-shown", "placeholder-unknown"]),
        ("slips:", "require: [dry_film]\nslips:", ["formula-syntax"]),
        ("slips:", "require: [dry_film > 5 percent]\nslips:", ["formula-units"]),
        ("slips:", "require: [dry > 5 um]\nslips:", ["formula-name"]),
    ],
)
def test_an_unsound_item_is_refused_by_its_rule(
    old: str, new: str, expected: list[str] | int
) -> None:
    found = rules(changed(old, new))
    if isinstance(expected, int):
        expected = ["formula-units"] * expected
    assert found == expected


def test_a_limit_that_rounds_to_its_safe_side_is_sound() -> None:
    for limit, rounding in (("maximum", "down"), ("minimum", "up")):
        text = changed("round_to: 1", f"round_to: 1, limit: {limit}, rounding: {rounding}")
        assert prepared(text).limit == limit


def test_a_bare_slip_may_answer_any_unit_but_a_bare_key_may_not() -> None:
    assert prepared(changed("dry_film * volume_solids", "volume_solids * 2"))
    assert rules(changed("wet_film(dry_film, volume_solids)", "volume_solids * 2")) == [
        "formula-units"
    ]


def test_a_problem_in_a_formula_stands_at_its_column() -> None:
    entry = numeric_item(changed("dry_film * volume_solids", "dry_film * soilds"))
    _, (problem,) = prepare(entry, CATALOGUE)
    line = "  - {formula: dry_film * soilds, feedback: You multiplied.}"
    assert problem.place.column == line.index("soilds") + 1
    assert problem.place.line == 12
