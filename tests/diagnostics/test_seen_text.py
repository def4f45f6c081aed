"""Signs that nobody sees are told at their line and column; all others are let through."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import odd_signs

PLAIN = st.text(st.characters(categories=("L", "N", "P", "S", "Zs"), max_codepoint=0xDFFF))


@pytest.mark.parametrize(
    "sign", ["\0", "\v", "\f", "\u0085", "\u00ad", "\u200b", "\u2028", "\ufeff"]
)
def test_a_sign_is_told_where_it_stands(sign: str) -> None:
    (problem,) = odd_signs(f"one\ntwo {sign} three\n", "a.md")
    assert str(problem.place) == "a.md:2:5"
    assert f"U+{ord(sign):04X}" in problem.message


def test_each_one_is_told_by_its_name() -> None:
    said = [problem.message for problem in odd_signs("a\u00adb\vc", "a.md")]
    assert said == [
        "there is a character here that nobody sees: U+00AD, soft hyphen",
        "there is a character here that nobody sees: U+000B, vertical tab",
    ]


@given(PLAIN)
def test_letters_numbers_and_signs_are_let_through(text: str) -> None:
    assert list(odd_signs(f"{text}\n\t{text}\r\n", "a.md")) == []


def test_the_mark_at_the_start_of_a_file_does_no_harm() -> None:
    assert list(odd_signs("\ufeffa\n", "a.md")) == []
