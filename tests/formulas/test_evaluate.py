"""Working formulas out exactly."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import OutsideValidity
from generator.formulas import FormulaRefused, check_units, evaluate, parse_formula
from generator.quantities import Quantity, Ratio, unit_named
from tests.formulas.toy_relations import CATALOGUE, KINDS, VALUES


def worked(text: str, **values: Quantity | Ratio) -> Quantity:
    """Read a formula that must be readable, and work it out."""
    formula, problems = parse_formula(text)
    assert problems == ()
    assert formula is not None
    return evaluate(formula, {**VALUES, **values}, CATALOGUE)


@pytest.mark.parametrize(
    ("text", "unit", "number"),
    [
        ("dry + film_us", "um", "110.8"),
        ("film_us", "um", "50.8"),
        ("1 - solids", "percent", "60"),
        ("area * dry * coats", "mL", "180"),
        ("area / batch", "m2/L", "2.5"),
        ("dry**2 / film_us", "um", "9000/127"),
        ("panel - air", "K", "-5"),
        ("panel + rise", "degF", "73.4"),
        ("rise + panel", "degC", "23"),
        ("panel - rise", "degC", "17"),
        ("wet(dry, solids)", "um", "150"),
        ("wet(dry, solids, 0.1)", "um", "165"),
        ("wet(film=film_us, solids=solids)", "mil", "5"),
        ("shares(batch, parts)['base']", "mL", "400"),
        ("shares(total=batch, parts=parts)['hardener']", "mL", "100"),
        ("margin(panel, air)", "K", "-5"),
        ("mean_film(dry, film_us, 10 * dry)", "um", "236.93333333333333333333"),
        ("part(parts, 1) / parts_total(parts)", "one", "2/3"),
        ("-coats", "coats", "-2"),
    ],
)
def test_formulas_come_out_exactly(text: str, unit: str, number: str) -> None:
    answer = worked(text).to(unit_named(unit)).number
    assert abs(answer - Fraction(number)) < Fraction(1, 10**18)


def test_a_wet_film_worked_by_hand_comes_out_exactly() -> None:
    # common practice: wet = dry x (100 + thinner) / volume solids, worked by hand
    values = {
        "dry": Quantity(Fraction(70), unit_named("um")),
        "solids": Quantity(Fraction(60), unit_named("percent")),
    }
    answer = worked("wet(dry, solids, 0.1)", **values)
    assert answer.to(unit_named("um")).number == Fraction(385, 3)


@pytest.mark.parametrize(
    ("text", "column", "words"),
    [
        ("dry / (solids - 0.4)", 5, "divides by zero"),
        ("(solids - 0.4)**-1", 15, "divides by zero"),
        ("part(parts, 4)", 13, "the ratio has 3 parts"),
        ("dry + batch", 5, "cannot add"),
        ("missing", 1, "no given value named 'missing'"),
        ("dri(1)", 1, "no relation named 'dri'"),
        ("parts", 1, "a mixing ratio is not a single number"),
        ("wet(parts, solids)", 5, "a mixing ratio is not a single number"),
        ("shares(batch, dry)['base']", 15, "must be a mixing ratio"),
        ("wet(batch, solids)", 5, "cannot turn a volume into a length (um)"),
        ("wet(dry)", 1, "also needs 'solids'"),
        ("shares(batch, parts)", 1, "several results"),
        ("part(dry, 1)", 6, "part takes a ratio"),
        ("parts_total()", 1, "takes one ratio"),
    ],
)
def test_numbers_that_cannot_be_worked_are_refused_at_their_column(
    text: str, column: int, words: str
) -> None:
    with pytest.raises(FormulaRefused, match=".") as caught:
        worked(text)
    assert words in str(caught.value)
    assert caught.value.column == column


def test_numbers_stop_growing_at_the_cap() -> None:
    # six sixth powers of a ten-digit number pass 4096 binary digits
    with pytest.raises(FormulaRefused, match="past 4096 binary digits") as caught:
        worked("((((9999999999**6)**6)**6)**6)**6")
    assert caught.value.column == 23
    with pytest.raises(FormulaRefused, match="past 4096 binary digits"):
        worked("((((1e-99**6)**6)**6)**6)**6")


def test_a_relation_outside_its_range_speaks_for_itself() -> None:
    with pytest.raises(OutsideValidity, match="volume solids"):
        worked("wet(dry, 0 * solids)")


@st.composite
def formula_texts(draw: st.DrawFn, depth: int = 3) -> str:
    """Draw a readable formula over the toy names."""
    if depth == 0 or draw(st.booleans()):
        return draw(st.sampled_from([*KINDS, "2", "0.5", "0"]))
    left, right = draw(formula_texts(depth - 1)), draw(formula_texts(depth - 1))
    shape = draw(
        st.sampled_from(["({} + {})", "({} - {})", "({} * {})", "({} / {})", "wet({}, {})"])
    )
    return shape.format(left, right)


@given(formula_texts())
def test_the_unit_check_foretells_the_unit_of_every_answer(text: str) -> None:
    formula, _ = parse_formula(text)
    assert formula is not None
    result, problems = check_units(formula, KINDS, CATALOGUE)
    assert (result is None) == bool(problems)
    try:
        answer = evaluate(formula, VALUES, CATALOGUE)
    except OutsideValidity:
        return
    except FormulaRefused as error:
        assert problems or "divides by zero" in str(error)
        return
    assert result is not None
    assert result.agrees_with(answer.unit)
