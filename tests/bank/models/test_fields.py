"""Fields: how text becomes a number, a grid, a yes or no, a source."""

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from generator.bank.models.fields import (
    MOST_VALUES,
    Rows,
    Sources,
    SourceTag,
    Text,
    ValueGrid,
    Whole,
    YesNo,
    decimal,
)


def read(kind: Any, value: object) -> Any:
    return TypeAdapter(kind).validate_python(value)


@given(st.decimals(-(10**6), 10**6, places=4))
def test_a_decimal_is_exact(value: object) -> None:
    text = f"{value:f}"
    assert decimal(text) == Fraction(text)


@pytest.mark.parametrize(
    "text", ["", "12,5", "1e3", "1/2", "0x10", "1_000", "twelve", "12 um", ".5", "5.", "--1", "٣"]
)
def test_what_is_no_plain_decimal_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="is not a number"):
        decimal(text)


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("50 to 80 step 10", ("50", "60", "70", "80")),
        ("0.1 to 0.35 step 0.1", ("0.1", "0.2", "0.3")),
        ("-5 to 5 step 5", ("-5", "0", "5")),
        ("4 to 4 step 1", ("4",)),
        ("1000 to 2000 step 1000", ("1000", "2000")),
        ("60", ("60",)),
    ],
)
def test_a_stepped_grid_lists_its_values(text: str, values: tuple[str, ...]) -> None:
    assert read(ValueGrid, text) == values


@given(st.integers(0, 500), st.integers(0, 60), st.integers(1, 40), st.sampled_from([1, 10, 1000]))
def test_a_stepped_grid_goes_from_its_start_by_its_step_and_never_past_its_end(
    first: int, span: int, step: int, scale: int
) -> None:
    low, high, width = (
        f"{value / scale:.3f}" for value in (first, first + span, step)
    )  # fmt: skip
    values = [Fraction(text) for text in read(ValueGrid, f"{low} to {high} step {width}")]
    assert values[0] == Fraction(low)
    assert all(b - a == Fraction(width) for a, b in zip(values, values[1:], strict=False))
    assert Fraction(high) - Fraction(width) < values[-1] <= Fraction(high)


def test_a_grid_has_a_most_number_of_values() -> None:
    assert len(read(ValueGrid, f"1 to {MOST_VALUES} step 1")) == MOST_VALUES
    with pytest.raises(ValidationError, match="is the most"):
        read(ValueGrid, f"1 to {MOST_VALUES + 1} step 1")
    with pytest.raises(ValidationError, match="is the most"):
        read(ValueGrid, "1 to 999999999999999999999999 step 0.000001")


@pytest.mark.parametrize(
    ("value", "said"),
    [
        ([], "no value is allowed"),
        (["5", "5"], "appears twice"),
        ("80 to 50 step 5", "never gets"),
        ("50 to 80 step 0", "never gets"),
        ("a to b step c", "is not a number"),
        (["5", ["6"]], "a piece of text is expected"),
        ({"5": "6"}, "a piece of text is expected"),
        ("", "this is empty"),
    ],
)
def test_a_grid_that_makes_no_sense_says_why(value: object, said: str) -> None:
    with pytest.raises(ValidationError, match=said):
        read(ValueGrid, value)


def test_yes_and_no_are_written_true_and_false_only() -> None:
    assert read(YesNo, "true") is True
    assert read(YesNo, "false") is False
    for word in ("yes", "no", "True", "1", "", "on"):
        with pytest.raises(ValidationError, match="neither 'true' nor 'false'"):
            read(YesNo, word)


def test_a_whole_number_has_digits_only() -> None:
    assert read(Whole, "12") == 12
    for word in ("1.5", "-1", "", "two", "1e2", ["1"]):
        with pytest.raises(ValidationError, match="is not a whole number"):
            read(Whole, word)


@pytest.mark.parametrize("word", ["²", "①", "٣", "9" * 5000])
def test_digits_that_nobody_types_as_a_number_are_refused_in_our_words(word: str) -> None:
    with pytest.raises(ValidationError, match="is not a whole number"):
        read(Whole, word)
    with pytest.raises(ValueError, match="is not a number"):
        decimal(word)


def test_text_is_trimmed_and_never_empty() -> None:
    assert read(Text, "  gel time \n") == "gel time"
    for value in ("", " \n ", ["a"], {"a": "b"}):
        with pytest.raises(ValidationError):
            read(Text, value)


def test_a_source_is_a_key_and_a_place() -> None:
    assert read(Sources, "to_1_1_8, table 4-1, note 2") == (
        SourceTag("to_1_1_8", "table 4-1, note 2"),
    )
    assert read(Sources, ["common_practice", "wmo_8,Annex 4.B"]) == (
        SourceTag("common_practice", ""),
        SourceTag("wmo_8", "Annex 4.B"),
    )


@pytest.mark.parametrize(
    ("key", "published"), [("to_1_1_8", True), ("common_practice", False), ("from_memory", False)]
)
def test_practice_and_memory_are_not_published(key: str, published: bool) -> None:
    assert SourceTag(key, "").is_published is published


@pytest.mark.parametrize("value", [[], "", "A Chart", ", page 4", "chart page 4", [["a"]]])
def test_a_source_without_a_key_is_refused(value: object) -> None:
    with pytest.raises(ValidationError):
        read(Sources, value)


def test_rows_are_lists_of_cells() -> None:
    assert read(Rows, [["80", "201"]]) == (("80", "201"),)
    for value in ("80", [["80"], "201"], [{"80": "201"}]):
        with pytest.raises(ValidationError, match="rows are lists"):
            read(Rows, value)
