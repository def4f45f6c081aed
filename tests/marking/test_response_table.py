"""Tables of answers are read with every problem at its place."""

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.marking import (
    TABLE_RULES,
    key_disagreements,
    read_key,
    read_responses,
    spreadsheet_safe,
)
from generator.marking.tables.csv_cells import plain_cell, read_cells

GOOD = "person,Q1,Q2\nApprentice 01,A,c\nApprentice 02,,B\n"


def found(text: str) -> list[tuple[int, int, str]]:
    """Read a table and give the line, column and rule of each problem."""
    table, problems = read_responses(text, "answers.csv")
    assert (table is None) is any(p.severity == "error" for p in problems)
    assert {p.rule for p in problems} <= set(TABLE_RULES)
    return [(p.place.line, p.place.column, p.rule) for p in problems]


def test_a_table_gives_people_items_and_answers() -> None:
    table, problems = read_responses(GOOD, "answers.csv")
    assert problems == ()
    assert table is not None
    assert table.people == ("Apprentice 01", "Apprentice 02")
    assert table.items == ("Q1", "Q2")
    assert table.answers == (("A", "C"), ("", "B"))
    scores = table.scored({"Q1": "A", "Q2": "B"})
    assert scores.totals == (1, 1)


@pytest.mark.parametrize(
    "text",
    [
        "# a note\n\n" + GOOD,
        "\ufeff" + GOOD,
        GOOD.replace("\n", "\r\n"),
        GOOD.replace(",", ";"),
        GOOD.replace(",", "\t"),
        GOOD.replace(",", " , "),
        GOOD + ",,\n\n",
        GOOD.replace("Apprentice 01", '"Apprentice 01"'),
        GOOD.rstrip("\n"),
    ],
)
def test_the_ways_spreadsheets_save_a_table_read_alike(text: str) -> None:
    assert read_responses(text, "x")[0] == read_responses(GOOD, "x")[0]


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("", (1, 1, "empty-table")),
        ("person,Q1\n", (1, 1, "empty-table")),
        ("person\nApprentice 01\n", (1, 1, "empty-table")),
        (GOOD + "Apprentice 03,A\n", (4, 1, "ragged-row")),
        (GOOD + "Apprentice 03,A,B,C\n", (4, 1, "ragged-row")),
        (GOOD + "Apprentice 01,A,B\n", (4, 1, "repeated-person")),
        (GOOD + ",A,B\n", (4, 1, "no-name")),
        ("person,Q1,Q1\nApprentice 01,A,B\n", (1, 11, "repeated-item")),
        ("person,Q1,\nApprentice 01,A,B\n", (1, 11, "no-name")),
        (GOOD + 'Apprentice "03",A,B\n', (4, 1, "csv-quote")),
        (GOOD + 'Apprentice 03,A,"B\n', (4, 17, "csv-quote")),
        (GOOD + 'Apprentice 03,"A"x,B\n', (4, 15, "csv-quote")),
        (GOOD + "Apprentice 03,A\x1b[2J,B\n", (4, 15, "csv-control")),
        ("# note\n" + GOOD + "Apprentice 03,=1+1,B\n", (5, 15, "formula-cell")),
        (GOOD + "@03,A,B\n", (4, 1, "formula-cell")),
        ('person,Q1\n"two\nlines",A\n', (2, 1, "csv-control")),
        ('person,Q1\n"a, b",A,B\n', (2, 1, "ragged-row")),
    ],
)
def test_each_problem_is_found_at_its_place(text: str, place: tuple[int, int, str]) -> None:
    assert found(text) == [place]


def test_all_problems_are_given_at_once() -> None:
    text = "person,Q1,Q2\nApprentice 01,A\nApprentice 01,A,B,C\n,A,B\n"
    assert sorted(rule for _, _, rule in found(text)) == [
        "no-name",
        "ragged-row",
        "ragged-row",
        "repeated-person",
    ]


def test_a_negative_number_is_no_formula() -> None:
    assert found("person,Q1\nApprentice 01,-1\n") == []


@pytest.mark.parametrize(
    ("text", "rule"),
    [
        ("Q1,A\n", "key-header"),
        ("", "key-header"),
        ("item,key\n", "empty-table"),
        ("item,key\nQ1,\n", "empty-key"),
        ("item,key\nQ1,A\nQ1,B\n", "repeated-item"),
        ("item,key\nQ1\n", "ragged-row"),
    ],
)
def test_each_problem_of_a_key_is_found(text: str, rule: str) -> None:
    key, problems = read_key(text, "key.csv")
    assert key is None
    assert [problem.rule for problem in problems] == [rule]


def test_items_that_only_one_of_the_two_has_are_named_with_the_nearest() -> None:
    table, _ = read_responses("person,Q1,Q20\nApprentice 01,A,B\n", "answers.csv")
    key, _ = read_key("item,key\nQ1,a\nQ2O,B\n", "key.csv")
    assert table is not None and key is not None
    unknown, without = key_disagreements(table, key, "answers.csv")
    assert (str(unknown.place), unknown.rule) == ("key.csv:3:1", "unknown-item")
    assert unknown.hint == "did you mean 'Q20'?"
    assert (str(without.place), without.rule) == ("answers.csv:1:1", "item-without-key")


@given(st.sampled_from(["", *"=+-@\t\r\n\0"]).flatmap(lambda start: st.text().map(start.__add__)))
def test_no_text_in_a_written_cell_begins_like_a_formula_and_all_come_back(text: str) -> None:
    safe = spreadsheet_safe(text)
    assert safe[:1] not in tuple("=+-@\t\r\n\0")
    if not text.startswith("'"):
        assert plain_cell(safe) == text


CELLS = st.text(
    alphabet=st.characters(codec="utf-8", exclude_categories=["C", "Z"], exclude_characters=";"),
    min_size=1,
    max_size=8,
).filter(lambda text: not text.startswith(("#", "'", "\ufeff")))


@given(
    st.integers(1, 4).flatmap(
        lambda width: st.lists(
            st.lists(CELLS, min_size=width, max_size=width), min_size=1, max_size=5
        )
    )
)
def test_what_another_writer_writes_is_read_back(rows: list[list[str]]) -> None:
    out = io.StringIO()
    csv.writer(out, quoting=csv.QUOTE_ALL).writerows([["a,", *rows[0][1:]], *rows])
    read, problems = read_cells(out.getvalue(), "x")
    assert problems == ()
    assert [[cell.text for cell in row] for row in read[1:]] == rows


@given(st.text(alphabet='ab,;"\n\r\t=#\ufeff', max_size=60))
def test_any_text_is_read_or_refused_with_a_place_in_it(text: str) -> None:
    table, problems = read_responses(text, "x")
    assert table is not None or problems
    lines = text.replace("\r\n", "\n").replace("\r", "\n").count("\n") + 1
    assert all(1 <= problem.place.line <= lines for problem in problems)
