"""Reading YAML: text stays as typed, and every form the house does not allow is located."""

import datetime

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st

from generator.bank.nodes import BrokenNode, ListNode, MappingNode, Node, ScalarNode, to_plain
from generator.bank.reading.yaml_source import MOST_LEVELS, read_yaml
from generator.diagnostics import Problem


def sound(text: str) -> Node:
    node, problems = read_yaml(text, "a.yml")
    assert problems == ()
    assert node is not None
    return node


def faults(text: str) -> list[tuple[int, int, str]]:
    """Return line, column and rule of every problem of a text."""
    return [(p.place.line, p.place.column, p.rule) for p in problems_of(text)]


def problems_of(text: str) -> tuple[Problem, ...]:
    return read_yaml(text, "a.yml")[1]


def scalar(node: Node, *path: str | int) -> ScalarNode:
    for step in path:
        if isinstance(node, MappingNode):
            node = node.entries[str(step)]
        else:
            assert isinstance(node, ListNode)
            node = node.items[int(step)]
    assert isinstance(node, ScalarNode)
    return node


@pytest.mark.parametrize(
    "typed",
    [
        "3:1", "4:1:1", "12:30:45", "no", "No", "on", "off", "yes", "y", "true", "null", "~",
        "010", "0x1F", "0b11", "1_000", "1e3", "1.50", ".5", "-0", ".inf", ".nan",
        "2026-11-25", "2026-11-25T10:00:00Z",
    ],
)  # fmt: skip
def test_a_word_that_other_readers_turn_into_something_else_stays_text(typed: str) -> None:
    assert to_plain(sound(f"value: {typed}\nlist: [{typed}]\n")) == {
        "value": typed,
        "list": [typed],
    }


def test_the_guessing_that_is_avoided_here_is_real() -> None:
    # YAML 1.1, type repository: sexagesimal integers, octal integers, booleans, timestamps
    guessed = yaml.safe_load("[3:1, 010, no, 2026-11-25]")
    assert guessed == [181, 8, False, datetime.date(2026, 11, 25)]


def test_an_empty_value_is_empty_text() -> None:
    assert to_plain(sound("a:\nb: ''\n")) == {"a": "", "b": ""}


@pytest.mark.parametrize("text", ["", "\n\n", "# only a comment\n", "---\n..."])
def test_a_file_without_content_gives_no_record(text: str) -> None:
    node, problems = read_yaml(text, "a.yml")
    assert problems == ()
    assert node is None or to_plain(node) == ""


def test_places_count_characters_and_not_bytes() -> None:
    node = sound('"µ²": {film: µm, gap: x}\n')
    assert isinstance(node, MappingNode)
    inner = node.entries["µ²"]
    assert isinstance(inner, MappingNode)
    assert inner.keys["gap"].column == 18
    assert scalar(node, "µ²", "gap").place.column == 23


def test_text_in_quotes_starts_one_column_after_the_quote() -> None:
    for quote in ("'", '"'):
        found = scalar(sound(f"a: {quote}film{quote}"), "a")
        assert (found.place.column, found.inner.column, found.block) == (4, 5, False)


def test_columns_inside_folded_text_or_text_with_escapes_are_not_pretended() -> None:
    for text in ("a: >-\n  one\n  two", "a: |\n  one", "a: one\n  two", "a: 'it''s'", 'a: "x\\ty"'):
        assert scalar(sound(text), "a").block, text
    assert not scalar(sound("a: its"), "a").block


def test_folded_text_is_placed_at_its_sign() -> None:
    found = scalar(sound("film:\n  stem: >-\n    one\n    two\n"), "film", "stem")
    assert (found.text, found.place.line, found.place.column) == ("one two", 2, 9)


def test_windows_line_ends_count_as_one_line() -> None:
    assert scalar(sound("a: 1\r\nb: 2\r\nc: 3\r\n"), "c").place.line == 3


def test_a_byte_order_mark_is_no_part_of_the_text() -> None:
    assert to_plain(sound("\ufefffilm: wet\n")) == {"film": "wet"}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("a: 1\nb: 2\na: 3\n", [(3, 1, "repeated-key")]),
        ("a: {b: 1, b: 2}\n", [(1, 11, "repeated-key")]),
        ("a: 1\n'a': 2\n", [(2, 1, "repeated-key")]),
        ("a: &x 1\n", [(1, 4, "yaml-anchor")]),
        ("a: *x\n", [(1, 4, "yaml-anchor")]),
        ("a:\n  <<: {b: 1}\n", [(2, 3, "yaml-anchor")]),
        ("a: !!int 3\n", [(1, 4, "yaml-tag")]),
        ("a: !own [1]\n", [(1, 4, "yaml-tag")]),
        ("a: !!python/object/apply:os.system [x]\n", [(1, 4, "yaml-tag")]),
        ("\ta: 1\n", [(1, 1, "yaml-tab")]),
        ("a:\n  b: 'x\ty'\n\tc: 1\n", [(2, 8, "yaml-tab"), (3, 1, "yaml-tab")]),
        ("a: 1\n---\nb: 2\n", [(2, 1, "yaml-form")]),
        ("a: 1\n...\n---\nb: 2\n", [(3, 1, "yaml-form")]),
        ("a: [1, 2\n", [(1, 4, "yaml-form")]),
        ("a: 'never closed\n", [(1, 4, "yaml-form")]),
        ("a: b: c\n", [(1, 5, "yaml-form")]),
        ("a: {{film}}\n", [(1, 5, "yaml-form")]),
        ("? [a, b]\n: c\n", [(1, 3, "yaml-form")]),
        ("a: @home\n", [(1, 4, "yaml-form")]),
        ("a: µm\nb: x\x07\n", [(2, 5, "odd-sign")]),
        ("a: 1\n  b: 2\n", [(2, 4, "yaml-form")]),
    ],
)  # fmt: skip
def test_a_form_that_is_not_allowed_is_found_at_its_place(
    text: str, expected: list[tuple[int, int, str]]
) -> None:
    assert faults(text) == expected


def test_a_repeated_name_says_where_the_first_stands_and_keeps_its_value() -> None:
    node, (problem,) = read_yaml("a: 1\n\na: 3\n", "a.yml")
    assert node is not None
    assert to_plain(node) == {"a": "1"}
    assert problem.message == "'a' appears again; the first is on line 1"


def test_a_tag_is_named_as_the_author_typed_it() -> None:
    assert [p.message for p in problems_of("a: !!int 3\nb: !own 4\n")] == [
        "'!!int' is a type tag",
        "'!own' is a type tag",
    ]


def test_an_alias_and_a_mapping_with_a_merge_are_broken_so_that_nothing_is_guessed() -> None:
    node, _ = read_yaml("a: *x\nb:\n  <<: *x\n  c: 1\n", "a.yml")
    assert isinstance(node, MappingNode)
    assert isinstance(node.entries["a"], BrokenNode)
    assert isinstance(node.entries["b"], BrokenNode)


def test_an_alias_bomb_is_never_unfolded() -> None:
    rows = ["a0: &a0 [x, x, x, x, x, x, x, x, x]"]
    rows += [f"a{n}: &a{n} [{', '.join([f'*a{n - 1}'] * 9)}]" for n in range(1, 9)]
    node, problems = read_yaml("\n".join(rows), "a.yml")
    assert node is not None
    assert len(problems) == 9 + 8 * 9
    assert {p.rule for p in problems} == {"yaml-anchor"}


@pytest.mark.parametrize(
    "text",
    [
        "[" * 400 + "]" * 400,
        "[" * 100_000,
        "{a: " * 400 + "}" * 400,
        "\n".join(" " * level + "a:" for level in range(400)),
        "- " * 400 + "x",
    ],
)
def test_deep_nesting_is_refused_with_one_message_and_no_crash(text: str) -> None:
    assert [rule for _, _, rule in faults(text)] == ["yaml-form"]


def test_nesting_is_refused_only_beyond_the_limit() -> None:
    assert faults("[" * MOST_LEVELS + "]" * MOST_LEVELS) == []
    too_deep = MOST_LEVELS + 1
    assert faults("[" * too_deep + "]" * too_deep) == [(1, too_deep, "yaml-form")]


def test_what_was_found_before_a_stumble_is_not_lost() -> None:
    assert faults("a: &x 1\nb: [\n")[0] == (1, 4, "yaml-anchor")
    assert faults("a: &x 1\nb: [\n")[-1][2] == "yaml-form"


LAYOUT = st.text(alphabet="ab:-[]{}'\"\n #&*!|>?,%@`\tµ\x07.", max_size=40)


@given(LAYOUT)
def test_any_text_brings_nodes_or_problems_with_places_inside_it(text: str) -> None:
    node, problems = read_yaml(text, "a.yml")
    last = len(text.split("\n")) + 1
    assert [p for p in problems if not 1 <= p.place.line <= last or p.place.column < 1] == []
    assert [problem for problem in problems if "\n" in problem.message] == []
    if node is not None and not problems:
        to_plain(node)


PRINTABLE = st.characters(
    exclude_categories=("C", "Zl", "Zp"), max_codepoint=0xDFFFF, exclude_characters="\ufeff"
)


@given(st.text(alphabet=PRINTABLE, min_size=1))
def test_any_printable_text_in_quotes_comes_back_as_typed(text: str) -> None:
    quoted = text.replace("'", "''")
    assert to_plain(sound(f"a: '{quoted}'")) == {"a": text}
