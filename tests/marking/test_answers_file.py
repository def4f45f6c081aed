"""The file that a page saves is read as it was saved, and nothing else is taken for one."""

import json
import time
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.assembly.forms.form_identity import LENGTH, SIGNS
from generator.marking import (
    ISSUED_RULES,
    Awarded,
    Chosen,
    Illegible,
    Matched,
    Ordered,
    Response,
    Typed,
    response_as_plain,
)
from generator.marking.tables.answers_file import MOST_CHARACTERS, read_answers_file
from generator.marking.tables.saved_fields import LONGEST_WRITTEN

PATH = "answers-7KQ2M4TX.json"
SAVED: dict[str, Any] = {
    "kind": "guidecoat answers",
    "version": 1,
    "form_id": "7KQ2M4TX",
    "label": "A",
    "edition": "2026 spring",
    "person": "Apprentice 03",
    "responses": {
        "1": {"form": "chosen", "letters": ["B"]},
        "3": {"form": "typed", "text": "12,5 µm"},
    },
    "written": {"6": "The skin closes.\nSolvent stays below."},
    "minutes_used": 27,
    "minutes_over": 2,
}


def text_of(**more: Any) -> str:
    return json.dumps({**SAVED, **more}, indent=1, ensure_ascii=False)


def refused(text: str) -> list[tuple[int, int, str]]:
    found, problems = read_answers_file(text, PATH)
    assert found is None
    assert problems
    assert {problem.severity for problem in problems} == {"error"}
    assert {problem.rule for problem in problems} <= set(ISSUED_RULES)
    assert {problem.place.path for problem in problems} == {PATH}
    return [(p.place.line, p.place.column, p.message) for p in problems]


def test_a_saved_file_is_read_as_it_was_saved() -> None:
    found, problems = read_answers_file(text_of(), PATH)
    assert problems == ()
    assert found is not None
    assert (found.form_id, found.label, found.edition) == ("7KQ2M4TX", "A", "2026 spring")
    assert found.person == "Apprentice 03"
    assert found.responses == {1: Chosen(("B",)), 3: Typed("12,5 µm")}
    assert found.written == {6: "The skin closes.\nSolvent stays below."}
    assert (found.minutes_used, found.minutes_over) == (27, 2)


@pytest.mark.parametrize("change", [str, lambda text: "\ufeff" + text, lambda t: f"\r\n {t}\r\n"])
def test_marks_and_lines_around_it_change_nothing(change: Any) -> None:
    assert read_answers_file(change(text_of()), PATH) == read_answers_file(text_of(), PATH)


LETTER = st.sampled_from("ABCDEFGH")
LETTERS = st.lists(LETTER, unique=True, max_size=8).map(tuple)
NUMBERS = st.integers(1, 999)
# what a page lets through: tabs and line ends, no other controls, no halves of characters
TYPED = st.text(
    st.characters(codec="utf-8", exclude_categories=["Cc", "Cs"], include_characters="\n\t"),
    max_size=60,
)
RESPONSES: st.SearchStrategy[Response] = st.one_of(
    LETTERS.map(Chosen),
    LETTERS.map(Ordered),
    TYPED.map(Typed),
    st.dictionaries(NUMBERS.map(str), LETTER, max_size=6).map(lambda d: Matched(tuple(d.items()))),
)


@given(
    st.text(SIGNS, min_size=LENGTH, max_size=LENGTH),
    st.dictionaries(NUMBERS, RESPONSES, max_size=12),
    st.dictionaries(NUMBERS, TYPED, max_size=3),
    st.integers(0, 99_999),
)
def test_whatever_a_page_can_save_comes_back(
    form_id: str, responses: dict[int, Response], written: dict[int, str], minutes: int
) -> None:
    written = {number: text for number, text in written.items() if number not in responses}
    text = text_of(
        form_id=form_id,
        responses={str(number): response_as_plain(r) for number, r in responses.items()},
        written={str(number): text for number, text in written.items()},
        minutes_used=minutes,
        minutes_over=0,
    )
    found, problems = read_answers_file(text, PATH)
    assert problems == ()
    assert found is not None
    assert (found.form_id, found.minutes_used) == (form_id, minutes)
    assert dict(found.responses) == responses
    assert dict(found.written) == written


BROKEN = {
    "": (1, 1, "a value is expected"),
    "12": (1, 1, "names with values are expected"),
    "[1, 2]": (1, 1, "names with values are expected"),
    "{": (1, 2, "a name in quotes"),
    '{"kind"}': (1, 8, "a colon"),
    '{"kind": "guidecoat answers",}': (1, 30, "a name in quotes"),
    '{"kind": NaN}': (1, 10, "a value is expected"),
    '{"kind": -Infinity}': (1, 10, "a value is expected"),
    '{"kind": 01}': (1, 11, "a comma or }"),
    '{\n "a": 1,\n "a": 2}': (3, 2, "'a' is there already"),
    '{"a": 1} x': (1, 10, "behind the end"),
    '{"a": "b\nc"}': (1, 9, "this text in quotes is broken"),
    '{"a": "\\ud800"}': (1, 7, "nobody can type"),
    '{"a": "\\u0007"}': (1, 7, "nobody can type"),
    '{"a": ' + "9" * 5000 + "}": (1, 7, "too long"),
    '{"a": ' + "[" * 5000: (1, 14, "nested too deeply"),
    '{"kind": "guidecoat panel"}': (1, 10, "its kind is 'guidecoat panel'"),
    '{"kind": "guidecoat answers"}': (1, 1, "its version is nothing"),
}


@pytest.mark.parametrize("text", BROKEN)
def test_a_broken_file_says_where(text: str) -> None:
    line, column, words = BROKEN[text]
    ((at_line, at_column, message),) = refused(text)
    assert (at_line, at_column) == (line, column)
    assert words in message


@pytest.mark.parametrize("version", [0, 2, 1.0, "1", True, None, [1]])
def test_an_unknown_version_is_refused(version: Any) -> None:
    ((line, _, message),) = refused(text_of(version=version))
    assert line == 3
    assert "its version is" in message


LONG = "x" * (LONGEST_WRITTEN + 1)
WRONG: dict[str, tuple[dict[str, Any], str]] = {
    "id too short": ({"form_id": "7KQ2M4T"}, "is not the id of a form"),
    "id with a misread sign": ({"form_id": "7KQ2M4TO"}, "is not the id of a form"),
    "id with a line end": ({"form_id": "7KQ2M4TX\n"}, "is not the id of a form"),
    "id a number": ({"form_id": 7}, "a text is expected here, not 7"),
    "person with a line end": ({"person": "A\nB"}, "no name has"),
    "person turned round": ({"person": "A\u202eB"}, "no name has"),
    "person in spaces": ({"person": " A"}, "no name has"),
    "person too long": ({"person": "x" * 200}, "at most 120"),
    "responses a list": ({"responses": []}, "not a list"),
    "number with a zero": ({"responses": {"01": {"form": "blank"}}}, "not a question's number"),
    "number zero": ({"responses": {"0": {"form": "blank"}}}, "not a question's number"),
    "number below": ({"responses": {"-1": {"form": "blank"}}}, "not a question's number"),
    "number in other figures": ({"responses": {"١": {"form": "blank"}}}, "question's number"),
    "number a word": ({"written": {"six": "x"}}, "not a question's number"),
    "response a text": ({"responses": {"1": "B"}}, "names with values are expected"),
    "response unknown": ({"responses": {"1": {"form": "painted"}}}, "known form"),
    "response without letters": ({"responses": {"1": {"form": "chosen"}}}, "known form"),
    "response a list": ({"responses": {"1": {"form": ["chosen"]}}}, "known form"),
    "letters numbers": ({"responses": {"1": {"form": "chosen", "letters": [1]}}}, "known form"),
    "letter small": ({"responses": {"1": {"form": "chosen", "letters": ["b"]}}}, "not a letter"),
    "letter empty": ({"responses": {"1": {"form": "ordered", "letters": [""]}}}, "not a letter"),
    "letter twice": (
        {"responses": {"1": {"form": "chosen", "letters": ["B", "B"]}}},
        "more than once",
    ),
    "pair without a number": (
        {"responses": {"1": {"form": "matched", "answers": {"A": "B"}}}},
        "not the number of a pair",
    ),
    "pair with two letters": (
        {"responses": {"1": {"form": "matched", "answers": {"1": "AB"}}}},
        "not a letter",
    ),
    "typed far too long": (
        {"responses": {"1": {"form": "typed", "text": "1" * 201}}},
        "at most 200",
    ),
    "written far too long": ({"written": {"6": LONG}}, "at most 10,000"),
    "written a number": ({"written": {"6": 5}}, "a text is expected"),
    "answered twice": ({"written": {"1": "x"}}, "among the responses as well"),
    "minutes a fraction": ({"minutes_used": 1.5}, "whole minutes"),
    "minutes a truth": ({"minutes_over": True}, "whole minutes"),
    "minutes below": ({"minutes_over": -1}, "whole minutes"),
    "minutes endless": ({"minutes_over": 10**30}, "whole minutes"),
    "a field more": ({"minuts_over": 1}, "'minuts_over' is not known"),
}


@pytest.mark.parametrize("name", WRONG)
def test_what_no_page_saves_is_refused_at_its_place(name: str) -> None:
    change, words = WRONG[name]
    text = text_of(**change)
    ((line, column, message),) = refused(text)
    assert words in message
    assert "\n" not in message
    assert len(message) < 200
    (field,) = change
    top = next(at for at, row in enumerate(text.split("\n"), 1) if f'"{field}":' in row)
    assert line >= top
    assert column > 1


@pytest.mark.parametrize("response", [Awarded((2, 0)), Illegible()])
def test_marks_and_doubts_of_a_marker_do_not_come_from_a_page(response: Response) -> None:
    ((_, _, message),) = refused(text_of(responses={"1": response_as_plain(response)}))
    assert "comes from a marker" in message


@pytest.mark.parametrize("name", [name for name in SAVED if name not in ("kind", "version")])
def test_a_missing_field_is_named(name: str) -> None:
    text = json.dumps({field: value for field, value in SAVED.items() if field != name})
    assert refused(text) == [(1, 1, f"'{name}' is missing")]


def test_all_problems_are_told_at_once_in_the_order_of_the_file() -> None:
    found = refused(text_of(form_id="?", responses={"x": 1}, minutes_over="two"))
    assert len(found) == 3
    assert found == sorted(found)


def test_a_file_that_is_too_large_is_not_read() -> None:
    ((line, column, message),) = refused(" " * MOST_CHARACTERS + text_of())
    assert (line, column) == (1, 1)
    assert "1,000,000" in message


@pytest.mark.parametrize(
    "text",
    [
        "[" + "0," * 499_000 + "0]",
        "[" + "[]," * 300_000 + "0]",
        "{" + ",".join(f'"{number}":0' for number in range(70_000)) + "}",
        "\n" * 999_000 + "{",
        '"' + "\\u0041" * 160_000 + '"',
    ],
)
def test_the_largest_files_are_refused_in_good_time(text: str) -> None:
    begin = time.monotonic()
    refused(text)
    assert time.monotonic() - begin < 30


VALUES = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(),
    lambda inside: st.lists(inside) | st.dictionaries(st.text() | st.sampled_from("1269"), inside),
    max_leaves=12,
)
HOSTILE = st.fixed_dictionaries(
    {"kind": st.just("guidecoat answers"), "version": st.just(1)},
    optional={name: VALUES for name in SAVED if name not in ("kind", "version")},
)


@given(st.one_of(VALUES, HOSTILE))
def test_no_value_makes_the_reader_raise(value: Any) -> None:
    text = json.dumps(value)
    found, problems = read_answers_file(text, PATH)
    assert (found is None) == bool(problems)
    lines = text.split("\n")
    for problem in problems:
        assert 1 <= problem.place.line <= len(lines)
        assert 1 <= problem.place.column <= len(lines[problem.place.line - 1]) + 1


@given(st.text() | st.text('{}[]":,0123456789.eE+-\\u tfn\n'))
def test_no_text_makes_the_reader_raise(text: str) -> None:
    found, problems = read_answers_file(text, PATH)
    assert found is None
    assert problems


@given(st.data())
def test_no_damage_to_a_saved_file_makes_the_reader_raise(data: st.DataObject) -> None:
    text = text_of()
    start = data.draw(st.integers(0, len(text)))
    end = data.draw(st.integers(start, min(start + 12, len(text))))
    damaged = text[:start] + data.draw(st.text(max_size=6)) + text[end:]
    found, problems = read_answers_file(damaged, PATH)
    assert (found is None) == bool(problems)
