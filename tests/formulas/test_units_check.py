"""What the unit check lets through, what it refuses, and in which words."""

import pytest

from generator.formulas import FormulaProblem, UnitResult, check_units, parse_formula
from generator.quantities import unit_named
from tests.formulas.toy_relations import CATALOGUE, KINDS


def checked(text: str) -> tuple[UnitResult | None, tuple[FormulaProblem, ...]]:
    """Read a formula that must be readable, and check it."""
    formula, problems = parse_formula(text)
    assert problems == ()
    assert formula is not None
    return check_units(formula, KINDS, CATALOGUE)


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        ("dry", "mm"),
        ("dry + film_us", "um"),
        ("-dry * 2", "um"),
        ("dry / film_us", "one"),
        ("solids + 1", "percent"),
        ("coats * solids - 1", "one"),
        ("area * dry", "L"),
        ("area / batch", "m2/L"),
        ("batch / area", "um"),
        ("film_us**2", "in2"),
        ("dry**3", "mL"),
        ("1 / dry**2 * area", "one"),
        ("dry**0", "one"),
        ("panel", "degF"),
        ("panel + rise", "degC"),
        ("rise + panel", "degC"),
        ("panel - rise", "degC"),
        ("panel - air", "K"),
        ("rise * 2", "degF_diff"),
        ("wet(dry, solids)", "um"),
        ("wet(dry, solids)['wet']", "um"),
        ("wet(thinner=0.1, solids=solids, film=film_us)", "um"),
        ("wet(dry, solids) * area", "mL"),
        ("shares(batch, parts)['base']", "L"),
        ("margin(panel, air)", "K"),
        ("mean_film(dry, film_us, 2 * dry)", "um"),
        ("part(parts, 1) / parts_total(parts)", "one"),
        ("batch * part(parts, 2)", "L"),
    ],
)
def test_sensible_formulas_give_their_kind_of_unit(text: str, unit: str) -> None:
    result, problems = checked(text)
    assert problems == ()
    assert result is not None
    assert result.agrees_with(unit_named(unit))


@pytest.mark.parametrize(
    ("text", "column", "rule", "words"),
    [
        ("dry + batch", 5, "formula-units", "cannot add a volume (L) to a length (um)"),
        ("dry - batch", 5, "formula-units", "cannot take a volume (L) from a length (um)"),
        ("(dry) + 1", 7, "formula-units", "cannot add a bare number to a length (um)"),
        ("panel + air", 7, "formula-units", "two temperatures cannot be added"),
        ("rise - panel", 6, "formula-units", "cannot take a temperature (degC) from"),
        ("panel * 2", 7, "formula-units", "cannot be multiplied"),
        ("2 / panel", 3, "formula-units", "cannot be divided"),
        ("panel**2", 6, "formula-units", "cannot be raised to a power"),
        ("-panel", 1, "formula-units", "cannot be made negative"),
        ("panel + 3", 7, "formula-units", "cannot add a bare number to a temperature (degC)"),
        ("parts", 1, "formula-units", "a mixing ratio is not a single number"),
        ("dry * parts", 7, "formula-units", "a mixing ratio is not a single number"),
        (
            "wet(batch, solids)",
            5,
            "formula-units",
            "'film' of wet takes a length (um), but batch is a volume (L)",
        ),
        (
            "wet(dry, solids=dry)",
            10,
            "formula-units",
            "'solids' of wet takes a bare number (percent), but dry is a length (um)",
        ),
        (
            "wet(wet(dry, solids) * area, solids)",
            5,
            "formula-units",
            "'film' of wet takes a length (um), but this is a volume",
        ),
        ("margin(rise, panel)", 8, "formula-units", "but rise is a temperature difference (K)"),
        ("shares(batch, dry)['base']", 15, "formula-units", "takes a mixing ratio, but dry is"),
        ("wet(parts, solids)", 5, "formula-units", "but parts is a mixing ratio"),
        ("part(dry, 1)", 6, "formula-units", "part takes a ratio, but dry is a length (um)"),
        ("wet(dry)", 1, "formula-call", "wet also needs 'solids'"),
        ("wet()", 1, "formula-call", "wet also needs 'film' and 'solids'"),
        ("wet(dry, solids, 0, 1)", 21, "formula-call", "takes 3 inputs, and this is one too many"),
        ("wet(dry, solid=solids)", 10, "formula-call", "wet has no input named 'solid'"),
        ("wet(dry, solids, film=dry)", 18, "formula-call", "'film' of wet is given twice"),
        ("wet(film=dry, film=dry)", 15, "formula-call", "'film' of wet is given twice"),
        ("mean_film()", 1, "formula-call", "mean_film also needs 'films'"),
        ("shares(batch, parts)", 1, "formula-call", "several results, and none is picked"),
        ("shares(batch, parts)['bass']", 22, "formula-call", "no result named 'bass'"),
        ("part(parts)", 1, "formula-call", "part takes a ratio and the number of the part"),
        ("part(parts, dry)", 13, "formula-call", "the number of a part is written as 1, 2 or 3"),
        ("part(parts, 0)", 13, "formula-call", "the number of a part is written as 1, 2 or 3"),
        ("part(2 * dry, 1)", 6, "formula-call", "part takes the name of a ratio"),
        ("parts_total(parts, 1)", 1, "formula-call", "parts_total takes one ratio"),
        ("parts_total(parts)['x']", 20, "formula-call", "has one result, so none is picked"),
        ("soldis", 1, "formula-name", "there is no given value named 'soldis'"),
        ("wett(dry)", 1, "formula-name", "there is no relation named 'wett'"),
        ("dry(2)", 1, "formula-name", "'dry' is a given value and takes no inputs"),
        ("2 * wet", 5, "formula-name", "'wet' is a relation, and its inputs are missing"),
    ],
)
def test_senseless_formulas_are_refused_once_at_their_column(
    text: str, column: int, rule: str, words: str
) -> None:
    result, problems = checked(text)
    assert result is None
    assert [(p.column, p.rule) for p in problems] == [(column, rule)]
    assert words in problems[0].message


@pytest.mark.parametrize(
    ("text", "hint"),
    [
        ("soldis * 2", "did you mean 'solids'?"),
        ("wett(dry, solids)", "did you mean 'wet'?"),
        ("wet(dry, solid=solids)", "did you mean 'solids'?"),
        ("shares(batch, parts)['bass']", "did you mean 'base'?"),
        ("shares(batch, parts)['zzz']", "the results are base, hardener"),
        ("shares(batch, parts)", "write shares(...)['base']; the results are base, hardener"),
        ("wet(dry, solids, 0, 1)", "it takes film, solids, thinner"),
    ],
)
def test_a_refusal_offers_the_nearest_known_name(text: str, hint: str) -> None:
    assert checked(text)[1][0].hint == hint


def test_all_problems_are_told_and_none_only_follows_from_another() -> None:
    # an unknown name has no unit, so the sum round it stays silent
    problems = checked("soldis + dry - wet(dri, area) + mean_flim(dry)")[1]
    assert [(p.column, p.rule) for p in problems] == [
        (1, "formula-name"),
        (20, "formula-name"),
        (25, "formula-units"),
        (33, "formula-name"),
    ]


def test_inputs_of_an_unknown_relation_are_still_checked() -> None:
    problems = checked("wett(dri, dry + batch)")[1]
    assert [p.column for p in problems] == [1, 6, 15]
