"""Numbers as text, and text as numbers."""

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.quantities import (
    UNITS,
    number_text,
    quantity_text,
    read_number,
    round_to_step,
    unit_named,
)

SMALL = st.fractions(min_value=-(10**9), max_value=10**9, max_denominator=10**9)
STEPS = st.sampled_from([Fraction(s) for s in ("0.001", "0.05", "0.1", "0.25", "1", "5")])


@pytest.mark.parametrize(
    ("value", "step", "text"),
    [
        ("128", None, "128"),
        ("0.35", None, "0.35"),
        ("-0.5", None, "-0.5"),
        ("0.0000001", None, "0.0000001"),
        ("12000000", None, "12000000"),
        ("385/3", None, "385/3"),
        ("2", "0.1", "2.0"),
        ("128.33", "1", "128"),
        ("2.675", "0.01", "2.68"),
        ("-0.004", "0.01", "0.00"),
        ("127", "5", "125"),
    ],
)
def test_numbers_are_written_plainly(value: str, step: str | None, text: str) -> None:
    assert number_text(Fraction(value), None if step is None else Fraction(step)) == text


def test_a_step_with_endless_decimals_is_refused() -> None:
    with pytest.raises(ValueError, match="decimals end"):
        number_text(Fraction(1), Fraction(1, 3))


@pytest.mark.parametrize(
    ("number", "unit", "text"),
    [
        ("60", "um", "60\u00a0µm"),
        ("60", "percent", "60\u00a0%"),
        ("20", "degC", "20\u00a0°C"),
        ("3", "coats", "3\u00a0coats"),
        ("1", "coats", "1\u00a0coat"),
        ("1.5", "one", "1.5"),
        ("9", "degF_diff", "9\u00a0°F"),
    ],
)
def test_quantities_keep_number_and_symbol_on_one_line(number: str, unit: str, text: str) -> None:
    assert quantity_text(Fraction(number), unit_named(unit)) == text


def test_every_unit_has_a_symbol_but_the_bare_number_and_money() -> None:
    assert {name for name, unit in UNITS.items() if not unit.symbol} == {"one", "money"}


@given(SMALL, STEPS)
def test_written_numbers_are_plain_decimals_that_read_back(value: Fraction, step: Fraction) -> None:
    text = number_text(value, step)
    assert re.fullmatch(r"-?[0-9]+(\.[0-9]+)?", text)
    assert read_number(text) == round_to_step(value, step, "half")


@given(SMALL)
def test_an_exactly_written_number_reads_back_as_itself(value: Fraction) -> None:
    assert read_number(number_text(value)) == value


@given(SMALL, STEPS)
def test_a_decimal_comma_reads_as_a_decimal_point(value: Fraction, step: Fraction) -> None:
    text = number_text(value, step)
    could_be_thousands = re.fullmatch(r"-?[1-9][0-9]{0,2}\.[0-9]{3}", text)
    expected = None if could_be_thousands else read_number(text)
    assert read_number(text.replace(".", ",")) == expected


@given(st.text(max_size=80))
def test_any_text_is_read_or_left_alone(text: str) -> None:
    value = read_number(text)
    assert value is None or any(character in "0123456789½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞" for character in text)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("12.5", "12.5"),
        ("12,5", "12.5"),
        ("1 1/2", "1.5"),
        ("3/4", "0.75"),
        ("½", "0.5"),
        ("1½", "1.5"),
        ("1 ½", "1.5"),
        ("1\u00a01\u20442", "1.5"),
        ("-½", "-0.5"),
        ("\u22125", "-5"),
        ("+ 7", "7"),
        (" 0,125 ", "0.125"),
        (".5", "0.5"),
        ("5.", "5"),
        ("1.234", "1.234"),
        ("007", "7"),
    ],
)
def test_the_ways_people_write_numbers_are_read(text: str, value: str) -> None:
    assert read_number(text) == Fraction(value)


@pytest.mark.parametrize(
    "text",
    ["", " ", "1,234", "1,234.5", "1.234,5", "1,234,567", "1 234", "1e3", "12 µm", "1/0", "½½"]
    + ["--5", "1.2.3", "1 1/2/3", "1.5 1/2", ".", ",", "nan", "inf", "0x10", "1_000", "٣", "²"]
    + ["9" * 61, "-"],
)
def test_unclear_numbers_are_not_guessed(text: str) -> None:
    assert read_number(text) is None
