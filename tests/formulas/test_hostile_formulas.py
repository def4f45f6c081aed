"""Formulas that must be refused, each at its column and before anything is worked out."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.formulas import parse_formula
from tests.some import some

SYNTAX = "formula-syntax"
HOSTILE: tuple[tuple[str, int, str], ...] = (
    # reaching into objects and running code
    ("dry.real", 4, SYNTAX),
    ("dry . __class__", 5, SYNTAX),
    ("().__class__.__bases__", 13, SYNTAX),
    ("__import__('os').system('id')", 17, SYNTAX),
    ("__import__('os')", 1, "formula-name"),
    ("import os", 1, SYNTAX),
    ("open('x').read()", 10, SYNTAX),
    ("open('x')", 6, SYNTAX),
    ('exec("1")', 6, SYNTAX),
    ("__builtins__", 1, "formula-name"),
    ("dry__dict", 1, "formula-name"),
    ("_dry", 1, "formula-name"),
    ("1 + _dry", 5, "formula-name"),
    ("lambda: 1", 1, SYNTAX),
    ("lambda dry: dry", 1, SYNTAX),
    ("wet(dry)(solids)", 1, SYNTAX),
    ("wet(dry).film", 9, SYNTAX),
    ("yield", 1, SYNTAX),
    ("await dry", 1, SYNTAX),
    # loops and collections
    ("[x for x in dry]", 1, SYNTAX),
    ("{x for x in dry}", 1, SYNTAX),
    ("{x: x for x in dry}", 1, SYNTAX),
    ("wet(x for x in dry)", 4, SYNTAX),
    ("[1, 2]", 1, SYNTAX),
    ("(1,) * 9", 1, SYNTAX),
    ("{1: 2}", 1, SYNTAX),
    ("{1}", 1, SYNTAX),
    ("dry, solids", 1, SYNTAX),
    ("dry[0]", 1, SYNTAX),
    ("wet(dry)[0]", 10, SYNTAX),
    ("wet(dry)[1:2]", 10, SYNTAX),
    ("wet(dry)['a']['b']", 1, SYNTAX),
    ("wet(dry)[b'a']", 10, SYNTAX),
    # texts
    ("'a' * 9", 1, SYNTAX),
    ("f'{dry}'", 1, SYNTAX),
    ("f'{dry:>99999999}'", 1, SYNTAX),
    ("b'a'", 1, SYNTAX),
    ("'%1000000000d' % 1", 2, SYNTAX),
    ("dry + 'a'", 7, SYNTAX),
    # setting, choosing, comparing
    ("(dry := 1)", 2, SYNTAX),
    ("dry = 1", 5, SYNTAX),
    ("dry if solids else 1", 5, SYNTAX),
    ("dry and solids", 5, SYNTAX),
    ("not dry", 1, SYNTAX),
    ("dry < solids", 5, SYNTAX),
    ("(dry) == solids", 7, SYNTAX),
    ("dry in solids", 5, SYNTAX),
    # signs that are not ours
    ("+dry", 1, SYNTAX),
    ("~dry", 1, SYNTAX),
    ("dry // 2", 5, SYNTAX),
    ("dry % 2", 5, SYNTAX),
    ("dry ^ 2", 5, SYNTAX),
    ("dry << 9", 5, SYNTAX),
    ("dry @ 2", 5, SYNTAX),
    ("dry # note", 5, SYNTAX),
    ("dry; solids", 4, SYNTAX),
    ("dry \\", 5, SYNTAX),
    ("dry\t+ 1", 4, SYNTAX),
    ("dry\x00", 4, SYNTAX),
    # starred inputs
    ("wet(*dry)", 5, SYNTAX),
    ("wet(**dry)", 5, SYNTAX),
    # numbers that are none of ours, or too big
    ("1e999", 1, "formula-size"),
    ("1e-999", 1, "formula-size"),
    ("2 * 1e99999999999", 5, "formula-size"),
    ("0x10", 1, SYNTAX),
    ("0b1", 1, SYNTAX),
    ("1_000", 1, SYNTAX),
    ("2j", 1, SYNTAX),
    ("True", 1, SYNTAX),
    ("None", 1, SYNTAX),
    ("...", 1, SYNTAX),
    ("010", 1, SYNTAX),
    # powers
    ("9**9**9", 4, "formula-power"),
    ("9**999", 4, "formula-power"),
    ("dry**7", 6, "formula-power"),
    ("dry**-7", 6, "formula-power"),
    ("dry**0.5", 6, "formula-power"),
    ("2**dry", 4, "formula-power"),
    ("**".join("9" * 100), 4, "formula-power"),
    # look-alikes
    ("\u0430rea", 1, SYNTAX),
    ("dr\uff59", 3, SYNTAX),
    ("dry \u2212 1", 5, SYNTAX),
    ("dry \u00d7 2", 5, SYNTAX),
    ("dry\u00b2", 4, SYNTAX),
    ("dry\u00a0+ 1", 4, SYNTAX),
    ("\u0661", 1, SYNTAX),
    # size
    ("(" * 300 + "1" + ")" * 300, 501, "formula-size"),
    ("(" * 245 + "1" + ")" * 245, 41, "formula-size"),
    ("[" * 41, 41, "formula-size"),
    ("-" * 499 + "1", 41, "formula-size"),
    ("1" + "+1" * 249, 418, "formula-size"),
    ("wet(" + "1," * 200 + "1)", 403, "formula-size"),
    ("a" * 501, 501, "formula-size"),
    ("'" + "a" * 10**6 + "'", 501, "formula-size"),
    # nothing, or broken off
    ("", 1, SYNTAX),
    (" \n ", 1, SYNTAX),
    ("dry +", 6, SYNTAX),
    ("(dry", 1, SYNTAX),
    ("dry)", 4, SYNTAX),
    ("dry solids", 5, SYNTAX),
    ("1if 1 else 2", 1, SYNTAX),
)


@pytest.mark.parametrize(("text", "column", "rule"), HOSTILE)
def test_a_hostile_formula_is_refused_at_its_column(text: str, column: int, rule: str) -> None:
    formula, problems = parse_formula(text)
    assert formula is None
    assert (problems[0].column, problems[0].rule) == (column, rule)


@pytest.mark.parametrize("text", [text for text, _, _ in HOSTILE])
def test_refusals_speak_in_one_plain_line(text: str) -> None:
    for problem in some(parse_formula(text)[1]):
        assert problem.message
        assert "\n" not in problem.message + problem.hint
        assert len(problem.message) < 120
        assert not any(word in problem.message for word in ("ast", "Python", "Error", "None of"))


def test_a_caret_is_answered_with_the_power_sign() -> None:
    assert parse_formula("dry ^ 2")[1][0].hint == "write ** for a power"


def test_every_problem_of_a_formula_is_told_once() -> None:
    problems = parse_formula("dry.a + solids[0] * 2**99 - wet('x')")[1]
    assert [problem.column for problem in problems] == [4, 9, 24, 33]


@given(st.text(max_size=60))
def test_any_text_ends_in_a_formula_or_in_problems_with_columns(text: str) -> None:
    formula, problems = parse_formula(text)
    assert (formula is None) == bool(problems)
    assert all(1 <= problem.column <= len(text) + 1 for problem in problems)


@given(st.text(alphabet="ab1.e+-*/()[]'\",= _:{}", max_size=40))
def test_any_text_of_formula_signs_ends_in_a_formula_or_in_problems(text: str) -> None:
    formula, problems = parse_formula(text)
    assert (formula is None) == bool(problems)
    assert all(1 <= problem.column <= len(text) + 1 for problem in problems)
