"""What a formula may say, and where its parts stand."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.formulas import Formula, evaluate, parse_formula
from generator.formulas.syntax import CallNode, OperationNode, walk
from tests.formulas.toy_relations import CATALOGUE


def read(text: str) -> Formula:
    """Read a formula that must be good."""
    formula, problems = parse_formula(text)
    assert problems == ()
    assert formula is not None
    return formula


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("0.1 + 0.2", "0.3"),
        ("1e3", "1000"),
        ("2.5E-2", "0.025"),
        (".5", "0.5"),
        ("5.", "5"),
        ("7 / 3", "7/3"),
        ("2 + 3 * 4", "14"),
        ("(2 + 3) * 4", "20"),
        ("2 - 3 - 4", "-5"),
        ("-2**2", "-4"),
        ("(-2)**2", "4"),
        ("2**-2", "1/4"),
        ("2**6", "64"),
        ("(1)\n+ (1)", "2"),
        ("  3", "3"),
        ("0.30000000000000000001", "0.30000000000000000001"),
    ],
)
def test_numbers_are_exact_and_signs_bind_as_in_school(text: str, value: str) -> None:
    answer = evaluate(read(text), {}, CATALOGUE)
    assert answer.number == Fraction(value)


@given(st.decimals(min_value=0, max_value=10**9, places=6))
def test_a_number_as_text_means_exactly_itself(number: object) -> None:
    assert evaluate(read(str(number)), {}, {}).number == Fraction(str(number))


def test_a_formula_lists_the_names_and_relations_it_uses() -> None:
    formula = read("wet(dry, solids) + wet(film=dry, solids=solids) * shares(batch, parts)['base']")
    assert formula.names == ("dry", "solids", "batch", "parts")
    assert formula.relations == ("wet", "shares")


def test_columns_count_characters_of_the_whole_text() -> None:
    formula = read("  (dry)  -\n wet(dry, solids=solids)")
    nodes = list(walk(formula.root))
    sign = next(node for node in nodes if isinstance(node, OperationNode))
    call = next(node for node in nodes if isinstance(node, CallNode))
    assert (sign.column, call.column) == (10, 13)
    assert [argument.column for argument in call.arguments] == [17, 22]


def test_a_picked_result_keeps_its_name_and_column() -> None:
    root = read("shares(batch, parts)['hardener']").root
    assert isinstance(root, CallNode)
    assert (root.result, root.result_column) == ("hardener", 22)
