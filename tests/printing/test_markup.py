"""Markdown becomes nodes that hold text as data, and no character of it is lost."""

import string

from hypothesis import given
from hypothesis import strategies as st

from generator.printing.content.markup import block_nodes, inline_nodes


def _text(words):
    return {"kind": "text", "text": words}


def nodes_text(nodes):
    """Read back the words of some nodes, without any of their form."""
    return "".join(node.get("text", "") + nodes_text(node.get("children", ())) for node in nodes)


def test_emphasis_and_code_keep_their_place():
    assert inline_nodes("Use **two** *clean* cloths and `P320`") == [
        _text("Use "),
        {"kind": "strong", "children": [_text("two")]},
        _text(" "),
        {"kind": "emphasis", "children": [_text("clean")]},
        _text(" cloths and "),
        {"kind": "code", "text": "P320"},
    ]


def test_paragraphs_and_lists_are_blocks():
    first, second = block_nodes("Look.\n\n- one\n- two")
    assert first == {"kind": "paragraph", "children": [_text("Look.")]}
    assert second["kind"] == "bullets"
    assert [nodes_text([item]) for item in second["children"]] == ["one", "two"]


def test_a_table_keeps_rows_and_cells():
    (table,) = block_nodes("| a | b |\n|---|---|\n| 1 | 2 |")
    cells = [[nodes_text([cell]) for cell in row["children"]] for row in table["children"]]
    assert cells == [["a", "b"], ["1", "2"]]


def test_lines_of_one_paragraph_are_joined_by_a_space():
    assert nodes_text(block_nodes("one\ntwo")) == "one two"


def test_a_link_leaves_its_words_alone_on_paper():
    assert inline_nodes("see [the sheet](source:tds)") == [_text("see "), _text("the sheet")]


def test_an_image_leaves_its_words_on_paper():
    assert inline_nodes("![a cup](cup.svg)") == [_text("a cup")]


def test_an_option_never_starts_a_list_or_a_heading():
    for option in ("1. coat", "- 5 °C", "# 3 paper", "+ 2", "> 40 µm", "    4 mm"):
        assert nodes_text(inline_nodes(option)).strip() == option.strip()


def test_a_stem_never_loses_a_line_to_headings_rules_or_references():
    for stem in ("# 3 paper", "Two\n---", "[tds]: sheet", "<b>bold</b>", "    4 mm", "> 40 µm"):
        shown = nodes_text(block_nodes(stem)).split()
        assert shown == stem.split()


@given(
    st.text(alphabet=string.ascii_letters + string.digits + string.punctuation + " µ°", max_size=60)
)
def test_escaped_punctuation_comes_out_as_it_was(text):
    """CommonMark 0.31, 2.4: any ASCII punctuation may be escaped by a backslash."""
    escaped = "".join(f"\\{mark}" if mark in string.punctuation else mark for mark in text)
    assert nodes_text(inline_nodes(escaped)).split() == text.split()
