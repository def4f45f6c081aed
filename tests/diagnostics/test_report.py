"""Reports: text with the source line and a caret, JSON, and annotations for a build service."""

import json
import re

from hypothesis import given
from hypothesis import strategies as st

from generator.diagnostics import (
    Place,
    Problem,
    as_annotations,
    as_json,
    as_records,
    as_text,
)

FORMULA = Problem(
    Place("question_bank/items/a.yml", 3, 14),
    "error",
    "formula-name",
    "there is no relation named 'wet_flim'",
    "did you mean 'wet_film'?",
)
NOTE = Problem(Place("sources.yml", 1, 1), "note", "source-without-use", "nothing cites 'chart'")


def lines_of(text: str) -> dict[tuple[str, int], str]:
    """Return one line of one file for reading."""
    return {("question_bank/items/a.yml", 3): text}


def shown(problem: Problem, source: str) -> list[str]:
    return as_text([problem], lambda path, line: lines_of(source).get((path, line), "")).split("\n")


def test_text_shows_the_message_its_line_a_caret_and_the_hint() -> None:
    assert shown(FORMULA, "  - formula: wet_flim(dry)") == [
        "question_bank/items/a.yml:3:14: error: there is no relation named 'wet_flim' "
        "[formula-name]",
        "      - formula: wet_flim(dry)",
        "                 ^",
        "    hint: did you mean 'wet_film'?",
    ]


def test_the_caret_stands_under_its_character_after_signs_outside_ascii() -> None:
    source = "µµµ — {x: µ²}"
    for column in range(1, len(source) + 1):
        place = Place("question_bank/items/a.yml", 3, column)
        problem = Problem(place, "error", "r", "m")
        _, line, caret = shown(problem, source)
        assert caret.index("^") == line.index(source) + column - 1


def test_the_caret_follows_tabs_as_a_terminal_draws_them() -> None:
    place = Place("question_bank/items/a.yml", 3, 3)
    _, line, caret = shown(Problem(place, "error", "yaml-tab", "m"), "\tx: 1")
    assert line.expandtabs().index("x") + 1 == caret.expandtabs().index("^")


def test_a_caret_past_the_end_of_the_line_still_stands() -> None:
    place = Place("question_bank/items/a.yml", 3, 40)
    assert shown(Problem(place, "error", "r", "m"), "short")[-1].endswith("^")


def test_a_problem_without_a_readable_line_is_one_line() -> None:
    assert shown(NOTE, "whatever") == [
        "sources.yml:1:1: note: nothing cites 'chart' [source-without-use]"
    ]
    assert len(shown(Problem(FORMULA.place, "error", "r", "m"), "   ")) == 1


def test_no_problems_are_an_empty_text() -> None:
    assert as_text([], lambda path, line: "never read") == ""
    assert as_annotations([]) == ""


def test_records_hold_every_field_of_a_problem() -> None:
    assert as_records([FORMULA]) == [
        {
            "path": "question_bank/items/a.yml",
            "line": 3,
            "column": 14,
            "severity": "error",
            "rule": "formula-name",
            "message": "there is no relation named 'wet_flim'",
            "hint": "did you mean 'wet_film'?",
        }
    ]


def test_json_joins_figures_and_problems_and_keeps_signs_readable() -> None:
    text = as_json([NOTE], {"counts": {"items": 3}, "coverage": {"film in µm": 1}})
    document = json.loads(text)
    assert document["counts"] == {"items": 3}
    assert document["problems"] == as_records([NOTE])
    assert "µm" in text


def test_annotations_name_gravity_file_line_column_and_rule() -> None:
    warning = Problem(Place("a.yml", 2, 9), "warning", "too-much-reading", "61 words")
    assert as_annotations([FORMULA, warning, NOTE]).split("\n") == [
        "::error file=question_bank/items/a.yml,line=3,col=14,title=formula-name::"
        "there is no relation named 'wet_flim' (did you mean 'wet_film'?)",
        "::warning file=a.yml,line=2,col=9,title=too-much-reading::61 words",
        "::notice file=sources.yml,line=1,col=1,title=source-without-use::nothing cites 'chart'",
    ]


def test_annotations_escape_what_would_end_a_value_or_a_line() -> None:
    problem = Problem(Place("50%,a:b.yml", 1, 1), "error", "r", "100 %\r\nover: two, lines")
    assert as_annotations([problem]) == (
        "::error file=50%25%2Ca%3Ab.yml,line=1,col=1,title=r::100 %25%0D%0Aover: two, lines"
    )


@given(path=st.text(max_size=12), message=st.text(max_size=12), hint=st.text(max_size=6))
def test_an_annotation_is_one_line_that_can_be_taken_apart(
    path: str, message: str, hint: str
) -> None:
    line = as_annotations([Problem(Place(path, 4, 2), "error", "some-rule", message, hint)])
    assert "\n" not in line
    assert "\r" not in line
    match = re.fullmatch(r"::error file=([^,:]*),line=4,col=2,title=some-rule::(.*)", line, re.S)
    assert match is not None
    back = match[1]
    for code, sign in (("%3A", ":"), ("%2C", ","), ("%0A", "\n"), ("%0D", "\r"), ("%25", "%")):
        back = back.replace(code, sign)
    assert back == path
