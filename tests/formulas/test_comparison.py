"""Comparisons that drawn numbers must satisfy."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.formulas import (
    Comparison,
    FormulaRefused,
    check_comparison,
    holds,
    parse_comparison,
)
from generator.quantities import Quantity, unit_named
from tests.formulas.toy_relations import CATALOGUE, KINDS, VALUES


def read(text: str) -> Comparison:
    """Read a comparison that must be good."""
    comparison, problems = parse_comparison(text)
    assert problems == ()
    assert comparison is not None
    return comparison


@pytest.mark.parametrize(
    ("text", "true"),
    [
        ("solids != 50 percent", True),
        ("solids == 40 percent", True),
        ("solids == 0.4", True),
        ("dry < 60 um", False),
        ("dry <= 60 um", True),
        ("dry >= 0.06 mm", True),
        ("dry > film_us", True),
        ("wet(film=dry, solids=solids) < 150 um", False),
        ("wet(dry, solids) == 2.5 * dry", True),
        ("panel - air > -6 K", True),
        ("air > 24 degC", True),
        ("panel != air", True),
        ("shares(batch, parts)['base'] == 400 mL", True),
        ("part(parts, 2) == part(parts, 3)", True),
    ],
)
def test_comparisons_are_judged_exactly(text: str, true: bool) -> None:
    comparison = read(text)
    assert check_comparison(comparison, KINDS, CATALOGUE) == ()
    assert holds(comparison, VALUES, CATALOGUE) is true


@given(st.fractions(min_value=0, max_value=100), st.fractions(min_value=0, max_value=100))
def test_the_six_signs_agree_with_one_another(a: Fraction, b: Fraction) -> None:
    um = unit_named("um")
    values = {"a": Quantity(a, um), "b": Quantity(b, um)}
    told = {sign: holds(read(f"a {sign} b"), values, {}) for sign in ("<", "<=", ">", ">=", "==")}
    assert told["<"] + told[">"] + told["=="] == 1
    assert told["<="] == (told["<"] or told["=="])
    assert told[">="] == (told[">"] or told["=="])
    assert holds(read("a != b"), values, {}) is not told["=="]


@pytest.mark.parametrize(
    ("text", "column", "words"),
    [
        ("dry", 4, "has one of < <= > >= == !="),
        ("dry = 60 um", 5, "write == for equal"),
        ("10 um < dry < 60 um", 13, "one operator only"),
        ("10 um < dry", 4, "cannot be read"),
        ("0 < dry < 60 um", 9, "one operator only"),
        ("dry < 60 umm", 10, "no unit named 'umm'"),
        ("dry < 60 %", 10, "'%' has no place"),
        ("dry < ", 6, "empty"),
        ("< dry", 1, "empty"),
        ("dry.a < wet(dry)(1)", 4, "no dotted names"),
        ("dry  <  film_us.a", 16, "no dotted names"),
        ("dry < 1e999 um", 7, "too large"),
    ],
)
def test_unreadable_comparisons_are_refused_at_their_column(
    text: str, column: int, words: str
) -> None:
    comparison, problems = parse_comparison(text)
    assert comparison is None
    assert any(p.column == column and words in p.message for p in problems)


@pytest.mark.parametrize(
    ("text", "column", "words"),
    [
        ("dry < 60 mL", 5, "cannot compare a length (um) with a volume (mL)"),
        ("panel < 3 K", 7, "cannot compare a temperature (degC) with a temperature difference (K)"),
        ("dri < 60 um", 1, "no given value named 'dri'"),
        ("dry < 2 * soldis", 11, "no given value named 'soldis'"),
    ],
)
def test_senseless_comparisons_are_refused(text: str, column: int, words: str) -> None:
    problems = check_comparison(read(text), KINDS, CATALOGUE)
    assert [(p.column, p.message) for p in problems] == [(column, problems[0].message)]
    assert words in problems[0].message


def test_sides_of_different_kinds_are_refused_at_work_too() -> None:
    with pytest.raises(FormulaRefused, match="cannot compare") as caught:
        holds(read("dry < batch"), VALUES, CATALOGUE)
    assert caught.value.column == 5
