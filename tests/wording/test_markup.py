"""Light markup of the bank: one reading, and the same words as HTML and for the typesetter."""

import string
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from markdown_it import MarkdownIt

from generator.wording import (
    TypstNode,
    blocks_in,
    html_of,
    html_of_line,
    html_of_text,
    line_nodes,
    typst_of_line,
    typst_of_text,
)

# what a painter may write, and what other readers take for a heading, a quote, a rule or a list
LETTERS = (
    *("# 3 paper", "> 40 µm", "1. coat", "- 5 °C", "+ 2", "* 4", "    4 mm", "| 2 | 3 |"),
    *("Wet coat\n---", "Two\n===", "[tds]: sheet", "***\ndry", "~~~", "| a |\n|---|\n| 1 |"),
    *("<b>bold</b>", "<https://example.org>", "1. one\n2. two", "A & B"),
)


def _text(words: str) -> TypstNode:
    return {"kind": "text", "text": words}


def words_of(nodes: Any) -> str:
    """Return the words of some nodes, without any of their form."""
    return "".join(node.get("text", "") + words_of(node.get("children", ())) for node in nodes)


def shown(html: str) -> str:
    """Return what a browser would show of HTML that holds paragraphs and escaped letters only."""
    plain = html.replace("<p>", "").replace("</p>\n", "")
    assert "<" not in plain
    for name, letter in (("lt", "<"), ("gt", ">"), ("quot", '"'), ("amp", "&")):
        plain = plain.replace(f"&{name};", letter)
    return plain


def test_emphasis_and_code_keep_their_place() -> None:
    text = "Use **two** *clean* cloths and `P320`"
    assert typst_of_line(text) == [
        _text("Use "),
        {"kind": "strong", "children": [_text("two")]},
        _text(" "),
        {"kind": "emphasis", "children": [_text("clean")]},
        _text(" cloths and "),
        {"kind": "code", "text": "P320"},
    ]
    assert html_of_line(text) == (
        "Use <strong>two</strong> <em>clean</em> cloths and <code>P320</code>"
    )


def test_a_text_has_paragraphs_and_a_line_has_none() -> None:
    assert html_of_text("Look.\n\nThen sand.") == "<p>Look.</p>\n<p>Then sand.</p>\n"
    assert [node["kind"] for node in typst_of_text("Look.\n\nThen sand.")] == ["paragraph"] * 2
    assert html_of_line("Look.") == "Look."


def test_lines_of_one_paragraph_are_joined_by_a_space() -> None:
    assert words_of(typst_of_text("one\ntwo")) == "one two"
    assert html_of_text("one\ntwo") == "<p>one\ntwo</p>\n"


def test_a_line_break_that_is_asked_for_stays() -> None:
    assert words_of(typst_of_text("one\\\ntwo")) == "one\ntwo"
    assert html_of_text("one\\\ntwo") == "<p>one<br />\ntwo</p>\n"


def test_a_link_leaves_its_words_where_no_link_is_wanted() -> None:
    text = "see [the **sheet**](source:tds)"
    assert words_of(typst_of_line(text)) == "see the sheet"
    assert html_of_line(text) == "see the <strong>sheet</strong>"


def test_a_link_has_the_attributes_that_the_page_gives() -> None:
    def link(target: str) -> dict[str, str]:
        return {"href": f'/{target}?a=1&b="2"', "class": "to-source"}

    assert html_of(line_nodes("[the sheet](source:tds)"), link) == (
        '<a href="/source:tds?a=1&amp;b=&quot;2&quot;" class="to-source">the sheet</a>'
    )


def test_a_picture_leaves_its_words() -> None:
    assert typst_of_line("![a cup](cup.svg)") == [_text("a cup")]
    assert html_of_line("![a cup](cup.svg)") == "a cup"


@pytest.mark.parametrize("text", LETTERS)
def test_block_marks_are_letters_on_paper_and_page_alike(text: str) -> None:
    assert words_of(typst_of_text(text)).split() == text.split()
    assert shown(html_of_text(text)).split() == text.split()
    assert words_of(typst_of_line(text)).split() == text.split()
    assert shown(html_of_line(text)).split() == text.split()


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("- one\n- two", [(0, "a list")]),
        ("Put on:\n\n1. goggles\n2. gloves", [(2, "a list")]),
        ("| a | b |\n|---|---|\n| 1 | 2 |", [(0, "a table")]),
        ("```\nfan on\n```", [(0, "a block of code")]),
        ("Wet coat\n---", [(0, "a heading")]),
        ("One.\n\n***\n\nTwo.", [(2, "a line across")]),
        ("# 3 paper", []),
        ("> 40 µm", []),
        ("1. coat", []),
        ("- 5 °C", []),
        ("One.\n\nTwo.", []),
    ],
)
def test_what_an_author_may_have_meant_as_a_block_is_found(
    text: str, found: list[tuple[int, str]]
) -> None:
    assert list(blocks_in(text)) == found


@given(
    st.text(alphabet=string.ascii_letters + string.digits + string.punctuation + " µ°", max_size=60)
)
def test_escaped_punctuation_comes_out_as_it_was(text: str) -> None:
    """CommonMark 0.31, 2.4: any ASCII punctuation may be escaped by a backslash."""
    escaped = "".join(f"\\{mark}" if mark in string.punctuation else mark for mark in text)
    assert words_of(typst_of_line(escaped)).split() == text.split()
    assert shown(html_of_line(escaped)).split() == text.split()


@given(st.text(alphabet="ab *_`\\&<>\"'\n", max_size=40))
def test_inline_marks_are_written_as_the_common_reader_writes_them(text: str) -> None:
    """The reader's own writer is the oracle, without the autolinks that we leave out."""
    oracle = MarkdownIt("commonmark", {"html": False}).disable("autolink")
    assert html_of_line(text) == oracle.renderInline(text)
