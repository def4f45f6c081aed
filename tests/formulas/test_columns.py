"""Formulas worked out by columns give what the evaluator gives, or leave it to the evaluator."""

from collections.abc import Mapping, Sequence
from fractions import Fraction
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.formulas import (
    Columns,
    FormulaRefused,
    NotByColumns,
    check_comparison,
    check_units,
    evaluate,
    held_by,
    holds,
    parse_comparison,
    parse_formula,
)
from generator.formulas.evaluate import Value
from generator.quantities import Quantity, Ratio, unit_named
from tests.formulas.toy_relations import CATALOGUE, KINDS


def grid(unit: str, *numbers: str) -> tuple[Value, ...]:
    return tuple(Quantity(Fraction(number), unit_named(unit)) for number in numbers)


def ratios(*rows: str) -> tuple[Value, ...]:
    return tuple(Ratio(tuple(map(Fraction, row.split(":")))) for row in rows)


GRIDS: Mapping[str, Sequence[Value]] = {
    "dry": grid("um", "40", "62.5", "80"),
    "solids": grid("percent", "0", "40", "100"),
    "panel": grid("degC", "-3", "18"),
    "air": grid("degF", "50", "64.4"),
    "rise": grid("K", "0", "5.5"),
    "batch": grid("mL", "250", "400"),
    "coats": grid("coats", "1", "3"),
    "parts": ratios("4:1", "4:1:1"),
}
FORMULAS = (
    "dry",
    "0.25",
    "dry + dry / 3",
    "dry * (1 - solids) / solids",
    "wet(dry, solids)",
    "wet(dry, solids, 0.1) - wet(film=dry, solids=solids)",
    "shares(batch, parts)['base']",
    "part(parts, 3) * batch / parts_total(parts)",
    "panel - air",
    "panel + rise",
    "panel - rise",
    "margin(panel, air)",
    "margin(panel, air) / rise",
    "mean_film(dry, dry * 2, dry / coats)",
    "(dry - 80 * dry / 80) ** -1",
    "solids ** -2 * dry",
    "coats ** 0",
    "-coats + 6 ** 6",
)


def names_in(text: str) -> list[str]:
    formula, problems = parse_formula(text)
    assert formula is not None, problems
    return list(formula.names)


def sets_of(names: Sequence[str]) -> list[tuple[int, ...]]:
    return list(product(*(range(len(GRIDS[name])) for name in names)))


def by_columns(names: Sequence[str], sets: Sequence[tuple[int, ...]]) -> Columns:
    picks = {name: [one[at] for one in sets] for at, name in enumerate(names)}
    return Columns(GRIDS, picks, CATALOGUE, len(sets))


def values_of(names: Sequence[str], one: tuple[int, ...]) -> dict[str, Value]:
    return {name: GRIDS[name][pick] for name, pick in zip(names, one, strict=True)}


@pytest.mark.parametrize("text", FORMULAS)
def test_every_set_comes_out_as_the_evaluator_says(text: str) -> None:
    formula, _ = parse_formula(text)
    assert formula is not None
    unit, problems = check_units(formula, KINDS, CATALOGUE)
    assert unit is not None, problems
    sets = sets_of(names_in(text))
    columns = by_columns(names_in(text), sets)
    found = columns.column(formula.root).fractions()
    for place, one in enumerate(sets):
        try:
            right = evaluate(formula, values_of(names_in(text), one), CATALOGUE)
        except (FormulaRefused, OutsideValidity):
            assert place in columns.odd
        else:
            assert place not in columns.odd
            assert found[place] == right.base


@pytest.mark.parametrize(
    "text",
    [
        "wet(dry, solids) < 150 um",
        "dry >= 62.5 um",
        "solids != 40 percent",
        "panel <= air",
        "panel > 10 degC",
        "part(parts, 2) == 1",
        "dry * 2 == 125 um",
    ],
)
def test_a_comparison_holds_for_the_same_sets(text: str) -> None:
    comparison, _ = parse_comparison(text)
    assert comparison is not None
    assert check_comparison(comparison, KINDS, CATALOGUE) == ()
    names = [name for name in GRIDS if name in text]
    sets = sets_of(names)
    columns = by_columns(names, sets)
    held = held_by(comparison, columns)
    for place, one in enumerate(sets):
        try:
            right = holds(comparison, values_of(names, one), CATALOGUE)
        except (FormulaRefused, OutsideValidity):
            assert place in columns.odd
        else:
            assert place in columns.odd or held[place] == right


def test_numbers_that_may_grow_past_the_cap_are_left_to_the_evaluator() -> None:
    text = "((((dry ** 6) ** 6) ** 6) / (((dry ** 6) ** 6) ** 6)) ** 6"
    formula, _ = parse_formula(text)
    assert formula is not None
    with pytest.raises(NotByColumns):
        by_columns(["dry"], sets_of(["dry"])).column(formula.root)


def test_a_call_is_made_once_for_each_choice_of_its_own_values() -> None:
    called = []

    class Counting:
        name, parameters, results = (
            CATALOGUE["wet"].name,
            CATALOGUE["wet"].parameters,
            CATALOGUE["wet"].results,
        )

        def call(self, arguments, /):  # type: ignore[no-untyped-def]
            called.append(arguments)
            return CATALOGUE["wet"].call(arguments)

    formula, _ = parse_formula("wet(dry, 0.5) * coats + wet(dry, 0.5)")
    assert formula is not None
    names = ["dry", "coats"]
    sets = sets_of(names)
    picks = {name: [one[at] for one in sets] for at, name in enumerate(names)}
    Columns(GRIDS, picks, {"wet": Counting()}, len(sets)).column(formula.root)
    assert len(called) == len(GRIDS["dry"])


LEAVES = st.sampled_from(["dry", "dry * 3", "0.1 * dry", "wet(dry, solids)", "dry / coats"])
SUMS = st.recursive(
    LEAVES,
    lambda inner: st.tuples(inner, st.sampled_from("+-"), inner).map(
        lambda parts: "({} {} {})".format(*parts)
    ),
    max_leaves=6,
)


# the oracle takes its time
@settings(deadline=None)
@given(SUMS, SUMS)
def test_any_quotient_of_sums_comes_out_as_the_evaluator_says(above: str, below: str) -> None:
    text = f"{above} / {below}"
    formula, problems = parse_formula(text)
    assert formula is not None, problems
    names = names_in(text)
    sets = sets_of(names)
    columns = by_columns(names, sets)
    found = columns.column(formula.root).fractions()
    for place, one in enumerate(sets):
        try:
            right = evaluate(formula, values_of(names, one), CATALOGUE)
        except (FormulaRefused, OutsideValidity):
            assert place in columns.odd
        else:
            assert place not in columns.odd and found[place] == right.base
