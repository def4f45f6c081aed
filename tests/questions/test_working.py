"""The working: equations, the drawn numbers put in, the result, and how it was rounded."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.bank.numbers.numeric_solution import all_sets, solve
from generator.formulas import parse_formula
from generator.quantities import Quantity, Ratio, unit_named
from generator.questions.drawing.numeric import prepared
from generator.questions.drawing.working import _Writer, rounding_line, value_text, working_lines
from generator.refinishing.catalogue import CATALOGUE
from tests.questions.small_bank import PASTE, WET_FILM, bank_of, items

NUMBERS = {
    "a": Fraction(2),
    "b": Fraction(3),
    "c": Fraction(5),
    "d": Fraction(7),
}
VALUES = {name: Quantity(number, unit_named("one")) for name, number in NUMBERS.items()}


def prepared_item(folder, body):
    bank = bank_of(folder, {"items/film_build/films.yml": items(one=body)})
    return prepared(bank.items["film_build/films/one"])


def lines(item, **chosen):
    values = next(
        values
        for values in all_sets(item)
        if all(values[name].number == number for name, number in chosen.items())
    )
    return working_lines(item, values, solve(item, values, CATALOGUE).exact)


def test_one_relation_is_worked_from_equation_to_key(tmp_path):
    assert lines(prepared_item(tmp_path, WET_FILM), dry=60, volume_solids=45)[1:] == (
        "wet film = 60\u00a0µm × 100 % ÷ 45\u00a0%",
        "wet film ≈ 133.33\u00a0µm",
        "Rounded (half up) to 1\u00a0µm: 133\u00a0µm",
    )


def test_an_exact_answer_is_not_said_to_be_rounded(tmp_path):
    worked = lines(prepared_item(tmp_path, WET_FILM), dry=60, volume_solids=40)
    assert worked[-2:] == ("wet film = 150\u00a0µm", "Answer: 150\u00a0µm")


def test_a_sum_over_relations_shows_each_relation_and_then_the_sum(tmp_path):
    body = WET_FILM.replace(
        "formula: wet_film(dry, volume_solids)",
        "formula: wet_film(dry, volume_solids) - 2 * dry",
    )
    worked = lines(prepared_item(tmp_path, body), dry=60, volume_solids=40)
    assert worked[-2:] == ("150\u00a0µm − 2 × 60\u00a0µm = 30\u00a0µm", "Answer: 30\u00a0µm")
    assert worked[-3] == "wet film = 150\u00a0µm"


def test_a_relation_inside_a_relation_is_worked_first(tmp_path):
    body = WET_FILM.replace(
        "formula: wet_film(dry, volume_solids)",
        "formula: wet_film(dry_film(dry, 90 percent), volume_solids)",
    ).replace("90 percent", "volume_solids")
    worked = lines(prepared_item(tmp_path, body), dry=60, volume_solids=40)
    assert worked[2] == "dry film = 24\u00a0µm"
    assert worked[-2] == "wet film = 60\u00a0µm"


def test_a_value_in_another_unit_is_converted_before_it_is_put_in(tmp_path):
    body = WET_FILM.replace("{unit: um, values: 50 to 80 step 5}", "{unit: mil, values: [2]}")
    worked = lines(prepared_item(tmp_path, body), dry=2, volume_solids=40)
    assert worked[1].startswith("wet film = 50.8\u00a0µm")
    assert worked[-1] == "Answer: 127\u00a0µm"


def test_rounding_up_and_down_are_named(tmp_path):
    # 150 g at 3 % are 4.5 g
    down = prepared_item(tmp_path / "down", PASTE.replace("0.1\n", "1\n  rounding: down\n"))
    up = prepared_item(tmp_path / "up", PASTE.replace("0.1\n", "1\n  rounding: up\n"))
    assert lines(down, filler=150, share=3)[-1] == "Rounded down to 1\u00a0g: 4\u00a0g"
    assert lines(up, filler=150, share=3)[-1] == "Rounded up to 1\u00a0g: 5\u00a0g"
    assert rounding_line(down, Fraction(4)) == "Answer: 4\u00a0g"


def test_values_read_as_a_learner_writes_them():
    assert value_text(Quantity(Fraction(1, 2), unit_named("L"))) == "0.5\u00a0L"
    assert value_text(Quantity(Fraction(40), unit_named("percent"))) == "40\u00a0%"
    assert value_text(Ratio((Fraction(4), Fraction(1), Fraction(1, 2)))) == "4:1:0.5"


def written(text):
    formula, problems = parse_formula(text)
    assert problems == ()
    return _Writer(VALUES).text(formula.root)


@pytest.mark.parametrize(
    ("formula", "shown"),
    [
        ("a + b * c", "2 + 3 × 5"),
        ("(a + b) * c", "(2 + 3) × 5"),
        ("a - (b - c)", "2 − (3 − 5)"),
        ("a - b - c", "2 − 3 − 5"),
        ("a / (b * c)", "2 ÷ (3 × 5)"),
        ("a / (b / c)", "2 ÷ (3 ÷ 5)"),
        ("a / b / c", "2 ÷ 3 ÷ 5"),
        ("a / (b + c)", "2 ÷ (3 + 5)"),
        ("a / ((b + c) * d)", "2 ÷ ((3 + 5) × 7)"),
        ("a * (b / c)", "2 × 3 ÷ 5"),
        ("(a + b) ** 2", "(2 + 3)^2"),
        ("-(a + b)", "−(2 + 3)"),
    ],
)
def test_brackets_stand_where_a_reader_needs_them(formula, shown):
    assert written(formula) == shown


_SIGNS = {"×": "*", "÷": "/", "−": "-", "^": "**"}
leaves = st.sampled_from([*NUMBERS, "4", "11"])
formulas = st.recursive(
    leaves,
    lambda inner: st.builds(
        lambda left, sign, right: f"({left}) {sign} ({right})",
        inner,
        st.sampled_from("+-*/"),
        inner,
    ),
    max_leaves=6,
)


@given(formulas)
def test_the_shown_line_means_what_the_formula_means(formula):
    shown = written(formula)
    for sign, plain in _SIGNS.items():
        shown = shown.replace(sign, plain)

    def value(text):
        exact = "".join(f"Fraction({part})" if part.isdigit() else part for part in pieces(text))
        try:
            return eval(exact, {"Fraction": Fraction, **NUMBERS})
        except ZeroDivisionError:
            return None

    assert value(shown) == value(formula)


def pieces(text):
    """Split digits from signs and names."""
    piece = ""
    for character in text:
        if piece and piece.isdigit() != character.isdigit():
            yield piece
            piece = ""
        piece += character
    yield piece
