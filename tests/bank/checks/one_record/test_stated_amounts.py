"""Amounts in short texts compare across units, ratios and words of direction."""

from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from generator.bank.checks.one_record.stated_amounts import Stated, stated_amount
from generator.quantities import UNITS


def amount(text: str) -> Stated:
    stated = stated_amount(text)
    assert stated is not None, text
    return stated


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("1 in", "25.4 mm"),
        ("2:1", "4:2"),
        ("4:1:1", "8:2:2"),
        ("50 %", "50 percent"),
        ("90 min", "1.5 h"),
        ("1,000 µm", "1 mm"),
        ("About 1 L of base", "1,000 mL of base"),
        ("18 to 22 s", "From 18 to 22 s."),
        ("32 °F", "0 °C"),
    ],
)
def test_the_same_amount_is_found_in_other_words(one: str, other: str) -> None:
    assert amount(one).same_as(amount(other))


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("1 in", "25 mm"),
        ("2:1", "1:2"),
        ("1 L of base", "1 L of hardener"),
        ("5 min", "5 s"),
        ("More than 5 s", "Less than 5 s"),
        ("10:30 in the morning", "10:45 in the morning"),
    ],
)
def test_what_differs_is_not_the_same(one: str, other: str) -> None:
    assert not amount(one).same_as(amount(other))


@pytest.mark.parametrize(
    ("one", "other", "overlap"),
    [
        ("18 to 22 s", "20 to 26 s", True),
        ("18 to 22 s", "22 to 26 s", False),
        ("Less than 40 µm", "40 to 60 µm", False),
        ("Under 2 mil", "40 to 60 µm", True),
        ("More than 5 L", "At least 4,000 mL", True),
        ("5 to 9 s", "5 to 9 mm", False),
        ("2:1", "2:1", False),
    ],
)
def test_ranges_overlap_only_where_a_value_lies_in_both(
    one: str, other: str, overlap: bool
) -> None:
    assert amount(one).overlaps(amount(other)) is overlap
    assert amount(other).overlaps(amount(one)) is overlap


@pytest.mark.parametrize("text", ["Sand it wet", "P320, then P500", "3 coats of 20 µm", "x" * 200])
def test_a_text_without_one_amount_states_none(text: str) -> None:
    assert stated_amount(text) is None


LENGTHS = sorted(u.symbol for u in UNITS.values() if u.agrees_with(UNITS["mm"]) and u.symbol)


@given(st.integers(1, 10**6), st.sampled_from(LENGTHS), st.sampled_from(LENGTHS))
def test_an_amount_is_itself_in_every_unit_of_its_kind(size: int, one: str, other: str) -> None:
    units = {unit.symbol: unit for unit in UNITS.values()}
    same = size * units[one].factor / units[other].factor
    shown = f"{float(same):.12f}"
    assume(Fraction(shown) == same)
    assert amount(f"{size} {one}").same_as(amount(f"{shown} {other}"))
